using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Drawers;

/// <summary>Old drawer boxes cut down: what is left of each wall, and what becomes of the joints.</summary>
public sealed class OldBoxTests
{
    private static string Recipe(string old) =>
        $$"""
            piece: New chest
            units: mm
            materials: { body: birch plywood 18, fronts: oak 20, boxes: { solid: pine, thickness: 14 }, bottoms: birch plywood 6.5 }
            carcases:
              chest: { size: [436, 236, 480], front: { drawer: { old box: {{old}} } } }
            """;

    private static Piece Of(string old)
    {
        var piece = Built.From(Recipe(old));
        piece.MustBeSound();
        return piece;
    }

    private static IEnumerable<JointKind> JointsOf(Piece piece, string wall) =>
        piece
            .Joints.Where(j => j.Kind != JointKind.Loose)
            .Where(j =>
                (j.Receives == piece.Part(wall).Id && piece.Parts.Single(p => p.Id == j.Enters).Role == Role.DrawerSide)
                || (
                    j.Enters == piece.Part(wall).Id
                    && piece.Parts.Single(p => p.Id == j.Receives).Role == Role.DrawerSide
                )
            )
            .Select(j => j.Kind);

    /// <summary>Opening 400 mm; side slides leave 374.6. Box front 460 mm as found, the dovetails at its right end cut off.</summary>
    [Fact]
    public void Cut_down_in_width_the_joints_of_one_end_are_made_anew()
    {
        var piece = Of("{ width: 460, height: 120, length: 400, cut down: right end, joined anew: rabbeted }");
        var (left, right) = (piece.Part("chest drawer 1 left side"), piece.Part("chest drawer 1 right side"));
        Assert.Equal(Exact("374.6 mm"), right.Extent.Max.X - left.Extent.Min.X);
        var front = piece.Part("chest drawer 1 box front");
        Assert.Equal(Exact("460 mm"), front.Length.Length);
        // 374.6 - 14 of the right side + 6 of its rabbet are left: 93.4 go off.
        var off = Assert.Single(front.Cuts.OfType<SquareCut>(), c => c.Kind == CutKind.CutDown);
        Assert.Equal(Exact("93.4 mm"), off.Extent.Width);
        Assert.Equal([JointKind.Rabbet, JointKind.Dovetail], JointsOf(piece, "chest drawer 1 box front").Order());
        Assert.True(front.IsKept);
    }

    [Fact]
    public void Cut_down_in_depth_the_back_is_joined_anew_between_the_sides()
    {
        var piece = Of("{ width: 374.6, height: 120, length: 480, cut down: back end, to: 400 }");
        var side = piece.Part("chest drawer 1 left side");
        Assert.Equal(Exact("480 mm"), side.Length.Length);
        Assert.Equal(
            Exact("80 mm"),
            Assert.Single(side.Cuts.OfType<SquareCut>(), c => c.Kind == CutKind.CutDown).Extent.Width
        );
        Assert.Equal([JointKind.Screwed, JointKind.Screwed], JointsOf(piece, "chest drawer 1 back"));
        Assert.Equal([JointKind.Dovetail, JointKind.Dovetail], JointsOf(piece, "chest drawer 1 box front"));
    }

    [Theory]
    [InlineData("top edge", "110")]
    [InlineData("bottom edge", "120")]
    public void Cut_down_in_height_the_joints_stay(string edge, string to)
    {
        var piece = Of($"{{ width: 374.6, height: 150, length: 400, cut down: {edge}, to: {to} }}");
        Assert.DoesNotContain(piece.Joints, j => j.Kind == JointKind.Rabbet);
        Assert.Equal(4, piece.Joints.Count(j => j.Kind == JointKind.Dovetail));
        Assert.All(piece.PartsOf(Role.DrawerSide), side => Assert.Single(side.Cuts, c => c.Kind == CutKind.CutDown));
    }

    [Fact]
    public void Box_that_is_not_cut_down_stays_whole()
    {
        var piece = Of("{ width: 374.6, height: 120, length: 400 }");
        Assert.DoesNotContain(piece.Parts.SelectMany(p => p.Cuts), c => c.Kind == CutKind.CutDown);
        Assert.All(piece.PartsOf(Role.DrawerSide), side => Assert.True(side.IsKept));
    }

    [Theory]
    [InlineData("{ width: 360, height: 120, length: 400, cut down: left end }", "cannot be cut down to")]
    [InlineData(
        "{ width: 374.6, height: 120, length: 400, cut down: bottom edge, to: 108 }",
        "open piece of the groove"
    )]
    [InlineData(
        "{ width: 374.6, height: 120, length: 480, joint: screwed, cut down: back end, to: 400, joined anew: rabbeted }",
        "too short"
    )]
    // Four tails of 30 mm with pins of 6: the lowest ends 36 mm up and is rooted up to 33.7, and 35 go off.
    [InlineData("{ width: 374.6, height: 150, length: 400, cut down: bottom edge, to: 115 }", "sliver of a dovetail")]
    public void What_cannot_be_cut_down_so_is_refused(string old, string says) =>
        Assert.Contains(says, Built.ErrorOf(Recipe(old)), StringComparison.Ordinal);
}
