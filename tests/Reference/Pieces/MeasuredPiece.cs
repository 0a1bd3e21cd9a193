using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Reference.Tests.Pieces;

/// <summary>Measures a built piece with a tape: boxes around parts in their places, not the figures that sized them.</summary>
internal static class MeasuredPiece
{
    public static IReadOnlyList<Part> PartsOf(this Piece piece, Front front) =>
        [.. piece.Parts.Where(part => front.Face.Contains(part.Id, StringComparer.Ordinal))];

    public static IReadOnlyList<Part> PartsOf(this Piece piece, Role role) =>
        [.. piece.Parts.Where(part => part.Role == role)];

    /// <summary>The box around parts in their places.</summary>
    public static Extent Around(this IReadOnlyList<Part> parts)
    {
        Length Least(Axis axis) => parts.Select(part => part.Extent.Min[axis]).Min();
        Length Most(Axis axis) => parts.Select(part => part.Extent.Max[axis]).Max();
        return new Extent(
            new Point(Least(Axis.X), Least(Axis.Y), Least(Axis.Z)),
            new Point(Most(Axis.X), Most(Axis.Y), Most(Axis.Z))
        );
    }

    /// <summary>The round holes of a kind in a part, with the middle of each mouth in the piece.</summary>
    public static IReadOnlyList<(RoundCut Hole, Point At)> Holes(this Part part, CutKind kind) =>
        [
            .. part
                .Cuts.OfType<RoundCut>()
                .Where(hole => hole.Kind == kind)
                .Select(hole => (hole, part.Place.ToPiece(hole.From))),
        ];
}
