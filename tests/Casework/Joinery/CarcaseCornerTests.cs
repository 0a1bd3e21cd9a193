using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Joinery;

/// <summary>Corners of a carcase: top panel and bottom on the ends of the sides. All sizes are worked by hand.</summary>
public sealed class CarcaseCornerTests
{
    /// <summary>600 x 400 x 300 of pine 18 mm.</summary>
    private static string Cube(string corners, string rest = "back: { set: planted }") =>
        $$"""
            piece: Test piece
            units: mm
            materials: { body: pine 18, backs: birch plywood 6, band: pine 2 }
            carcases:
              box: { size: [600, 400, 300], corners: {{corners}}, {{rest}} }
            """;

    [Theory]
    [InlineData("dovetails")]
    [InlineData("half-blind dovetails")]
    [InlineData("box joint")]
    [InlineData("mitre")]
    [InlineData("splined mitre")]
    [InlineData("{ top: splined mitre }")]
    [InlineData("{ bottom: dovetails }")]
    [InlineData("{ top: half-blind dovetails, bottom: dovetails }")]
    [InlineData("{ top: box joint, bottom: mitre }")]
    public void Whatever_joins_its_corners_joins_them_soundly(string corners)
    {
        foreach (var back in (string[])["planted", "grooved", "rabbeted"])
            Built.From(Cube(corners, $"back: {{ set: {back} }}, shelves: {{ fixed: 1 }}")).MustBeSound();
    }

    [Theory]
    [InlineData("dovetails")]
    [InlineData("half-blind dovetails")]
    [InlineData("mitre")]
    [InlineData("splined mitre")]
    public void It_stands_on_legs_or_a_plinth_and_carries_another(string corners)
    {
        foreach (var stand in (string[])["{ legs: 50 }", "{ plinth: 80 }"])
        {
            Built
                .From(
                    Cube(corners, $"stands on: {stand}")
                        + $"\n  upper: {{ on: box, size: [600, 300, 300], corners: {corners}, back: {{ set: rabbeted }} }}\n"
                )
                .MustBeSound();
        }
    }

    /// <summary>Whatever the joint, four boards fill the ring of 600 x 400 round 564 x 364 mm, 300 - 6 mm deep.</summary>
    [Theory]
    [InlineData("dovetails")]
    [InlineData("half-blind dovetails")]
    [InlineData("box joint")]
    [InlineData("mitre")]
    public void Four_boards_fill_the_ring_of_the_box(string corners)
    {
        var piece = Built.From(Cube(corners));
        var boards = piece.Parts.Where(p => p.Role is Role.Side or Role.Top or Role.Bottom).ToList();
        Assert.Equal(4, boards.Count);
        Assert.Equal(((600 * 400) - (564 * 364)) * 294, boards.Sum(piece.VolumeMm3), 1e-3);
    }

    /// <summary>
    /// 294 mm less a pin of 6 over a pitch of 38: 8 tails between 9 pins of 6, so 30 wide; in pine 1 in 6, so 3 narrower at
    /// each flank where they are 18 deep, 27 on the average.
    /// </summary>
    [Fact]
    public void Tails_are_on_the_sides_and_share_their_width()
    {
        var piece = Built.From(Cube("dovetails"));
        piece.Measures("box left side", "400 x 294 x 18");
        piece.Measures("box top panel", "600 x 294 x 18");
        var side = piece.Part("box left side");
        Assert.Equal(Exact("364 mm"), side.ShoulderLength!.Length);
        Assert.Equal(8 * 2, piece.Part("box top panel").Cuts.Count(c => c.Kind == CutKind.DovetailSocket));
        Assert.Equal((364 * 294 * 18) + (2 * 8 * 27 * 18 * 18), piece.VolumeMm3(side), 1e-3);
        Assert.All(piece.Joints.Where(j => j.Kind == JointKind.Dovetail), j => Assert.True(j.Glued));
        Assert.Equal(4, piece.Joints.Count(j => j.Kind == JointKind.Dovetail));
    }

    /// <summary>A lap of 5 mm is less than a third of 18: tails of 13, so the top is 564 + 2 x 13 long.</summary>
    [Fact]
    public void Half_blind_tails_leave_the_sides_whole_outside()
    {
        var piece = Built.From(Cube("half-blind dovetails"));
        piece.Measures("box top panel", "590 x 294 x 18");
        piece.Measures("box bottom", "590 x 294 x 18");
        Assert.Equal(Exact("564 mm"), piece.Part("box top panel").ShoulderLength!.Length);
        Assert.Equal(Exact("5 mm"), piece.Part("box top panel").Extent.Min.X);
    }

    /// <summary>294 / 12 is 24.5 fingers; an uneven number of them, 25.</summary>
    [Fact]
    public void A_box_joint_has_its_outermost_fingers_on_the_sides()
    {
        var piece = Built.From(Cube("box joint"));
        Assert.Equal(2 * 13, piece.Part("box top panel").Cuts.Count(c => c.Kind == CutKind.FingerSocket));
        Assert.Equal(2 * 12, piece.Part("box left side").Cuts.Count(c => c.Kind == CutKind.FingerSocket));
    }

