using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Measure;

namespace Dryfit.Casework.Shelving;

/// <summary>
/// Metal strips for the clips of adjustable shelves: a front and a rear one on both uprights of a space, from its floor to
/// its ceiling, let into grooves or planted.
/// </summary>
internal static class ShelfStrips
{
    /// <summary>Cuts the grooves that strips lie in and counts the strips.</summary>
    public static void Fit(PieceBuilder piece, Cell space, ShelfSupport on)
    {
        var width = piece.Shop.Length(ShelfRules.StripWidth).Length;
        var depth = piece.Shop.Length(ShelfRules.StripDepth).Length;
        foreach (var (upright, into) in PinRows.Uprights(space))
        {
            var face = space.Inside.Side(into);
            foreach (var y in PinRows.Rows(piece, space))
            {
                var strip = space
                    .Inside.With(into, face + (depth * into.Sign()))
                    .With(into.Opposite(), face)
                    .With(Direction.Front, y - (width / 2))
                    .With(Direction.Back, y + (width / 2));
                upright.RequireWood(strip, "shelf strip");
                if (on == ShelfSupport.Strips && !HasGroove(upright.At(new(face, y, space.Inside.Min.Z)), strip))
                    upright.CutAway(CutKind.Groove, strip, piece.NextFittingId);
                piece.Fit("shelf strip", new(face, y, space.Inside.Min.Z), 1, upright);
            }
        }
    }

    /// <summary>Counts the clips that carry one shelf.</summary>
    public static void Carry(PieceBuilder piece, Cell space, PartDraft shelf, Length undersideZ)
    {
        var rows = PinRows.Rows(piece, space);
        foreach (var (upright, into) in PinRows.Uprights(space))
        {
            var x = space.Inside.Side(into);
            piece.Fit(
                "shelf clip",
                new(x, rows[0], undersideZ),
                2,
                [shelf, .. PinRows.Carriers(upright, x, rows, undersideZ)]
            );
        }
    }

    private static bool HasGroove(PartDraft upright, Extent strip) =>
        upright.Cuts.OfType<SquareCut>().Any(c => c.Kind == CutKind.Groove && c.Extent == upright.Place.ToBoard(strip));
}
