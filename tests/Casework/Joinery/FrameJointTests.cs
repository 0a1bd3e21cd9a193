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
}
