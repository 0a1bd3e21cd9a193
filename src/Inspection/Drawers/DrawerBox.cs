using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>A drawer's box in its place, and what is measured around it.</summary>
internal sealed class DrawerBox
{
    private readonly InspectedPiece _piece;
    private readonly HashSet<string> _own;

    private DrawerBox(InspectedPiece piece, Front front, DrawerFit fit)
    {
        _piece = piece;
        Front = front;
        Fit = fit;
        Parts = piece.ShapesOf(fit.Box);
        Around = FrontSides.Around(Parts);
        // What the box rests on is judged with its joint.
        var inBox = fit.Box.ToHashSet(StringComparer.Ordinal);
        var under = piece.Piece.Joints.Where(j => j.Kind == JointKind.Resting && inBox.Contains(j.Enters));
        _own =
        [
            .. fit.Box,
            .. front.Face,
            .. piece.Members(front.Group).Select(shape => shape.Part.Id),
            .. under.Select(joint => joint.Receives),
        ];
    }

    public Front Front { get; }

    public DrawerFit Fit { get; }

    public IReadOnlyList<Shape> Parts { get; }

    public Box Around { get; }

    public string Name => _piece.GroupName(Front.Group);

    /// <summary>The box of a front that is a drawer; null for doors.</summary>
    public static DrawerBox? Of(InspectedPiece piece, Front front) =>
        front.Drawer is { Box.Count: > 0 } fit ? new(piece, front, fit) : null;

    /// <summary>The room between the box and the part its slide is fixed to; null where that part is not beside it.</summary>
    public SideGap? Beside(Direction side)
    {
        var runs = _piece.Shape(side == Direction.Left ? Fit.RunsBetween.Left : Fit.RunsBetween.Right);
        return FrontSides.Between(
            _piece,
            Parts,
            [runs],
            side,
            FrontSides.Shared(FrontSides.Depth(Parts), FrontSides.Depth([runs]))
        );
    }

    /// <summary>The part of the box that carries the slide on a side: the outermost there, and the longest of those.</summary>
    public Shape Carrying(Direction side) =>
        Parts.OrderByDescending(part => part.Box.Reach(side)).ThenByDescending(part => part.Box.Size(Axis.Y)).First();

    /// <summary>
    /// What stands closer to the box in a direction than it may; null where nothing does. Up and down the edges of the
    /// opening count over the whole depth, since the box passes them when it is drawn.
    /// </summary>
    public TooClose? Closest(Direction way, Length atLeast)
    {
        var cap = _piece.ToUnits(atLeast - Tolerance.Rounding);
        TooClose? closest = null;
        if (way.Axis() == Axis.Z && PassedEdge(way) is { } edge && edge.Gap < cap)
            closest = edge;
        if (cap < 0)
            return closest;
        foreach (var other in _piece.Near(Around.Grown(way, cap)))
        {
            if (_own.Contains(other.Part.Id))
                continue;
            foreach (var part in Parts)
            {
                // What shares the box's place is told as an overlap; it is not over, under or behind.
                if (!part.Box.Grown(way, cap).Touches(other.Box) || _piece.Overlap(part, other) is not null)
                    continue;
                if (
                    Pair.GapAlong(part.Placed, other.Placed, way.Unit(), cap) is { } gap
                    && gap.Distance < cap
                    && gap.Distance < (closest?.Gap ?? double.MaxValue)
                )
                {
                    closest = new(other, gap.Distance, gap.OnA, gap.OnB);
                }
            }
        }
        return closest;
    }

    private TooClose? PassedEdge(Direction way)
    {
        var ids = FrontSides.Bounds(_piece.Opening(Front.Opening).Bounds, way);
        TooClose? closest = null;
        foreach (var bound in _piece.ShapesOf(ids))
        {
            if (
                FrontSides.Between(_piece, Parts, [bound], way, null) is not { } gap
                || gap.Smallest.Gap >= closest?.Gap
            )
                continue;
            var (own, other) = gap.Shown(gap.Smallest, 0).Ends(way, Axis.X, Around.Centre().Y);
            closest = new(bound, gap.Smallest.Gap, own, other);
        }
        return closest;
    }
}

/// <summary>What is too close, how far it is away (grid units; below zero where it is in the way), and between which points.</summary>
internal sealed record TooClose(Shape Other, double Gap, Vec3 OnBox, Vec3 OnOther);
