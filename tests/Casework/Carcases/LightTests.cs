using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// Lights in a box of 600 x 720 x 400: 564 x 684 x 381.5 inside, from 18, 0, 18. House rules in millimetres: grooves of 17 x 8,
/// 32 off the uprights and 40 off the front; pucks of 58 x 13; cables in grooves of 6, out by holes of 12.
/// </summary>
public sealed class LightTests
{
    [Fact]
    public void A_strip_lies_in_a_groove_and_its_cable_runs_back_and_out()
    {
        var piece = Built.From(Box("lights: { strips: above }"));
        var panel = piece.Part("box top panel");
        var grooves = panel
            .Cuts.OfType<SquareCut>()
            .Where(c => c.Kind == CutKind.Groove && c.Joint!.StartsWith("fitting", StringComparison.Ordinal))
            .Select(c => panel.Place.ToPiece(c.Extent))
            .ToList();
        Assert.Equal(2, grooves.Count);
        // From 50 to 550, 40 to 57 from the front, 8 up from the underside at 702.
        Assert.Equal("50 40 702 to 550 57 710", Said(piece, grooves[0]));
        // The cable at the right end of it, back to 381.5.
        Assert.Equal("544 57 702 to 550 381.5 708", Said(piece, grooves[1]));
        var back = piece.Part("box back");
        var hole = Assert.Single(back.Cuts.OfType<RoundCut>());
        Assert.Equal("12", piece.Write(hole.Diameter));
        Assert.Equal(
            ("547", "690"),
            (piece.Write(back.Place.ToPiece(hole.From).X), piece.Write(back.Place.ToPiece(hole.From).Z))
        );
        // Half a metre at 10 W a metre is 5 W, of which a driver should have a fifth more: 6.25, sold as 10.
        Assert.Equal(
            ["light strip, 500 mm long", "driver for lights, 10 W or more"],
            piece.Hardware.Where(h => h.IsElectric).Select(h => h.Kind)
        );
        piece.MustBeSound();
    }

    [Fact]
    public void Fixed_shelves_get_strips_and_loose_ones_none()
    {
        var piece = Built.From(
            Box("lights: { strips: shelves, cables: left }, shelves: { fixed: 1, at: [300], adjustable: 1 }")
        );
        Assert.Single(piece.Hardware, h => h.Kind.StartsWith("light strip", StringComparison.Ordinal));
        Assert.Equal(2, piece.Part("box fixed shelf 1").Cuts.Count(c => c.Kind == CutKind.Groove));
        Assert.DoesNotContain(piece.Part("box adjustable shelf 1").Cuts, c => c.Kind == CutKind.Groove);
        piece.MustBeSound();
    }

    [Fact]
    public void Pucks_share_one_cable()
    {
        var piece = Built.From(Box("lights: { pucks: 3, driver: on top }"));
        var panel = piece.Part("box top panel");
        var recesses = panel.Cuts.OfType<RoundCut>().Where(c => piece.Write(c.Diameter) == "58").ToList();
        // Thirds of 564, a recess in the middle of each.
        Assert.Equal(["112", "300", "488"], recesses.Select(c => piece.Write(panel.Place.ToPiece(c.From).X)));
        // The cable goes up through the panel to a driver on it.
        Assert.Single(
            panel.Cuts.OfType<RoundCut>(),
            c => piece.Write(c.Diameter) == "12" && piece.Write(c.Depth) == "18"
        );
        Assert.DoesNotContain(piece.Part("box back").Cuts, c => c is RoundCut);
        piece.MustBeSound();
    }

    [Fact]
    public void A_driver_in_the_bay_gets_air_through_the_back()
    {
        var piece = Built.From(Box("lights: { strips: above, driver: in the bay }"));
        var vents = piece.Part("box back").Cuts.OfType<RoundCut>().Where(c => piece.Write(c.Diameter) == "25").ToList();
        // Right of the bay at 582, holes of 25 twice their width apart.
        Assert.Equal(
            ["557", "507", "457", "407"],
            vents.Select(c => piece.Write(piece.Part("box back").Place.ToPiece(c.From).X))
        );
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("lights: { driver: apart }", "Which lights is missing.")]
    [InlineData("lights: { strips: shelves }", "There is no fixed shelf for a strip")]
    [InlineData("lights: { strips: shelves }, shelves: { fixed: 1, material: thin }", "too thin for the recess")]
    [InlineData("lights: { pucks: 8 }", "There is no room for 8 pucks")]
    [InlineData("lights: { strips: above, pucks: 2 }", "do not go into one panel")]
    [InlineData("lights: { strips: above, from front: 370 }", "There is no room for a strip")]
    [InlineData("lights: { strips: above }, drawer", "no room for lights behind a drawer")]
    public void Lights_that_cannot_be_are_refused(string front, string says) =>
        Assert.Contains(says, Built.ErrorOf(Box(front)), StringComparison.Ordinal);

    [Fact]
    public void Nothing_goes_on_top_where_a_top_lies() =>
        Assert.Contains(
            "Something lies on the panel above",
            Built.ErrorOf(
                Metric(
                    "box: { size: [600, 720, 400], closed by: panel, top: { material: body }, front: { lights: { strips: above, driver: on top } } }"
                )
            ),
            StringComparison.Ordinal
        );

    private static string Box(string front) =>
        Metric($"box: {{ size: [600, 720, 400], front: {{ {front} }} }}", materials: "thin: oak 10");

    private static string Said(Piece piece, Extent e) =>
        $"{piece.Write(e.Min.X)} {piece.Write(e.Min.Y)} {piece.Write(e.Min.Z)} to {piece.Write(e.Max.X)} {piece.Write(e.Max.Y)} {piece.Write(e.Max.Z)}";
}
