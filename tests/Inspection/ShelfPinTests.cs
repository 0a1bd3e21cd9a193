using Dryfit.Casework;
using static Dryfit.Inspection.Tests.Hole;

namespace Dryfit.Inspection.Tests;

/// <summary>Shelves on their pins: what lies on a pin is worked out by hand from pins that stand out by 8 mm.</summary>
public sealed class ShelfPinTests
{
    // Between the sides from 18 to 582; the holes are 5 wide, so that the underside at 302.5 lies on pins at 300.
    private static Bench WithShelf(decimal left, decimal right, decimal lastPin = 300)
    {
        var bench = Run.Sound();
        bench.Add("shelf", Role.Shelf, "carcase", Bench.Box(left, 20, 302.5m, right, 540, 320.5m));
        bench.Change("left-side", side => side.Bored(Pin(18, 60, 300, true)).Bored(Pin(18, 500, 300, true)));
        bench.Change("right-side", side => side.Bored(Pin(582, 60, 300, false)).Bored(Pin(582, 500, lastPin, false)));
        bench.Fit("shelf pin", "shelf", "left-side");
        bench.Fit("shelf pin", "shelf", "right-side");
        return bench;
    }

    private static Hole Pin(decimal x, decimal y, decimal z, bool left) =>
        At(CutKind.ShelfPinHole, x, y, z, left ? Direction.Left : Direction.Right, 5, 10, "pins");

    [Fact]
    public void Shelf_with_a_little_play_rests_on_its_pins() => WithShelf(19, 581).Inspect().IsClean();

    // 564 between the sides: 559 long leaves 8 - 5 = 3 on the pins of one end.
    [Fact]
    public void Shelf_with_3_mm_on_its_pins_is_sound() => WithShelf(20, 579).Inspect().IsClean();

    [Theory]
    [InlineData(20, 578.9, 2.9)]
    [InlineData(18, 575, 1)]
    [InlineData(22, 574, 0)]
    public void Shelf_that_is_too_short_for_its_pins_is_told(double left, double right, double under)
    {
        var finding = WithShelf((decimal)left, (decimal)right).Inspect().Only(ShelfPins.TooShort);
        Assert.Equal(under, finding.Length().ToMillimetres(), 1e-3);
        Assert.Equal("shelf", finding.Parts[0]);
    }

    // 552 long leaves 12 at one end: 4 short of the pins, and 3 more to lie on them.
    [Fact]
    public void Shelf_that_misses_its_pins_is_told_how_much_longer_it_must_be()
    {
        var finding = WithShelf(22, 574).Inspect().Only(ShelfPins.TooShort);
        Assert.StartsWith("Cut it at least 7 mm longer", finding.Remedy!.Text, StringComparison.Ordinal);
    }

    // 1/128 in is 0.198 mm.
    [Fact]
    public void Pins_level_to_the_fit_are_sound() => WithShelf(19, 581, 299.81m).Inspect().IsClean();

    [Fact]
    public void Pin_that_is_lower_than_the_others_is_told()
    {
        var finding = WithShelf(19, 581, 298).Inspect().Only(ShelfPins.NotLevel);
        Assert.Equal(2, finding.Length().ToMillimetres(), 1e-3);
        Assert.Equal("right-side", finding.Parts[0]);
    }

    [Fact]
    public void Mirrored_and_moved_shelves_are_told_alike()
    {
        WithShelf(20, 578.9m).Mirrored().Moved(1000, -500, 30).Inspect().Only(ShelfPins.TooShort);
        WithShelf(19, 581, 298).Mirrored().Moved(-1000, 500, 30).Inspect().Only(ShelfPins.NotLevel);
    }
}
