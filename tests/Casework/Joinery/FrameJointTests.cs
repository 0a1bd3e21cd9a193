using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Joinery;

/// <summary>Frames and stands that are tenoned or lapped.</summary>
public sealed class FrameJointTests
{
    private static Piece Of(string frame, string stand = "", string doors = "{ doors: framed }") =>
        Built.From(
            $$"""
            piece: Dresser
            units: in
            materials: { body: maple 3/4, panels: birch plywood 1/4, backs: birch plywood 1/4, boxes: maple 1/2 }
            carcases:
              base:
                size: [40, 34, 18]
                {{stand}}
                face frame: { stiles: 2, rails: 2, mullions: 2{{frame}} }
                front: { columns: [ {{doors}}, { rows: [ drawer, drawer ] } ] }
            """
        );

    /// <summary>
    /// Stock of 3/4 in: tenon 1/4 in thick (a third), and no more than five times as long as thick, 1 1/4 in; two thirds of
    /// a stile of 2 in would be 1 5/16. Between the stiles 40 - 4 = 36 in, so the rail is 38 1/2 in long. Proportions:
    /// published tips on mortises and tenons.
    /// </summary>
    [Fact]
    public void Rails_of_a_face_frame_are_tenoned_into_its_stiles()
    {
        var piece = Of(", joint: mortise and tenon");
        piece.MustBeSound();
        var rail = piece.Part("base face frame top rail");
        Assert.Equal(Exact("38 1/2\""), rail.Length.Length);
        Assert.Equal(Exact("36\""), rail.ShoulderLength!.Length);
        var stile = piece.Part("base face frame left stile");
        var mortise = stile.Cuts.OfType<SquareCut>().First(c => c.Kind == CutKind.Mortise);
        Assert.Equal(Exact("1/4\""), mortise.Extent.Height);
        // A sixteenth deeper than the tenon is long.
        Assert.Equal(Exact("1 5/16\""), mortise.Extent.Depth);
    }

    [Fact]
    public void Tenon_at_the_end_of_a_stile_is_haunched()
    {
        var piece = Of(", joint: mortise and tenon");
        // The tenon of the top rail, and the haunch above it: two mortises, the outer one shallow.
        var joint = piece.Joints.First(j =>
            j.Kind == JointKind.MortiseAndTenon && j.Enters == piece.Part("base face frame top rail").Id
        );
        var cuts = piece
            .Parts.Single(p => p.Id == joint.Receives)
            .Cuts.OfType<SquareCut>()
            .Where(c => c.Joint == joint.Id)
            .Select(c => c.Extent.Depth)
            .Order()
            .ToList();
        Assert.Equal([Exact("1/4\""), Exact("1 5/16\"")], cuts);
    }

