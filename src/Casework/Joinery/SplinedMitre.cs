using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// A mitre with a spline: a strip of its own in grooves square to the seam, its grain across it, so that the glue in the end
/// grain is not all that holds. It lies a third of the way from the inner corner, where most wood is behind it: common
/// practice, as is the third of the thickness that it may take.
/// </summary>
internal static class SplinedMitre
{
    /// <summary>Cuts both ends, lets the spline in and ties all three. Both boards reach to the outer corner.</summary>
    /// <param name="end">The end of <paramref name="receives"/> at the corner, as a direction of the piece.</param>
    /// <param name="otherEnd">The end of <paramref name="enters"/> at the corner.</param>
    /// <param name="name">What the spline is called in the group of <paramref name="enters"/>.</param>
    /// <param name="run">From where and how far it runs along the seam's third axis; null: from edge to edge.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        Direction end,
        PartDraft enters,
        Direction otherEnd,
        string name,
        (Length From, Figure Length)? run = null
    )
    {
        var joint = CornerMitre.Between(piece, receives, end, enters, otherEnd);
        var corner = SplineCorner.Of(piece, receives, end, enters, otherEnd);
        var thickness = piece.Shop.Length(JointRules.SplineThickness, "spline thickness");
        var third = corner.Stuff.Length / 3;
        if (thickness.Length > third)
            throw new CannotBuildException(
                new InputError(
                    $"A spline of {Say(thickness.Length)} is thicker than a third of the {enters.Name}, {Say(corner.Stuff.Length)} thick.",
                    enters.Source,
                    $"thicker boards, or a `spline thickness` of {Say(third.FloorTo(MarkingOut.StepOf(piece)))} or less in the shop file"
                )
            );
        var (from, length) = run ?? corner.FromEdgeToEdge(receives, enters);
        var middle = corner.Third;
        corner.Let(
            piece,
            receives,
            enters,
            new Spline(
                name,
                corner.Depth(piece),
                length,
                thickness,
                (middle - (thickness.Length / 2), middle + (thickness.Length / 2)),
                (from, from + length.Length),
                LiesFlat: false
            )
        );
        return joint;

        string Say(Length length) => LengthFormat.For(piece.Scope.Unit).WriteWithUnit(length);
    }
}
