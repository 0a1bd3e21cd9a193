using Dryfit.Casework.Building;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Drawers: box, slides and front.</summary>
public sealed class DrawerTests
{
    private static readonly Material[] Stock =
    [
        Stuff("boxes", MaterialKind.Solid, "1/2\""),
        Stuff("bottoms", MaterialKind.Sheet, "1/4\""),
    ];

    /// <summary>
    /// Box = opening - 1 in for side slides of 1/2 in (published notes on drawer spacing and on side-mounted slides).
    /// </summary>
    [Theory]
    [InlineData("15\"", "14\"")]
    [InlineData("22 3/8\"", "21 3/8\"")]
    public void Box_is_an_inch_narrower_than_its_opening(string opening, string box)
    {
        var bench = new FrontBench(LengthUnit.Inch, opening, "6\"", materials: Stock);
        bench.Drawer();
        var (left, right) = (bench["upper drawer 1 left side"].Extent, bench["upper drawer 1 right side"].Extent);
        Assert.Equal(Exact(box), right.Max.X - left.Min.X);
        Assert.Equal(Exact("1/2\""), left.Min.X);
        Assert.Equal(Exact("1/2\""), Exact(opening) - right.Max.X);
    }

    /// <summary>A front that laps 3/8 in over each side of its opening (published notes on drawers).</summary>
    [Fact]
    public void Overlaid_front_laps_over_its_opening_on_each_side()
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "6\"",
            hang: Hang.Overlay,
            reach: "3/8\"",
            materials: Stock
        );
        var front = bench.Drawer();
        var face = bench.Around(front);
        Assert.Equal(Exact("15 3/4\""), face.Width);
        Assert.Equal(Exact("6 3/4\""), face.Height);
        Assert.Equal(FrontMotion.SlidesOut, front.Motion);
        Assert.Equal(Exact("3/8\""), front.Wanted.Left);
    }

    [Theory]
    [InlineData(false, Hang.Inset)]
    [InlineData(false, Hang.Overlay)]
    [InlineData(true, Hang.Inset)]
    [InlineData(true, Hang.Overlay)]
    public void Parts_of_a_drawer_meet_as_their_joints_say_and_nowhere_else(bool faceFrame, Hang hang)
    {
        var bench = new FrontBench(LengthUnit.Inch, "15 1/3\"", "6\"", faceFrame, hang, materials: Stock);
        bench.Drawer();
        var parts = bench.Piece.Parts.Where(p => p.Group.Kind == GroupKind.Drawer || p.Role == Role.Packer).ToList();
        Assert.Empty(SquareFit.Overlaps(bench.Piece.Parts));
        Assert.Empty(SquareFit.Strangers(parts, bench.Piece.Joints));
        Assert.All(
            bench.Piece.Joints,
            joint => Assert.Equal(joint.Play, SquareFit.Gap(Part(joint.Receives), Part(joint.Enters), joint.Into))
        );

        PartDraft Part(string id) => bench.Piece.Parts.Single(p => p.Id == id);
    }

    [Fact]
    public void Height_is_rounded_down_and_says_so()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "6 3/16\"", materials: Stock);
        bench.Drawer();
        var side = bench["upper drawer 1 left side"];
        Assert.Equal(Exact("5 1/8\""), side.Width.Length);
        Assert.Equal("box height = (room for the box) to 1/8 in", Sums.Of(side.Width));
    }

    [Fact]
    public void Longest_slide_that_goes_in_sets_the_length()
    {
        // 18 in inside, front 3/4 in, behind 1/2 in: 16 3/4 in are left, and slides come in steps of 2 in.
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "6\"", materials: Stock);
        var front = bench.Drawer("inset");
        Assert.Equal(Exact("16\""), bench["upper drawer 1 left side"].Length.Length);
        Assert.Equal(Exact("16\""), front.Drawer!.SlideLength);
        Assert.Equal(
            ["side slide 16 in", "side slide 16 in"],
            bench.Piece.Hardware.Where(h => h.Kind.StartsWith("side", StringComparison.Ordinal)).Select(h => h.Kind)
        );
    }

    [Fact]
    public void Packers_bring_the_slides_out_to_the_edge_of_a_face_frame()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "6\"", faceFrame: true, materials: Stock);
        var front = bench.Drawer();
        var left = bench["upper drawer 1 left packer"];
        Assert.Equal(Exact("1/4\""), left.Thickness.Length);
        Assert.Equal(Length.Zero, left.Extent.Max.X);
        Assert.Equal(Exact("3/4\""), left.Extent.Min.Y);
        Assert.Equal((left.Id, bench["upper drawer 1 right packer"].Id), front.Drawer!.RunsBetween);
        Assert.Contains(bench.Piece.Joints, j => j.Kind == JointKind.Screwed && j.Enters == left.Id);
    }

    [Fact]
    public void Without_a_face_frame_the_slides_go_to_the_sides()
    {
        var bench = new FrontBench(LengthUnit.Inch, "15\"", "6\"", materials: Stock);
        var front = bench.Drawer();
        Assert.Equal(("upper/left-side", "upper/right-side"), front.Drawer!.RunsBetween);
        Assert.Equal((Exact("1/2\""), Exact("1/2\"") + Exact("1/32\"")), front.Drawer.SideClearance);
    }

    [Fact]
    public void Box_leaves_the_clamps_as_wide_as_its_ends_were_cut()
    {
        // Reckoned: 14 in box, sides 1/2 in, rabbets 1/4 in: ends of 13 1/2 in.
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "6\"",
            asCut: "box front: { length: 13 }\ndrawer 1 back: { length: 13 }\n",
            materials: Stock
        );
        var front = bench.Drawer();
        var (left, right) = (bench["upper drawer 1 left side"].Extent, bench["upper drawer 1 right side"].Extent);
        Assert.Equal(Exact("13 1/2\""), right.Max.X - left.Min.X);
        Assert.Equal(left.Min.X, Exact("15\"") - right.Max.X);
        // Half an inch less room than the bottom wants, and 1/32 in of play a side.
        Assert.Equal(
            [
                ("upper drawer 1 left side", "upper drawer 1 bottom"),
                ("upper drawer 1 right side", "upper drawer 1 bottom"),
            ],
            SquareFit.Overlaps([.. bench.PartsOf(front)]).Select(p => (p.A.Name, p.B.Name))
        );
    }

    [Fact]
    public void Front_and_box_front_are_told_apart_in_the_makers_numbers()
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "6\"",
            asCut: "drawer 1 front: { length: 14 }",
            materials: Stock
        );
        bench.Drawer();
        Assert.Equal(Exact("14\""), bench["upper drawer 1 front"].Length.Length);
        Assert.False(bench["upper drawer 1 box front"].IsAsCut);
    }

    [Fact]
    public void Whole_box_of_another_size_is_built_so()
    {
        var bench = new FrontBench(
            LengthUnit.Inch,
            "15\"",
            "6\"",
            asCut: "drawer 1: { width: 13 1/2, height: 4 }",
            materials: Stock
        );
        bench.Drawer();
        var (left, right) = (bench["upper drawer 1 left side"].Extent, bench["upper drawer 1 right side"].Extent);
        Assert.Equal(Exact("13 1/2\""), right.Max.X - left.Min.X);
        Assert.Equal(Exact("4\""), left.Height);
        // The front is a part of its own.
        Assert.Equal(Exact("15\"") - Exact("3/16\""), bench["upper drawer 1 front"].Length.Length);
    }

    [Theory]
    [InlineData("1 1/2\"", "6\"", "18\"")]
    [InlineData("15\"", "1 1/4\"", "18\"")]
    [InlineData("15\"", "6\"", "2\"")]
    public void Opening_too_small_for_a_drawer_is_refused(string width, string height, string depth)
    {
        var bench = new FrontBench(LengthUnit.Inch, width, height, depth: depth, materials: Stock);
        var fault = Assert.Throws<CannotBuildException>(() => bench.Drawer("inset"));
        Assert.Contains("drawer 1", fault.Error.Message, StringComparison.Ordinal);
        Assert.NotNull(fault.Error.Place);
    }
}