    [Fact]
    public void Mortises_from_both_sides_of_a_member_keep_apart()
    {
        var piece = Of(", joint: mortise and tenon", doors: "{ rows: [ drawer, drawer ] }");
        piece.MustBeSound();
        var mullion = piece.Part("base face frame mullion 1");
        var cuts = mullion.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Mortise).ToList();
        Assert.NotEmpty(cuts);
        // Each less than half of 2 in.
        Assert.All(cuts, c => Assert.True(c.Extent.Depth < Exact("1\""), c.Extent.Depth.ToString()));
    }

    /// <summary>Over both stiles of 2 in: 36 + 4 in, and the mortises go right through.</summary>
    [Fact]
    public void Through_tenons_end_flush_with_the_outside_of_the_stiles()
    {
        var piece = Of(", joint: through mortise and tenon");
        piece.MustBeSound();
        var (rail, stile) = (piece.Part("base face frame bottom rail"), piece.Part("base face frame left stile"));
        Assert.Equal(Exact("40\""), rail.Length.Length);
        Assert.Equal(rail.Extent.Min.X, stile.Extent.Min.X);
        Assert.Contains(
            stile.Cuts.OfType<SquareCut>(),
            c => c.Kind == CutKind.Mortise && c.Extent.Depth == Exact("2\"")
        );
    }

    [Fact]
    public void Half_laps_cut_both_members_to_half_of_their_thickness()
    {
        var piece = Of(", joint: half laps");
        piece.MustBeSound();
        var rail = piece.Part("base face frame top rail");
        // Over both stiles.
        Assert.Equal(Exact("40\""), rail.Length.Length);
        Assert.All(
            rail.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Lap),
            c => Assert.Equal(Exact("3/8\""), c.Extent.Height)
        );
    }

    /// <summary>Legs of 2 1/4 in, rails of 3/4 in set back 1/8 in, tenons of 1/4 in: they must end before each other.</summary>
    [Fact]
    public void Rails_are_tenoned_into_legs_without_meeting_there()
    {
        var piece = Of("", "stands on: { legs: 2 1/4, rails: 3, joint: mortise and tenon }");
        piece.MustBeSound();
        var rail = piece.Part("base stand front rail");
        // 40 - 2 x 2 1/4 = 35 1/2 between the legs; two tenons of 5 x 1/4.
        Assert.Equal(Exact("38\""), rail.Length.Length);
        Assert.DoesNotContain(piece.Joints, j => j.Kind == JointKind.Dowel && j.Enters == rail.Id);
    }

    /// <summary>
    /// Stiles of 2 1/4 in: tenons of 5 x 1/4 in. The groove is 3/8 in deep; the mortise goes 1/16 in deeper than the tenon.
    /// </summary>
    [Fact]
    public void Door_rails_are_tenoned_deeper_than_the_groove()
    {
        var piece = Of("", doors: "{ doors: { joint: mortise and tenon } }");
        piece.MustBeSound();
        var (rail, stile) = (piece.Part("base door top rail"), piece.Part("base door left stile"));
        Assert.Equal(Exact("2 1/2\""), rail.Length.Length - rail.ShoulderLength!.Length);
        Assert.Equal(2, stile.Cuts.Count(c => c.Kind == CutKind.Mortise));
        Assert.All(
            stile.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Mortise),
            c => Assert.Equal(Exact("1 5/16\""), c.Extent.Depth)
        );
    }

    /// <summary>
    /// The opening is (40 - 3 x 2) / 2 = 17 in wide, the door 16 3/4, its stiles 2 1/4: the rails go right across, with 12 1/4
    /// between their shoulders. Of a tenon 1/4 in thick the groove leaves 2 1/4 - 3/8 = 1 7/8, and behind its 3/8 the haunch
    /// of 3/4 another 3/4 less over 1 7/8 in.
    /// </summary>
    [Fact]
    public void Through_tenons_of_a_door_show_on_its_edges()
    {
        var piece = Of("", doors: "{ doors: { joint: through mortise and tenon, gap: 1/8 } }");
        piece.MustBeSound();
        var (rail, stile) = (piece.Part("base door top rail"), piece.Part("base door left stile"));
        piece.Measures("base door top rail", "16 3/4 x 2 1/4 x 3/4");
        Assert.Equal(Exact("12 1/4\""), rail.ShoulderLength!.Length);
        Assert.Equal(stile.Extent.Min.X, rail.Extent.Min.X);
        Assert.All(
            stile.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Mortise),
            c => Assert.Equal(Exact("2 1/4\""), c.Extent.Depth)
        );
        const double Body = 12.25 * ((2.25 * 0.75) - (0.375 * 0.25));
        const double Tenon = 0.25 * ((0.375 * 1.875) + (1.875 * 1.125));
        Assert.Equal(Body + (2 * Tenon), piece.VolumeMm3(rail) / Math.Pow(25.4, 3), 1e-9);
        Assert.All(piece.Joints.Where(j => j.Kind == JointKind.MortiseAndTenon), j => Assert.True(j.Glued));
        Assert.All(
            piece.Joints.Where(j => j.Kind == JointKind.Loose && j.Enters == piece.Part("base door panel").Id),
            j => Assert.False(j.Glued)
        );
    }

    [Theory]
    [InlineData("leaves: pair, meeting: rebated")]
    [InlineData("leaves: pair, middle rails: 1, muntins: 1")]
    [InlineData("hang: rebated")]
    [InlineData("arch: 1")]
    [InlineData("stiles: 3, hinged: right, middle rails: { at: [12], width: 3 }")]
    public void Through_tenons_are_sound_in_every_frame(string rest) =>
        Of("", doors: $"{{ doors: {{ joint: through mortise and tenon, {rest} }} }}").MustBeSound();

    [Fact]
    public void Through_tenons_of_a_glazed_door_come_out_beside_its_rabbets() =>
        Built
            .From(
                """
                piece: Cupboard
                units: mm
                materials: { body: oak 20, panes: float glass 4, backs: birch plywood 6.5 }
                carcases:
                  box:
                    size: [500, 700, 350]
                    front edges: round 3
                    front: { doors: { kind: glazed, joint: through mortise and tenon, bars: { columns: 2, rows: 2 } } }
                """
            )
            .MustBeSound();

    /// <summary>
    /// An opening of 17 in, a door of 16 3/4 with members of 2 1/4: rails and stiles go from corner to corner, and a mitre
    /// takes half of 2 1/4 x 2 1/4 from each end. Of the rail's section the groove takes 3/8 x 1/4 along its inner edge, as
    /// far as the mitres leave that: 16 3/4 - 2 x 2 1/4 and 3/8 more on the average.
    /// </summary>
    [Fact]
    public void Mitred_door_frames_go_from_corner_to_corner()
    {
        var piece = Of("", doors: "{ doors: { joint: mitre, gap: 1/8 } }");
        piece.MustBeSound();
        piece.Measures("base door top rail", "16 3/4 x 2 1/4 x 3/4");
        var rail = piece.Part("base door top rail");
        const double Whole = ((16.75 * 2.25) - (2.25 * 2.25)) * 0.75;
        const double Groove = 0.375 * 0.25 * (12.25 + 0.375);
        Assert.Equal(Whole - Groove, piece.VolumeMm3(rail) / Math.Pow(25.4, 3), 1e-9);
        Assert.Equal(4, piece.Joints.Count(j => j is { Kind: JointKind.Mitre, Glued: true }));
    }

    /// <summary>
    /// Splines of 1/8 in, 3/8 into each. A mitre of 2 1/4 in is 3.182 long; the groove takes 3/8 of the edge, 0.530 of it;
    /// with the depth and 3 mm (0.118 in) at both ends, to 1/64 in, from 1 2/64 to 2 44/64: 1 42/64 in.
    /// </summary>
    [Fact]
    public void Splines_of_a_door_lie_hidden_between_groove_and_edge()
    {
        var piece = Of("", doors: "{ doors: { joint: splined mitre, gap: 1/8 } }");
        piece.MustBeSound();
        piece.Measures("base door upper left spline", "3/4 x 1 21/32 x 1/8");
        Assert.Equal(
            8,
            piece.Joints.Count(j =>
                j is { Kind: JointKind.LooseTongue, Glued: true }
                && j.Enters.Contains("spline", StringComparison.Ordinal)
            )
        );
    }

    [Theory]
    [InlineData("mitre", "leaves: pair, pair gap: 1/16")]
    [InlineData("splined mitre", "leaves: pair, middle rails: 1, muntins: 1")]
    [InlineData("splined mitre", "hang: rebated, hinged: right, middle rails: { at: [12], width: 3 }")]
    public void Mitred_frames_are_sound_in_every_door(string joint, string rest) =>
        Of("", doors: $"{{ doors: {{ joint: {joint}, {rest} }} }}").MustBeSound();

    [Theory]
    [InlineData("beads")]
    [InlineData("groove")]
    public void Glass_lies_in_a_mitred_frame_as_in_any(string held) =>
        Built
            .From(
                $$"""
                piece: Cupboard
                units: mm
                materials: { body: oak 20, panes: float glass 4, backs: birch plywood 6.5 }
                carcases:
                  box:
                    size: [500, 700, 350]
                    front edges: round 3
                    front: { doors: { kind: glazed, joint: splined mitre, panes held by: {{held}}, middle rails: 1 } }
                """
            )
            .MustBeSound();

    [Theory]
    [InlineData("rails: 3", "are not equally wide: their mitres would not be at 45 degrees.")]
    [InlineData("arch: 1", "is arched: it does not meet the stiles in mitres.")]
    [InlineData("stiles: 1, rails: 1", "between its groove and its edges their mitres have no room for them.")]
    public void A_frame_without_mitres_says_why(string rest, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Text($"{{ doors: {{ joint: splined mitre, {rest} }} }}")),
            StringComparison.Ordinal
        );

    private static string Text(string doors) =>
        $$"""
            piece: Dresser
            units: in
            materials: { body: maple 3/4, panels: birch plywood 1/4, backs: birch plywood 1/4 }
            carcases:
              base: { size: [20, 34, 18], front: {{doors}} }
            """;
}
