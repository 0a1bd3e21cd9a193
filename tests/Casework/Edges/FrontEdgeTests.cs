using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Edges;

/// <summary>What is said of the edges and the grain of all fronts of a carcase.</summary>
public sealed class FrontEdgeTests
{
    private const string Boxes = "boxes: birch plywood 12\nbottoms: birch plywood 6.5";

    [Fact]
    public void The_outer_edges_of_a_slab_are_shaped_all_round()
    {
        var plain = Built.From(Metric("box: { size: [600, 720, 400], front: { doors: slab } }"));
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], front edges: chamfer 3, front: { doors: slab } }")
        );
        var slab = piece.Part("box door slab");
        var (length, width) = (slab.Length.Length.ToMillimetres(), slab.Width.Length.ToMillimetres());
        // Four prisms of 3 x 3 / 2, less a pyramid of 3 x 3 x 3 / 3 that two of them share in each corner.
        Assert.Equal(
            plain.VolumeMm3(plain.Part("box door slab")) - (4.5 * 2 * (length + width)) + (4 * 9),
            piece.VolumeMm3(slab),
            1e-3
        );
        piece.MustBeSound();
    }

    [Fact]
    public void A_framed_door_is_shaped_round_the_outside_of_its_frame_alone()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], front edges: chamfer 3, front: { doors: framed } }",
                materials: "panels: birch plywood 6.5"
            )
        );
        foreach (var stile in piece.PartsOf(Role.DoorStile))
            Assert.Equal(3, stile.Cuts.Count(cut => cut.Kind == CutKind.Chamfer));
        foreach (var rail in piece.PartsOf(Role.DoorRail))
            Assert.Equal(1, rail.Cuts.Count(cut => cut.Kind == CutKind.Chamfer));
        piece.MustBeSound();
    }

    [Fact]
    public void Drawer_fronts_of_a_row_lie_one_after_the_other_in_one_board()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [900, 300, 400], grain runs on: across, front: { columns: { equal: 3, of: drawer } } }",
                materials: Boxes
            )
        );
        var fronts = piece.PartsOf(Role.DrawerFront).OrderBy(front => front.Extent.Min.X).ToList();
        Assert.Equal(3, fronts.Count);
        Assert.Equal([1, 2, 3], fronts.Select(front => front.Run!.Number));
        Assert.All(fronts, front => Assert.Equal("box row 1", front.Run!.Board));
        foreach (var front in fronts)
        {
            Assert.Equal(front.Extent.Min.X - fronts[0].Extent.Min.X, front.Run!.At);
            Assert.Equal(fronts[2].Extent.Max.X - fronts[0].Extent.Min.X, front.Run.Span);
        }
    }

    [Fact]
    public void Down_a_column_they_are_counted_from_the_top()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [500, 800, 400], grain runs on: down, front: { rows: { equal: 3, of: drawer } } }",
                materials: Boxes
            )
        );
        var top = piece.PartsOf(Role.DrawerFront).MaxBy(front => front.Extent.Max.Z)!;
        Assert.Equal((1, Direction.Up), (top.Run!.Number, top.Run.Begins));
        Assert.Equal(Measure.Length.Zero, top.Run.At);
    }

    [Theory]
    [InlineData("across", "No two fronts of the box stand side by side in one line.")]
    [InlineData("down", "No two fronts of the box stand one over the other in one line.")]
    public void A_single_front_has_nothing_to_run_on_to(string way, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"box: {{ size: [600, 720, 400], grain runs on: {way}, front: {{ doors: slab }} }}")),
            StringComparison.Ordinal
        );
}
