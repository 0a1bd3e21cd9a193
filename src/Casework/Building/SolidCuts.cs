using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Casework.Building;

/// <summary>Cuts of a part as cuts of its solid, in grid units.</summary>
internal static class SolidCuts
{
    public static Cut Of(PartCut cut, Grid grid) =>
        cut switch
        {
            SquareCut square => new BoxCut(grid.ToUnits(square.Extent.Min), grid.ToUnits(square.Extent.Max)),
            RoundCut round => Bore(round, grid),
            OutlineCut outline => Prism(outline, grid),
            _ => throw new InvalidOperationException($"A cut of a new kind: {cut}."),
        };

    private static BoreCut Bore(RoundCut cut, Grid grid)
    {
        var into = Unit(cut.Into);
        var from = grid.ToUnits(cut.From);
        var depth = grid.ToUnits(cut.Depth);
        var side = Unit(Directions.Along(NextAxis(cut.Into.Axis()), 1));
        if (cut.TiltDegrees != 0)
        {
            var radians = cut.TiltDegrees * Math.PI / 180;
            var leaning = Unit(cut.Leaning);
            // The mouth of a leaning hole is long: start outside, so that the drill comes in with its full width.
            var lead = grid.ToUnits(cut.Diameter) / 2 / Math.Tan(radians) * 1.1;
            side = Vec3.Cross(into, leaning);
            into = (into * Math.Cos(radians)) + (leaning * Math.Sin(radians));
            from -= into * lead;
            depth += lead;
        }
        // Right-handed: side x across = into.
        var across = Vec3.Cross(into, side);
        return new BoreCut(
            new Frame(from, side, across, into),
            grid.ToUnits(cut.Diameter) / 2,
            depth,
            Facets(cut.Diameter)
        );
    }

    /// <summary>Corners of the polygon that stands for a round hole: enough that a hole looks round at arm's length.</summary>
    private static int Facets(Length diameter) => diameter > Length.FromMillimetres(20) ? 48 : 24;

    private static PrismCut Prism(OutlineCut cut, Grid grid)
    {
        var along = cut.Along;
        var (first, second) = (NextAxis(along), NextAxis(NextAxis(along)));
        var frame = new Frame(
            Unit(Directions.Along(along, 1)) * grid.ToUnits(cut.From),
            Unit(Directions.Along(first, 1)),
            Unit(Directions.Along(second, 1)),
            Unit(Directions.Along(along, 1))
        );
        return new PrismCut(frame, Outline(cut.Outline, grid), grid.ToUnits(cut.To - cut.From));
    }

    private static Profile Outline(IReadOnlyList<OutlineCorner> corners, Grid grid)
    {
        var pencil = Profile.From(grid.ToUnits(corners[0].A), grid.ToUnits(corners[0].B));
        for (var n = 0; n < corners.Count; n++)
        {
            var (corner, next) = (corners[n], corners[(n + 1) % corners.Count]);
            var to = new Vec2(grid.ToUnits(next.A), grid.ToUnits(next.B));
            pencil = corner.Arc is { } arc
                ? pencil.ArcAround(
                    // A centre is no corner: it need not lie on the grid.
                    new Vec2(
                        (arc.A.Millimetres * grid.UnitsPerMm).ToDouble(),
                        (arc.B.Millimetres * grid.UnitsPerMm).ToDouble()
                    ),
                    to,
                    arc.Clockwise ? Bend.Right : Bend.Left,
                    Chords(corner, next, arc)
                )
                : pencil.LineTo(to);
        }
        return pencil.Close();
    }

    /// <summary>Stretches that stand for an arc: none of them lies further off it than this.</summary>
    private const double OffTheRoundMm = 0.05;

    private static int Chords(OutlineCorner from, OutlineCorner to, OutlineArc arc)
    {
        var (a, b) = ((from.A - arc.A).ToMillimetres(), (from.B - arc.B).ToMillimetres());
        var radius = Math.Sqrt((a * a) + (b * b));
        var widest = 2 * Math.Acos(Math.Max(0.5, 1 - (OffTheRoundMm / radius)));
        return Math.Clamp((int)Math.Ceiling(CutOutlines.AngleOf(from, to, arc) / widest), 4, 96);
    }

    private static Axis NextAxis(Axis axis) => (Axis)(((int)axis + 1) % 3);

    public static Vec3 Unit(Direction direction) =>
        direction.Axis() switch
        {
            Axis.X => new(direction.Sign(), 0, 0),
            Axis.Y => new(0, direction.Sign(), 0),
            _ => new(0, 0, direction.Sign()),
        };
}
