using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Heads;

/// <summary>What goes round the head of a box of 600 x 720 x 400 of pine 18; mouldings of oak 25.</summary>
public sealed class HeadTests
{
    private const string Mouldings = "mouldings: oak 25";

    [Fact]
    public void A_cornice_goes_round_three_sides_and_meets_in_mitres()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400], head: { cornice: 60 } }", materials: Mouldings));
        // 600 + 2 x 25; 400 + 25.
        piece.Measures("box cornice front", "650 x 60 x 25");
        piece.StandsAt("box cornice front", "-25, -25, 660");
        piece.Measures("box cornice left return", "425 x 60 x 25");
        piece.StandsAt("box cornice left return", "-25, -25, 660");
        piece.StandsAt("box cornice right return", "600, -25, 660");
        // Each mitre takes half of 25 x 25 from each of the two.
        piece.Holds("box cornice front", ((650.0 * 25) - (25 * 25)) * 60);
        piece.Holds("box cornice left return", ((425.0 * 25) - (25 * 25 / 2.0)) * 60);
        Assert.Equal(2, piece.Joints.Count(joint => joint.Kind == JointKind.Mitre));
        Assert.All(
            piece.Joints.Where(joint => joint.Kind == JointKind.Mitre),
            joint => Assert.Equal(piece.Part("box cornice front").Id, joint.Receives)
        );
        piece.MustBeSound();
    }

    [Fact]
    public void A_moulding_keeps_its_section_through_the_mitre()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], head: { cornice: { height: 60, edge: cove 20 } } }",
                materials: Mouldings
            )
        );
        // The section is 25 x 60 less a quarter disc of radius 20. The mitre shortens a fibre by how far it lies from
        // the outer face: the section's first moment about that face is 60 x 25 x 25 / 2, less that of the quarter disc,
        // whose centre of area lies 4 x 20 / (3 pi) off its straight sides.
        var disc = Math.PI * 20 * 20 / 4;
        var section = (25.0 * 60) - disc;
        var moment = (60.0 * 25 * 25 / 2) - (disc * 4 * 20 / (3 * Math.PI));
        var front = (650 * section) - (2 * moment);
        var left = (425 * section) - moment;
        // The cove is chords that lie within 0.05 mm of it.
        Assert.Equal(front, piece.VolumeMm3(piece.Part("box cornice front")), 650 * 32 * 0.05);
        Assert.Equal(left, piece.VolumeMm3(piece.Part("box cornice left return")), 425 * 32 * 0.05);
        piece.MustBeSound();
    }

    [Fact]
    public void A_cornice_is_planted_on_the_frieze()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], face frame: { rails: 90 }, head: { frieze: { height: 80, material: body }, cornice: 40 } }",
                materials: Mouldings
            )
        );
        piece.Measures("box frieze front", "636 x 80 x 18");
        piece.StandsAt("box frieze front", "-18, -18, 640");
        // 636 + 2 x 25; 418 + 25.
        piece.Measures("box cornice front", "686 x 40 x 25");
        piece.Measures("box cornice right return", "443 x 40 x 25");
        piece.StandsAt("box cornice right return", "618, -43, 680");
        piece.MustBeSound();
    }

    [Fact]
    public void An_end_against_the_wall_has_no_return()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], head: { cornice: { height: 60, along: front and right } } }",
                materials: Mouldings
            )
        );
        piece.Measures("box cornice front", "625 x 60 x 25");
        piece.StandsAt("box cornice front", "0, -25, 660");
        Assert.Equal(2, piece.PartsOf(Role.Moulding).Count);
        piece.MustBeSound();
    }

    [Fact]
    public void A_cornice_under_a_top_is_tied_to_it()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], top: { overhang: 30 }, head: { cornice: 40 } }", materials: Mouldings)
        );
        piece.StandsAt("box cornice front", "-25, -25, 662");
        var top = piece.Part("box top").Id;
        Assert.Equal(3, piece.Joints.Count(joint => joint.Receives == top && joint.Into == Direction.Up));
        piece.MustBeSound();
    }

    [Fact]
    public void Fronts_that_stand_where_the_cornice_should_go_are_told() =>
        Assert.Equal(
            "8:50: The box cornice front would stand in the place of the box door slab.",
            Built.ErrorOf(
                Metric(
                    "box: { size: [600, 720, 400], head: { cornice: 40 }, front: { doors: slab } }",
                    materials: Mouldings
                )
            ),
            StringComparer.Ordinal
        );

    /// <summary>
    /// Oak of 25: a spline of 3, 9 into each, a third of the seam from the inner corner at (0, 0), so 25 / 3 out and before.
    /// A cove of 20 along the lower edge leaves 40 of 60 mm for it.
    /// </summary>
    [Fact]
    public void Splines_lie_across_the_mitres_of_a_cornice_above_its_shape()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], head: { cornice: { height: 60, corners: splined mitre, edge: cove 20 } } }",
                materials: Mouldings
            )
        );
        piece.MustBeSound();
        piece.Measures("box cornice left spline", "18 x 40 x 3");
        var spline = piece.Part("box cornice left spline");
        var corners = spline.Solid.Vertices.Select(spline.Placed.Frame.ToWorld).ToList();
        Assert.Equal(-25 / 3.0, piece.Grid.ToMm(corners.Average(c => c.X)), 0.002);
        Assert.Equal(-25 / 3.0, piece.Grid.ToMm(corners.Average(c => c.Y)), 0.002);
        Assert.Equal(700, piece.Grid.ToMm(corners.Average(c => c.Z)), 0.002);
        Assert.Equal(4, piece.Joints.Count(joint => joint is { Kind: JointKind.LooseTongue, Glued: true }));
        Assert.Equal(2, piece.Joints.Count(joint => joint is { Kind: JointKind.Mitre, Glued: true }));
    }

    [Fact]
    public void Splines_run_over_the_whole_height_of_a_planted_plinth()
    {
        var piece = Built.From(
            Metric("box: { size: [600, 720, 400], stands on: { plinth: 80, set: planted, corners: splined mitre } }")
        );
        piece.MustBeSound();
        piece.Measures("box plinth right spline", "18 x 80 x 3");
    }

    [Fact]
    public void A_frieze_under_a_cornice_may_have_splines_too() =>
        Built
            .From(
                Metric(
                    "box: { size: [600, 720, 400], head: { frieze: { height: 80, corners: splined mitre }, cornice: { height: 40, corners: splined mitre } } }",
                    materials: Mouldings
                )
            )
            .MustBeSound();

    [Fact]
    public void A_shape_that_leaves_no_room_for_a_spline_says_so() =>
        Assert.EndsWith(
            "The shape of the cornice leaves no room beside it for a spline across the mitre.",
            Built.ErrorOf(
                Metric(
                    "box: { size: [600, 720, 400], head: { cornice: { height: 30, corners: splined mitre, edge: cove 20 } } }",
                    materials: Mouldings
                )
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void Only_a_planted_plinth_has_mitred_corners() =>
        Assert.Contains(
            "corners",
            Built.ErrorOf(Metric("box: { size: [600, 720, 400], stands on: { plinth: 80, corners: splined mitre } }")),
            StringComparison.Ordinal
        );
}
