using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>The mitred corners of a door's frame, plain or each with a spline that lies in the plane of the frame.</summary>
internal static class MitredFrame
{
    private static readonly Rational RootOfTwo = new((long)Math.Round(Math.Sqrt(2) * 1e9), 1_000_000_000);

    /// <summary>Wood left between a spline and the groove inside it, and outside it to the edges (common practice).</summary>
    private static readonly Length Around = Length.FromMillimetres(3);

    /// <summary>Refuses what has no mitres at its corners.</summary>
    public static void Refuse(Leaf leaf)
    {
        var plan = leaf.Plan;
        if (plan.Arch is not null)
            throw NoRoom.Of(
                $"The top rail of the {leaf.Group.Name} is arched: it does not meet the stiles in mitres.",
                leaf.Source,
                "a straight rail, or tenons"
            );
        if (
            leaf.LeftStile.Length != leaf.RightStile.Length
            || leaf.LeftStile.Length != plan.TopRail.Length
            || leaf.LeftStile.Length != plan.BottomRail.Length
        )
            throw NoRoom.Of(
                $"The stiles and rails of the {leaf.Group.Name} are not equally wide: their mitres would not be at 45 degrees.",
                leaf.Source,
                "`stiles` and `rails` of one width, or tenons"
            );
    }

    /// <param name="end">The end of the stile at the corner: up or down.</param>
    /// <param name="otherEnd">The end of the rail there: left or right.</param>
    public static void Join(
        PieceBuilder piece,
        Leaf leaf,
        PartDraft stile,
        PartDraft rail,
        Direction end,
        Direction otherEnd,
        FrameGroove groove
    )
    {
        CornerMitre.Between(piece, stile, end, rail, otherEnd);
        if (!leaf.Plan.IsSplined)
            return;
        var step = MarkingOut.StepOf(piece);
        var corner = SplineCorner.Of(piece, stile, end, rail, otherEnd);
        var thickness = piece.Shop.Length(JointRules.SplineThickness, "spline thickness");
        var stuff = Length.Min(stile.Reckoned.Depth, rail.Reckoned.Depth);
        if (thickness.Length * 3 > stuff)
            throw NoRoom.Of(
                $"A spline of {NoRoom.Show(thickness.Length)} is thicker than a third of the {rail.Name}, {NoRoom.Show(stuff)} thick.",
                leaf.Source,
                "a thicker frame, or a thinner `spline thickness` in the shop file"
            );
        var deep = corner.Depth(piece);
        // Clear of the groove for the panel inside, and of the edges of the door outside.
        var from = ((groove.Depth.Length * RootOfTwo) + deep.Length + Around).CeilingTo(step);
        var to = (corner.Seam - deep.Length - Around).FloorTo(step);
        if (to - from < deep.Length)
            throw NoRoom.Of(
                $"The frame of the {leaf.Group.Name} is too narrow for splines: between its groove and its edges their mitres have no room for them.",
                leaf.Source,
                "wider stiles and rails, a smaller `spline depth` in the shop file, or plain mitres"
            );
        var middle = (rail.Reckoned.Min.Y + rail.Reckoned.Max.Y) / 2;
        corner.Let(
            piece,
            stile,
            rail,
            new Spline(
                $"{Level(end)} {Spoken.Of(otherEnd)} spline",
                deep,
                Figure.Given("between groove and edge", to - from, new TradeOrigin("along the mitre, rounded down")),
                thickness,
                (from, to),
                (middle - (thickness.Length / 2), middle + (thickness.Length / 2)),
                LiesFlat: true
            )
        );
    }

    private static string Level(Direction end) => end == Direction.Up ? "upper" : "lower";
}
