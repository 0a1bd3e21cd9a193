using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Drawers;

/// <summary>Trays on slides behind doors.</summary>
public sealed class PullOutTests
{
    private static string Recipe(string front, string frame = "") =>
        $$"""
            piece: Larder
            units: mm
            materials: { body: birch plywood 18, boxes: birch plywood 12, bottoms: birch plywood 6.5, panels: birch plywood 6.5 }
            carcases:
              larder: { size: [636, 836, 500]{{frame}}, front: {{front}} }
            """;

    /// <summary>
    /// 600 mm inside, slides 25 mm in from both uprights and 12.7 mm thick: the tray is 524.6 mm wide.
    /// </summary>
    [Fact]
    public void Tray_stands_in_from_the_uprights_by_packers_and_slides()
    {
        var piece = Built.From(Recipe("{ doors: slab pair, pull outs: 2 }"));
        piece.MustBeSound();
        var (left, right) = (piece.Part("larder pull-out 1 left side"), piece.Part("larder pull-out 1 right side"));
        Assert.Equal(Exact("524.6 mm"), right.Extent.Max.X - left.Extent.Min.X);
        Assert.Equal(Exact("25 mm"), piece.Part("larder pull-out 1 left packer").Extent.Width);
        Assert.Equal(4, piece.Hardware.Count(h => h.Kind.StartsWith("side slide", StringComparison.Ordinal)));
    }

    /// <summary>800 mm inside shared by two: each stands 12 mm above its half.</summary>
    [Fact]
    public void Trays_share_the_height_of_the_bay()
    {
        var piece = Built.From(Recipe("{ doors: slab pair, pull outs: 2 }"));
        var (lower, upper) = (piece.Part("larder pull-out 1 left side"), piece.Part("larder pull-out 2 left side"));
        Assert.Equal(Exact("400 mm"), upper.Extent.Min.Z - lower.Extent.Min.Z);
        Assert.Equal(Exact("12 mm"), lower.Extent.Min.Z - piece.Part("larder bottom").Extent.Max.Z);
    }

    [Fact]
    public void Behind_a_face_frame_trays_pass_its_stiles()
    {
        var piece = Built.From(
            Recipe("{ doors: framed pair, pull outs: 2 }", ", face frame: { stiles: 50, rails: 40 }")
        );
        piece.MustBeSound();
        var side = piece.Part("larder pull-out 1 left side");
        Assert.Equal(Exact("37.7 mm"), side.Extent.Min.X - piece.Part("larder face frame left stile").Extent.Max.X);
    }

    /// <summary>600 inside; each slide takes 25 of packer, and 42 in all of the inside of the box, whose sides are 12.</summary>
    [Fact]
    public void Under_slides_lie_below_the_tray_and_make_it_wider()
    {
        var piece = Built.From(Recipe("{ doors: slab pair, pull outs: { count: 2, slides: under } }"));
        piece.MustBeSound();
        var (left, right) = (piece.Part("larder pull-out 1 left side"), piece.Part("larder pull-out 1 right side"));
        Assert.Equal(Exact("532 mm"), right.Extent.Max.X - left.Extent.Min.X);
        // 14 mm of room under the box; the packer stands on the floor of the bay beside the slide.
        Assert.Equal(Exact("14 mm"), left.Extent.Min.Z - piece.Part("larder bottom").Extent.Max.Z);
        Assert.Equal(
            piece.Part("larder bottom").Extent.Max.Z,
            piece.Part("larder pull-out 1 left packer").Extent.Min.Z
        );
        // The hooks of both slides go into the back.
        Assert.Equal(2, piece.Part("larder pull-out 1 back").Cuts.OfType<RoundCut>().Count());
    }

    [Fact]
    public void In_an_open_bay_the_slides_are_on_the_uprights()
    {
        var piece = Built.From(Recipe("{ open, pull outs: 2 }"));
        piece.MustBeSound();
        var (left, right) = (piece.Part("larder pull-out 1 left side"), piece.Part("larder pull-out 1 right side"));
        // 600 less 12.7 on each side.
        Assert.Equal(Exact("574.6 mm"), right.Extent.Max.X - left.Extent.Min.X);
        Assert.DoesNotContain(piece.Parts, part => part.Role == Role.Packer);
    }

