using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Measure;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>
/// Plates that stand on edge between rods: a front and a rear pair of rails in each row, rods from the lower to the upper
/// rail of a pair.
/// </summary>
internal static class PlateRack
{
    private const int GramsEach = 700;

    /// <summary>Air under and over the rails of a row, to wipe.</summary>
    private static readonly Length Air = Length.FromMillimetres(12);

    /// <summary>How deep a rod goes into its rail: common practice, no less than half of the rail is left.</summary>
    private static Length Into(RackSite site) =>
        Length.Min(Length.FromMillimetres(10), site.Material.Thickness.Length / 2);

    public static void Make(RackSite site)
    {
        var pitch = site.Pitch(RackRules.PlatePitch);
        var plate = site.Rule(RackRules.PlateHeight, "plate").Length;
        var width = site.Rule(RackRules.PlateRail, "rail width");
        var rod = site.Rule(RackRules.PlateRod, "rod").Length;
        var thickness = site.Material.Thickness.Length;
        if (pitch.Length <= rod)
            throw site.Refused("The rods would touch: their pitch is no more than their diameter.", "a larger pitch");
        var row = site.Bay.InsideHeight / site.Rack.Rows;
        var clear = row.Length - ((Air + thickness) * 2);
        if (clear < plate)
            throw site.Refused(
                $"A plate of {NoRoom.Show(plate)} does not go into a row that is {NoRoom.Show(clear)} clear.",
                "fewer rows, or a smaller plate in the shop's rules for racks"
            );
        // A plate stands safely on two rails three fifths of its diameter apart.
        var apart = plate * new Rational(3, 5);
        site.NeedsDepth(site.Setback.Length + apart + width.Length, "plate rack");
        // One rod more than plates, the first and last half a pitch from the uprights at least.
        var rods = site.Across(pitch.Length, Length.Zero, "plates");
        var first = site.Bay.Inside.Min.X + ((site.Bay.InsideWidth.Length - (pitch.Length * (rods - 1))) / 2);

        var rails = new List<PartDraft>();
        for (var n = 0; n < site.Rack.Rows; n++)
        {
            // Rows are counted from the bottom.
            var low = site.Bay.Inside.Min.Z + (row.Length * n) + Air;
            var high = site.Bay.Inside.Min.Z + (row.Length * (n + 1)) - Air - thickness;
            foreach (var (place, y) in ((string, Length)[])[("front", site.FrontY), ("rear", site.FrontY + apart)])
            {
                var lower = site.Rail($"plate row {n + 1} lower {place} rail", Direction.Up, width, y, low);
                var upper = site.Rail($"plate row {n + 1} upper {place} rail", Direction.Up, width, y, high);
                Rods(site, lower, upper, first, pitch.Length, rods, rod);
                rails.Add(lower);
                rails.Add(upper);
            }
        }
        var top = site.Bay.Inside.Max.Z - Air - thickness - (plate / 2);
        site.Holds("plate rack", "plates", (rods - 1) * site.Rack.Rows, GramsEach, top, rails);
    }

    private static void Rods(
        RackSite site,
        PartDraft lower,
        PartDraft upper,
        Length first,
        Length pitch,
        int count,
        Length diameter
    )
    {
        var into = Into(site);
        var fitting = site.Piece.NextFittingId;
        var y = (lower.Reckoned.Min.Y + lower.Reckoned.Max.Y) / 2;
        var bars = new List<Extent>();
        var radius = diameter / 2;
        for (var n = 0; n < count; n++)
        {
            var x = first + (pitch * n);
            bars.Add(
                new(
                    new(x - radius, y - radius, lower.Reckoned.Max.Z),
                    new(x + radius, y + radius, upper.Reckoned.Min.Z)
                )
            );
            lower.Bore(CutKind.Bore, new(x, y, lower.Reckoned.Max.Z), Direction.Down, diameter, into, fitting);
            upper.Bore(CutKind.Bore, new(x, y, upper.Reckoned.Min.Z), Direction.Up, diameter, into, fitting);
        }
        var length = upper.Reckoned.Min.Z - lower.Reckoned.Max.Z + (into * 2);
        var format = LengthFormat.For(site.Piece.Scope.Unit);
        site.Piece.FitBars(
            $"rod {format.WriteWithUnit(diameter)}, {format.WriteWithUnit(length)} long",
            new(first, y, lower.Reckoned.Max.Z),
            bars,
            lower,
            upper
        );
    }
}
