using Dryfit.Casework;
using static Dryfit.Inspection.Tests.Hole;

namespace Dryfit.Inspection.Tests;

/// <summary>Hinges of hand-made doors: how many, in line, and with room; limits are worked out by hand.</summary>
public sealed class HingeTests
{
    /// <summary>The left slab of the run, 297 wide, 498.5 high and 18 thick, on two cup hinges at 100 and 400.</summary>
    private static Bench WithHinges(decimal upper = 400, decimal upperX = 24, decimal plate = 400)
    {
        var bench = Run.Sound();
        var fit = new HingeFit(HingeForm.Cup, new(Bench.Mm(60), Bench.Mm(65), Bench.Mm(20)));
        foreach (var (z, x, side) in new[] { (100m, 24m, 100m), (upper, upperX, plate) })
        {
            var id = bench.Hinge("left-slab", "left-side", fit);
            bench.Change("left-slab", slab => slab.Bored(At(CutKind.HingeCup, x, -2, z, Direction.Front, 35, 13, id)));
            bench.Change(
                "left-side",
                board =>
                    board
                        .Bored(At(CutKind.Bore, 18, 37, side - 16, Direction.Left, 5, 10, id))
                        .Bored(At(CutKind.Bore, 18, 37, side + 16, Direction.Left, 5, 10, id))
            );
        }
        return bench;
    }

    [Fact]
    public void Two_hinges_in_line_with_room_are_sound() => WithHinges().Inspect().IsClean();

    [Theory]
    [InlineData(24.1, null)]
    [InlineData(24.5, "hinges-out-of-line")]
    public void Hinges_stand_in_one_line(double x, string? kind) => Holds(kind, WithHinges(upperX: (decimal)x));

    // Cup hinges are set by up to 2 mm.
    [Theory]
    [InlineData(402, null)]
    [InlineData(402.1, "hinge-halves-apart")]
    [InlineData(397.9, "hinge-halves-apart")]
    public void Hinge_meets_its_plate(double plate, string? kind) => Holds(kind, WithHinges(plate: (decimal)plate));

    // The upper hinge wants from 370 to 430 and 20 beside the side, from the back of the door at -2 to 63.
    [Theory]
    [InlineData(430, null)]
    [InlineData(429, "hinge-lacks-room")]
    [InlineData(353, "hinge-lacks-room")]
    [InlineData(352, null)]
    public void Shelf_that_is_let_in_keeps_out_of_the_room_of_a_hinge(double z, string? kind)
    {
        var bench = WithHinges();
        Shelf(bench, (decimal)z);
        bench.Join(JointKind.Butt, "left-side", "shelf", Direction.Left);
        Holds(kind, bench);
    }

    [Fact]
    public void Shelf_set_back_behind_the_hinge_is_sound()
    {
        var bench = WithHinges();
        Shelf(bench, 390, front: 63);
        bench.Join(JointKind.Butt, "left-side", "shelf", Direction.Left);
        bench.Inspect().IsClean();
    }

    [Fact]
    public void Loose_shelf_at_a_hinge_is_a_warning()
    {
        var bench = WithHinges();
        Shelf(bench, 390);
        bench.Fit("shelf pin 5 mm", "shelf", "left-side");
        var finding = bench.Inspect().Only(HingeRoom.MeetsLoose);
        Assert.Equal("shelf", finding.Parts[0]);
    }

    [Fact]
    public void Hinges_are_told_alike_in_a_mirror()
    {
        Holds("hinges-out-of-line", WithHinges(upperX: 25).Mirrored().Moved(900, -40, 7));
        Holds("hinge-halves-apart", WithHinges(plate: 410).Mirrored());
    }

    /// <summary>Up to 40 in 2 hinges, up to 60 in 3; up to 15 lb 2: hinge maker's quick reference (hardware literature).</summary>
    [Theory]
    [InlineData("40\"", 600, 2, null)]
    [InlineData("40 1/4\"", 600, 2, "hinges-too-few")]
    [InlineData("40 1/4\"", 600, 3, null)]
    [InlineData("60 1/4\"", 600, 3, "hinges-too-few")]
    [InlineData("39\"", 900, 2, null)] // 14 x 39 x 3/4 in at 900 kg/m3: 13.3 lb
    [InlineData("39\"", 1100, 2, "hinges-too-few")] // 16.3 lb
    public void Hinges_are_held_against_the_published_chart(string height, int density, int hinges, string? kind) =>
        Assert.Equal(
            kind is null ? [] : [kind],
            Whole
                .Recipe(
                    $$"""
                    piece: Cupboard
                    units: in
                    materials:
                      body: birch plywood 3/4
                      backs: birch plywood 1/4
                      fronts: { sheet: mdf, thickness: 3/4, density: {{density}} }
                    carcases:
                      box:
                        size: [14, {{height}}, 12]
                        front: { doors: { kind: slab, hang: overlaid, overlay: 3/4, hinges: {{hinges}} } }
                    """
                )
                .Findings.Select(finding => finding.Kind.Id)
        );

    private static void Shelf(Bench bench, decimal z, decimal front = 0) =>
        bench.Add("shelf", Role.Shelf, "carcase", Bench.Box(18, front, z, 582, 560, z + 18));

    private static void Holds(string? kind, Bench bench) =>
        Assert.Equal(kind is null ? [] : [kind], bench.Inspect().Findings.Select(finding => finding.Kind.Id));
}
