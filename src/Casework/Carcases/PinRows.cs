using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Carcases;

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
        var setback = shop.Length(ShelfRules.PinSetback).Length;
        var holes = shop.Count(ShelfRules.PinHoles);
        Length[] rows = [bay.Inside.Min.Y + setback, bay.Inside.Max.Y - setback];
        // The pin's head lies against the underside of the shelf.
        var pinZ = undersideZ - (diameter / 2);
        foreach (var (upright, x, into) in Uprights(bay))
        {
            var fitting = piece.NextFittingId;
            foreach (var y in rows)
            {
                for (var n = 0; n < holes; n++)
                {
                    var z = pinZ + (pitch * (n - (holes / 2)));
                    var clear = z - diameter > bay.Inside.Min.Z && z + diameter < bay.Inside.Max.Z;
                    if (n == holes / 2 || (clear && !RunsIntoAnother(upright, new(x, y, z), into, diameter)))
                        BoreOnce(upright, new(x, y, z), into, diameter, DepthIn(upright, depth), fitting);
                }
            }
            piece.Fit(pin, null, new(x, rows[0], pinZ), 2, shelf, upright);
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
        var from = upright.Place.ToBoard(at);
        if (!upright.Cuts.OfType<RoundCut>().Any(c => c.From == from && c.Kind == CutKind.ShelfPinHole))
            upright.Bore(CutKind.ShelfPinHole, at, into, diameter, depth, fitting);
    }

    private static (PartDraft, Length, Direction)[] Uprights(Cell bay) =>
        [(bay.InsideLeft, bay.Inside.Min.X, Direction.Left), (bay.InsideRight, bay.Inside.Max.X, Direction.Right)];
}
