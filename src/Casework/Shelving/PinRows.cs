using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;

namespace Dryfit.Casework.Shelving;

/// <summary>
/// Rows of holes for the pins of one adjustable shelf: front and rear row in both uprights, the middle hole of each
/// carrying the shelf as drawn.
/// </summary>
internal static class PinRows
{
    public static void Bore(PieceBuilder piece, Cell bay, PartDraft shelf, Length undersideZ)
    {
        var shop = piece.Shop;
        var pin = piece.Families.ShelfPin(said: null, shelf.Source);
        var diameter = pin.Length(ShelfRules.PinDiameter).Length;
        var depth = pin.Length(ShelfRules.PinDepth).Length;
        var pitch = shop.Length(ShelfRules.PinPitch).Length;
        var holes = shop.Count(ShelfRules.PinHoles);
        var rows = Rows(piece, bay);
        // The pin's head lies against the underside of the shelf.
        var pinZ = undersideZ - (diameter / 2);
        foreach (var (upright, into) in Uprights(bay))
        {
            var x = bay.Inside.Side(into);
            var fitting = piece.NextFittingId;
            foreach (var y in rows)
            {
                for (var n = 0; n < holes; n++)
                {
                    var z = pinZ + (pitch * (n - (holes / 2)));
                    var at = new Point(x, y, z);
                    var clear =
                        z - diameter > bay.Inside.Min.Z
                        && z + diameter < bay.Inside.Max.Z
                        && upright.IsWood(Dowels.HoleBox(at, into, diameter, depth));
                    if (n == holes / 2 || (clear && !RunsIntoAnother(upright.At(at), at, into, diameter)))
                        BoreOnce(upright, at, into, diameter, DepthIn(upright, depth), fitting);
                }
            }
            piece.Fit(pin, null, new(x, rows[0], pinZ), 2, [shelf, .. Carriers(upright, x, rows, pinZ)]);
        }
    }

    /// <summary>Holes from both sides of a partition keep 3 mm apart at their bottoms.</summary>
    private static Length DepthIn(PartDraft upright, Length depth) =>
        upright.Role == Role.Partition
            ? Length.Min(
                depth,
                Length.Max((upright.Thickness.Length - Length.FromMillimetres(3)) / 2, upright.Thickness.Length / 4)
            )
            : depth;

    /// <summary>Rows of two shelves that are no whole pitch apart leave out the holes that would tear out.</summary>
    private static bool RunsIntoAnother(PartDraft upright, Point at, Direction into, Length diameter)
    {
        var (from, way) = (upright.Place.ToBoard(at), upright.Place.ToBoard(into));
        return upright
            .Cuts.OfType<RoundCut>()
            .Any(c =>
                c.Kind == CutKind.ShelfPinHole
                && c.Into == way
                && c.From != from
                && Enum.GetValues<Axis>().All(axis => Length.Abs(c.From[axis] - from[axis]) < diameter * 2)
            );
    }

    // The rows of two shelves may share holes.
    private static void BoreOnce(
        PartDraft upright,
        Point at,
        Direction into,
        Length diameter,
        Length depth,
        string fitting
    )
    {
        var there = upright.At(at);
        var from = there.Place.ToBoard(at);
        if (!there.Cuts.OfType<RoundCut>().Any(c => c.From == from && c.Kind == CutKind.ShelfPinHole))
            upright.Bore(CutKind.ShelfPinHole, at, into, diameter, depth, fitting);
    }

    /// <summary>The parts of an upright that hold what stands in its rows at a height.</summary>
    public static IEnumerable<PartDraft> Carriers(PartDraft upright, Length x, IReadOnlyList<Length> rows, Length z) =>
        rows.Select(y => upright.At(new(x, y, z))).Distinct();

    /// <summary>Where the front and the rear row stand.</summary>
    public static IReadOnlyList<Length> Rows(PieceBuilder piece, Cell bay)
    {
        var setback = piece.Shop.Length(ShelfRules.PinSetback).Length;
        return [bay.Inside.Min.Y + setback, bay.Inside.Max.Y - setback];
    }

    /// <summary>The uprights of a bay, each with the way from the inside into it.</summary>
    public static IReadOnlyList<(PartDraft Upright, Direction Into)> Uprights(Cell bay) =>
        [(bay.InsideLeft, Direction.Left), (bay.InsideRight, Direction.Right)];
}