    [Fact]
    public void Each_is_a_front_without_a_face_that_slides_out_and_is_judged_as_a_drawer()
    {
        var piece = Built.From(Recipe("{ doors: slab pair, pull outs: 2 }"));
        var trays = piece.Fronts.Where(front => front.Motion == FrontMotion.SlidesOut).ToList();
        Assert.Equal(2, trays.Count);
        Assert.All(trays, tray => Assert.Empty(tray.Face));
        var lower = Assert.IsType<DrawerFit>(
            trays.Single(t => t.Group.EndsWith("/pull-out-1", StringComparison.Ordinal)).Drawer
        );
        Assert.Equal(piece.Part("larder pull-out 1 left packer").Id, lower.RunsBetween.Left);
        Assert.Equal(Exact("12.7 mm"), lower.SideClearance.AtLeast);
        Assert.Equal(5, lower.Box.Count);
    }

    /// <summary>600 x 800 inside, overlaid fronts that stop 1.5 short of the outside: 633 x 833; boxes of 100 every 400.</summary>
    [Fact]
    public void Trays_on_one_front_slide_out_together()
    {
        var piece = Built.From(Recipe("{ pull outs: { count: 2, front: body, pull: pull } }"));
        piece.MustBeSound();
        var face = piece.Part("larder pull-out front");
        Assert.Equal((Exact("633 mm"), Exact("833 mm")), (face.Length.Length, face.Width.Length));
        var (lower, upper) = (
            piece.Part("larder pull-out tray 1 left side"),
            piece.Part("larder pull-out tray 2 left side")
        );
        Assert.Equal(Exact("30 mm"), lower.Extent.Min.Z);
        Assert.Equal(Exact("400 mm"), upper.Extent.Min.Z - lower.Extent.Min.Z);
        // 600 less 12.7 on each side: slides on the uprights.
        Assert.Equal(
            Exact("574.6 mm"),
            piece.Part("larder pull-out tray 1 right side").Extent.Max.X - lower.Extent.Min.X
        );
        var front = Assert.Single(piece.Fronts);
        Assert.Equal(FrontMotion.SlidesOut, front.Motion);
        Assert.Equal(10, front.Drawer!.Box.Count);
        foreach (var tray in (int[])[1, 2])
            Assert.Contains(
                piece.Joints,
                joint =>
                    joint.Kind == JointKind.Screwed
                    && joint.Enters == piece.Part($"larder pull-out tray {tray} box front").Id
                    && joint.Receives == face.Id
            );
    }

    /// <summary>A rail of 40 stands up 22 over the bottom of 18: trays slide out over it.</summary>
    [Fact]
    public void The_lowest_tray_passes_the_rail_of_a_face_frame()
    {
        var piece = Built.From(Recipe("{ doors: slab pair, pull outs: 2 }", ", face frame: { stiles: 50, rails: 40 }"));
        Assert.Equal(
            Exact("12 mm"),
            piece.Part("larder pull-out 1 left side").Extent.Min.Z
                - piece.Part("larder face frame bottom rail").Extent.Max.Z
        );
    }

    [Theory]
    [InlineData("{ pull outs: { count: 9, front: body } }", "There is no room for larder pull-out tray")]
    [InlineData(
        "{ doors: slab pair, pull outs: { count: 2, front: body } }",
        "Pull-outs behind doors have no front of their own."
    )]
    [InlineData("{ open, pull outs: { count: 2, pull: pull } }", "Pull-outs without a front have no pull.")]
    [InlineData("{ drawer, pull outs: 2 }", "There is no room for pull outs behind a drawer.")]
    [InlineData("{ doors: slab pair, pull outs: 9 }", "There is no room for pull-out")]
    [InlineData(
        "{ doors: slab pair, pull outs: 2, shelves: { fixed: 1 } }",
        "in the place of shelves|take the place of shelves"
    )]
    [InlineData("{ doors: slab pair, pull outs: { count: 2, at: [20] } }", "2 pull-outs and 1 heights")]
    [InlineData("{ doors: slab pair, pull outs: { count: 2, slides: runners } }", "runs on slides that are bought")]
    public void What_cannot_be_pulled_out_is_refused(string front, string says) =>
        Assert.Contains(says.Split('|')[^1], Built.ErrorOf(Recipe(front)), StringComparison.Ordinal);
}
