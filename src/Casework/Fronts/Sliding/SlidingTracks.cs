using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Sliding;

/// <summary>
/// Two leaves in grooves of the floor and the ceiling of a frameless opening, the right one in front. The upper grooves are
/// more than twice as deep as the lower ones, so that a leaf can be lifted in and out.
/// </summary>
internal sealed class SlidingTracks
{
    /// <summary>Wood left behind the bottom of a groove: 3 mm, common practice.</summary>
    private static readonly Length StaysBehind = Length.FromMillimetres(3);

    private readonly PieceBuilder _piece;
    private readonly FrontSite _site;
    private readonly DoorPlan _plan;
    private readonly PartDraft _floor;
    private readonly PartDraft _ceiling;

    public SlidingTracks(PieceBuilder piece, FrontSite site, DoorPlan plan)
    {
        if (site.IsFramed || site.Floor is null || site.Below != site.Floor || site.Above != site.Ceiling)
            throw NoRoom.Of(
                "Sliding doors run in grooves of the floor and the ceiling of their opening.",
                plan.Place,
                "a carcase without a face frame, in which a board lies below and above the doors"
            );
        (_piece, _site, _plan, _floor, _ceiling) = (piece, site, plan, site.Floor, site.Ceiling!);
    }

    private Figure Groove => _piece.Shop.Length(SlidingRules.GrooveDepth, "groove");

    private Figure UpperGroove =>
        (Groove + Groove + _piece.Shop.Length(SlidingRules.LiftRoom, "lift room")).As("upper groove");

    public Figure Height => (_site.Height + Groove + Groove).As("door height");

    public Figure Width =>
        ((_site.Width + _piece.Shop.Length(SlidingRules.Overlap, "overlap") - EndPlay - EndPlay) / 2).As("door width");

    public Figure EndPlay => _piece.Shop.Length(SlidingRules.EndPlay, "end play");

    public Length BottomZ => _site.Opening.Clear.Min.Z - Groove.Length;

    /// <summary>The outer end of a leaf.</summary>
    public Length Edge(Direction side) => _site.Opening.Clear.Side(side) - (EndPlay.Length * side.Sign());

    /// <summary>The Y of the back of a leaf.</summary>
    public Length BackY(Direction side)
    {
        var back = _site.FaceY + _piece.Shop.Length(SlidingRules.Setback).Length + _plan.Material.Thickness.Length;
        return side == Direction.Right
            ? back
            : back + _piece.Shop.Length(SlidingRules.Between).Length + _plan.Material.Thickness.Length;
    }

    /// <summary>How far the leaves reach behind the front edges of the carcase.</summary>
    public static Figure Reach(PieceBuilder piece, DoorPlan plan) =>
        (
            piece.Shop.Length(SlidingRules.Setback, "setback of the doors")
            + plan.Material.Thickness
            + piece.Shop.Length(SlidingRules.Between, "between the doors")
            + plan.Material.Thickness
        ).As("doors behind the front edges");

    /// <summary>Cuts the grooves for a leaf and its tongues, and lets the one run in the other.</summary>
    public void Run(Leaf leaf, DoorUnit unit)
    {
        var thickness = unit.Extent.Depth;
        var tongue = Length.Min(_piece.Shop.Length(SlidingRules.Tongue).Length, thickness);
        if (thickness > tongue)
            CutTongues(unit, tongue);
        var play = _piece.Shop.Length(SlidingRules.GroovePlay).Length / 2;
        var clear = _site.Opening.Clear;
        var front = leaf.FaceY(_plan.Material.Thickness, _plan.Material.Thickness);
        var track = new Extent(
            new(clear.Min.X, front - play, clear.Min.Z),
            new(clear.Max.X, front + tongue + play, clear.Max.Z)
        );
        Cut(leaf, _floor, Direction.Down, track, Groove.Length);
        Cut(leaf, _ceiling, Direction.Up, track, UpperGroove.Length);
        foreach (var part in unit.Face)
        {
            if (part.Extent.Min.Z == unit.Extent.Min.Z)
                _piece.Join(JointKind.Runs, _floor, part, Direction.Down, Groove.Length, glued: false);
            if (part.Extent.Max.Z == unit.Extent.Max.Z)
                _piece.Join(
                    JointKind.Runs,
                    _ceiling,
                    part,
                    Direction.Up,
                    Groove.Length,
                    UpperGroove.Length - Groove.Length,
                    glued: false
                );
        }
    }

    /// <summary>A thick leaf runs on tongues flush with its face; they are long enough that its shoulders never touch.</summary>
    private void CutTongues(DoorUnit unit, Length tongue)
    {
        var behind = unit.Extent.With(Direction.Front, unit.Extent.Min.Y + tongue);
        var below = Groove.Length + _piece.Shop.Length(SlidingRules.LiftRoom).Length;
        EdgeStrip.Cut(unit.Face, behind.With(Direction.Up, behind.Min.Z + below));
        EdgeStrip.Cut(unit.Face, behind.With(Direction.Down, behind.Max.Z - UpperGroove.Length));
    }

    private static void Cut(Leaf leaf, PartDraft board, Direction into, Extent track, Length depth)
    {
        var room = board.Extent.Size(Axis.Z) - StaysBehind;
        if (depth > room || track.Max.Y > board.Extent.Max.Y)
            throw NoRoom.Of(
                $"The {board.Name} has no room for the groove of the {leaf.Group.Name}, {NoRoom.Show(depth)} deep.",
                leaf.Source,
                "a thicker board, a wider one, or shallower grooves in the shop file's rules for sliding doors"
            );
        var mouth = board.Extent.Side(into.Opposite());
        board.CutAway(CutKind.Groove, track.With(into.Opposite(), mouth).With(into, mouth + (depth * into.Sign())));
    }
}