    /// <summary>
    /// 9 mm into each, which is half of 18; its middle a third of the seam from the inner corner at (18, 382): 6 mm further
    /// out and up. Its grooves are 0.5 mm deeper.
    /// </summary>
    [Fact]
    public void A_spline_lies_across_the_mitre_a_third_from_the_inside()
    {
        var piece = Built.From(Cube("splined mitre"));
        piece.Measures("box upper left spline", "18 x 294 x 3");
        var spline = piece.Part("box upper left spline");
        Assert.Equal(18 * 294 * 3, piece.VolumeMm3(spline), 1e-6);
        var frame = spline.Placed.Frame;
        // Its grain runs at 45 degrees, square to the seam from (18, 382) to (0, 400).
        Assert.Equal(Math.Sqrt(0.5), frame.U.X, 1e-12);
        Assert.Equal(Math.Sqrt(0.5), frame.U.Z, 1e-12);
        var corners = spline.Solid.Vertices.Select(frame.ToWorld).ToList();
        Assert.Equal(12, piece.Grid.ToMm(corners.Average(c => c.X)), 0.002);
        Assert.Equal(147, piece.Grid.ToMm(corners.Average(c => c.Y)), 0.002);
        Assert.Equal(388, piece.Grid.ToMm(corners.Average(c => c.Z)), 0.002);
        var boards = piece.Parts.Where(p => p.Role is Role.Side or Role.Top or Role.Bottom).Sum(piece.VolumeMm3);
        // Corners of grooves are rounded to 1/640 mm, and a step is left for that on both sides.
        Assert.InRange(boards - ((34_704 - (4 * 3 * 19)) * 294), -120, 0);
        Assert.Equal(8, piece.Joints.Count(j => j is { Kind: JointKind.LooseTongue, Glued: true }));
        Assert.All(
            piece.Joints.Where(j => j.Kind == JointKind.LooseTongue),
            j => Assert.Equal((Exact("9 mm"), Exact("1/2 mm")), (j.Engagement, j.Play))
        );
    }

    /// <summary>The back is grooved in 12 mm before the rear edge: 300 - 12 - 6 mm, less 0.5 mm of room.</summary>
    [Fact]
    public void A_spline_stops_before_the_back() =>
        Built
            .From(Cube("splined mitre", "back: { set: grooved }"))
            .Measures("box lower right spline", "18 x 281.5 x 3");

    /// <summary>A back in rabbets of 9 mm all round: 564 + 18 by 364 + 18.</summary>
    [Theory]
    [InlineData("dovetails")]
    [InlineData("mitre")]
    public void A_rabbeted_back_lies_in_all_four_boards(string corners)
    {
        var piece = Built.From(Cube(corners, "back: { set: rabbeted }"));
        piece.Measures("box back", "382 x 582 x 6");
        piece.Measures("box bottom", "600 x 300 x 18");
        Assert.Equal(4, piece.Parts.Count(p => p.Cuts.Any(c => c.Kind == CutKind.Rabbet)));
    }

    [Theory]
    [InlineData("mitre")]
    [InlineData("splined mitre")]
    [InlineData("half-blind dovetails")]
    public void Bands_on_the_front_meet_as_their_panels_do(string corners)
    {
        var piece = Built.From(
            Cube(corners, "edging: band, back: { set: grooved }")
                .Replace("body: pine 18", "body: birch plywood 18", StringComparison.Ordinal)
        );
        piece.MustBeSound();
        Assert.Equal(4, piece.Parts.Count(p => p.Role == Role.Edging));
    }

    [Theory]
    [InlineData("dovetails", "face frame: { stiles: 40 }", "The box has a face frame: its corners are covered by it.")]
    [InlineData(
        "mitre",
        "sides: framed",
        "The sides of the box are frames: their rails have no ends to join at a corner."
    )]
    [InlineData("mitre", "closed by: stretchers", "The box has no top panel: stretchers close it.")]
    [InlineData(
        "mitre",
        "stands on: { toe space: 80 }",
        "The sides of the box go down past its bottom: the two do not end together."
    )]
    [InlineData(
        "box joint",
        "edging: band",
        "Edging on the front of the box would run across the tails or fingers of its corners."
    )]
    public void What_has_no_such_corners_says_so(string corners, string rest, string message) =>
        Assert.EndsWith(message, Built.ErrorOf(Cube(corners, rest)), StringComparison.Ordinal);

    /// <summary>60 - 6 mm, less a pin of 6 over a pitch of 38, is one tail.</summary>
    [Fact]
    public void Two_tails_are_wanted() =>
        Assert.Contains(
            "too narrow for two tails: 54 mm from front to back",
            Built.ErrorOf(Cube("dovetails").Replace("600, 400, 300", "600, 400, 60", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );

    /// <summary>A third of 8 mm is 2.6 mm.</summary>
    [Fact]
    public void A_spline_is_no_thicker_than_a_third() =>
        Assert.Contains(
            "A spline of 3 mm is thicker than a third of the box bottom, 8 mm thick.",
            Built.ErrorsOf(Cube("splined mitre").Replace("pine 18", "pine 8", StringComparison.Ordinal))[0].Message,
            StringComparison.Ordinal
        );
}
