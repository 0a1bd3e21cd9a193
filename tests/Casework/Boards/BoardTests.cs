using Dryfit.Casework.Tests.Kit;
using Dryfit.Parameters;

namespace Dryfit.Casework.Tests.Boards;

/// <summary>Loose boards: where they come to lie and how large they are. A box of 600 x 400 x 300, boards of 18.</summary>
public sealed class BoardTests
{
    private const string Box = "box: { size: [600, 400, 300], back: planted, front: { open: } }\n";

    [Fact]
    public void Board_let_in_at_both_ends_spans_the_box_and_what_goes_in()
    {
        var piece = Build(
            "rail: { lies: on edge, width: 60, left: dadoed 8 into box left side, right: dadoed 8 into box right side, top: 80 below top of box, front: 20 behind front of box left side }"
        );

        // 600 - 2 x 18 + 2 x 8.
        piece.Measures("rail", "580 x 60 x 18");
        piece.StandsAt("rail", "10, 20, 260");
        piece.MustBeSound();
        // 8 deep, 60 high, 18 wide are gone from each side.
        Assert.Equal(8 * 60 * 18.0, Gone(piece, "box left side"), 1e-6);
        Assert.Equal(8 * 60 * 18.0, Gone(piece, "box right side"), 1e-6);
    }

    [Fact]
    public void Board_that_stands_out_before_what_it_is_told_from_is_so_much_longer()
    {
        var piece = Build(
            "lid: { lies: flat, left: 20 left of box, right: 30 right of box, front: flush with box, back: flush with box, bottom: resting on box top }"
        );

        // 600 + 20 + 30, told as a sum and not as 600 + 30 less a number below zero.
        piece.Measures("lid", "650 x 300 x 18");
        var reason = piece.Part("lid").Length.Reason;
        while (reason is NamedReason named)
            reason = named.Of.Reason;
        Assert.False(Assert.IsType<SumReason>(reason).Negated);
    }

    [Fact]
    public void Board_without_a_depth_goes_in_by_the_shops_habit()
    {
        var piece = Build(
            "rail: { lies: on edge, width: 60, left: dadoed into box left side, right: dadoed into box right side, top: 80 below top of box, front: 20 behind front of box left side }"
        );

        // The built-in dado depth in millimetres is 6: 564 + 2 x 6.
        piece.Measures("rail", "576 x 60 x 18");
    }

    [Fact]
    public void Flat_board_lies_with_its_grain_from_left_to_right_or_to_the_back()
    {
        var piece = Build(
            """
            across: { length: 200, width: 80, left: 50 right of box left side, front: flush with box, bottom: resting on box }
            deep: { lies: "flat, grain front to back", length: 200, width: 80, left: 300 right of box left side, front: flush with box, bottom: resting on box }
            """
        );

        Assert.Equal(Lie.Of(Direction.Right, Direction.Up), piece.Part("across").Place.Lie);
        Assert.Equal(Lie.Of(Direction.Back, Direction.Up), piece.Part("deep").Place.Lie);
        // The inside face of the left side is at 18.
        piece.StandsAt("across", "68, 0, 400");
        piece.StandsAt("deep", "318, 0, 400");
        piece.MustBeSound();
    }

    [Fact]
    public void Board_on_edge_or_upright_faces_where_it_is_said_to()
    {
        var piece = Build(
            """
            post: { lies: "upright, facing left", length: 200, width: 80, left: 0 right of left of box, front: flush with box, bottom: glued to box }
            slip: { lies: "on edge, facing right", length: 200, width: 30, right: flush with right of box, front: flush with box, bottom: glued to box }
            """
        );

        Assert.Equal(Lie.Of(Direction.Up, Direction.Left), piece.Part("post").Place.Lie);
        Assert.Equal(Lie.Of(Direction.Back, Direction.Right), piece.Part("slip").Place.Lie);
        piece.StandsAt("post", "0, 0, 400");
        piece.StandsAt("slip", "582, 0, 400");
        piece.MustBeSound();
    }

    [Fact]
    public void Boards_may_lean_on_boards_further_down()
    {
        var piece = Build(
            """
            upper: { length: 100, width: 50, left: flush with lower, front: flush with lower, bottom: glued to lower }
            lower: { length: 200, width: 80, centred on: box, bottom: screwed to box }
            """
        );

        // (600 - 200) / 2; the box is 300 deep: (300 - 80) / 2.
        piece.StandsAt("lower", "200, 110, 400");
        piece.StandsAt("upper", "200, 110, 418");
        piece.MustBeSound();
    }

    [Fact]
    public void Mirrored_board_has_its_fellow_at_the_other_end()
    {
        var piece = Build(
            "cleat: { lies: \"on edge, facing right\", width: 30, left: screwed to box left side, front: 10 behind front of box left side, length: 200, bottom: 100 above box bottom, mirrored: yes }"
        );

        piece.StandsAt("left cleat", "18, 10, 118");
        // 600 - 18 - 18.
        piece.StandsAt("right cleat", "564, 10, 118");
        Assert.Equal(Direction.Left, piece.Part("right cleat").Place.Lie.Shows);
        piece.MustBeSound();
    }

    [Fact]
    public void Row_goes_on_by_equal_steps()
    {
        var piece = Build(
            "slat: { lies: upright, length: 100, width: 40, left: 30 right of left of box, front: flush with box, bottom: glued to box, repeat: { times: 4, every: 70 } }"
        );

        piece.StandsAt("slat 1", "30, 0, 400");
        piece.StandsAt("slat 4", "240, 0, 400");
        piece.MustBeSound();
    }

    [Fact]
    public void Row_between_two_parts_has_equal_gaps_at_its_ends_too()
    {
        var piece = Build(
            "slat: { lies: upright, width: 40, top: glued to box top panel, bottom: glued to box bottom, front: 5 behind front of box left side, repeat: { times: 5, evenly between: [box left side, box right side] } }"
        );

        // (564 - 5 x 40) / 6 = 60 2/3; the third stands in the middle.
        piece.Measures("slat 3", "364 x 40 x 18");
        piece.StandsAt("slat 3", "280, 5, 18");
        piece.StandsAt("slat 1", "78 2/3, 5, 18");
        piece.MustBeSound();
    }

    [Fact]
    public void Piece_may_be_nothing_but_boards()
    {
        var piece = Built.From(
            """
            piece: Bench
            units: mm
            materials: { body: pine 18 }
            boards:
              left end: { lies: "upright, facing left", length: 400, width: 250, left: at 0, front: at 0, bottom: at 0 }
              right end: { lies: "upright, facing right", length: 400, width: 250, right: at 900, front: at 0, bottom: at 0 }
              seat: { left: flush with left end, right: flush with right end, front: flush with left end, back: flush with left end, bottom: [screwed to left end, screwed to right end] }
            """
        );

        piece.Measures("seat", "900 x 250 x 18");
        piece.StandsAt("seat", "0, 0, 400");
        Assert.Equal(2, piece.Joints.Count);
        piece.MustBeSound();
    }

    [Fact]
    public void Board_on_a_carcase_is_tied_to_every_part_of_it_that_it_meets()
    {
        var piece = Build(
            "cap: { length: 600, width: 200, left: flush with box, front: flush with box, bottom: screwed to box }"
        );

        Assert.Equal(
            ["box left side", "box right side", "box top panel"],
            piece
                .Joints.Where(j => j.Enters == piece.Part("cap").Id)
                .Select(j => piece.Parts.Single(p => p.Id == j.Receives).Name)
                .Order(StringComparer.Ordinal)
        );
        piece.MustBeSound();
    }

    [Fact]
    public void Board_as_cut_keeps_to_the_side_it_was_placed_by()
    {
        var piece = Build(
            "cap: { length: 600, width: 200, right: flush with box, front: flush with box, bottom: screwed to box }",
            "as cut:\n  cap: { length: 590 }\n"
        );

        piece.StandsAt("cap", "10, 0, 400");
    }

    [Fact]
    public void Board_without_glue_is_free()
    {
        var piece = Build(
            "lid: { length: 500, width: 200, left: 50 right of left of box, front: flush with box, bottom: resting on box }"
        );

        Assert.All(piece.Joints.Where(j => j.Enters == piece.Part("lid").Id), j => Assert.False(j.Glued));
    }

    [Fact]
    public void Tenon_goes_into_a_mortise_and_its_shoulders_close()
    {
        var piece = Built.From(
            """
            piece: Frame
            units: mm
            materials: { body: oak 45, rails: oak 24 }
            boards:
              left post: { lies: "upright, facing front", length: 700, width: 45, left: at 0, front: at 0, bottom: at 0 }
              right post: { lies: "upright, facing front", length: 700, width: 45, right: at 600, front: at 0, bottom: at 0 }
              rail: { lies: on edge, material: rails, width: 80, left: tenoned 30 into left post, right: tenoned 30 into right post, top: 50 below top of left post, front: 10 behind front of left post }
            """
        );

        // 600 - 2 x 45 + 2 x 30.
        piece.Measures("rail", "570 x 80 x 24");
        Assert.Equal(2, piece.Joints.Count(j => j.Kind == JointKind.MortiseAndTenon));
        // A third of 24 is 8: the mortise is narrower than the rail and lower.
        var mortise = Assert.IsType<SquareCut>(Assert.Single(piece.Part("left post").Cuts));
        Assert.Contains(
            8.0,
            new[] { mortise.Extent.Width, mortise.Extent.Depth, mortise.Extent.Height }.Select(l => l.ToMillimetres())
        );
        piece.MustBeSound();
    }

    [Fact]
    public void Tenon_without_a_length_goes_two_thirds_into_the_other()
    {
        var piece = Built.From(
            """
            piece: Frame
            units: mm
            materials: { body: oak 45, rails: oak 24 }
            boards:
              post: { lies: "upright, facing front", length: 700, width: 45, left: at 0, front: at 0, bottom: at 0 }
              rail: { lies: on edge, material: rails, width: 80, length: 400, left: tenoned into post, top: 50 below top of post, front: 10 behind front of post }
            """
        );

        // Two thirds of 45 are 30; five times a third of 24 would be 40.
        piece.StandsAt("rail", "15, 10, 570");
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("biscuited to", JointKind.Biscuit)]
    [InlineData("screwed and plugged to", JointKind.Screwed)]
    [InlineData("dowelled to", JointKind.Dowel)]
    public void End_is_held_by_what_is_said(string said, JointKind kind)
    {
        var piece = Build(
            $"rail: {{ lies: on edge, width: 90, left: {said} box left side, right: {said} box right side, top: 80 below top of box, front: 20 behind front of box left side }}"
        );

        Assert.Equal(2, piece.Joints.Count(j => j.Kind == kind && j.Enters == piece.Part("rail").Id));
        piece.MustBeSound();
    }

    [Fact]
    public void Board_at_a_carcase_that_stands_at_an_angle_stands_at_that_angle()
    {
        var piece = Built.From(
            Recipes.Metric(
                Box + "wing: { size: [500, 400, 300], right of: box, turned: { right: 30 }, back: planted }\n",
                "boards:\n  cap: { length: 500, width: 200, left: flush with wing, front: flush with wing, bottom: screwed to wing }\n"
            )
        );

        Assert.Equal(piece.Part("wing left side").Turn, piece.Part("wing cap").Turn);
        Assert.NotNull(piece.Part("wing cap").Turn);
    }

    private static double Gone(Piece piece, string part)
    {
        var found = piece.Part(part);
        var blank =
            found.Length.Length.Millimetres * found.Width.Length.Millimetres * found.Thickness.Length.Millimetres;
        var dowels = found.Cuts.OfType<RoundCut>().Count();
        Assert.True(dowels > 0);
        // Dowel holes are 24-sided in the solid; only what is square counts here.
        var square = found
            .Cuts.OfType<SquareCut>()
            .Sum(c =>
                (c.Extent.Width.Millimetres * c.Extent.Depth.Millimetres * c.Extent.Height.Millimetres).ToDouble()
            );
        Assert.True(square < blank.ToDouble());
        return square;
    }

    private static Piece Build(string boards, string rest = "") =>
        Built.From(Recipes.Metric(Box, $"boards:\n{Indented(boards)}{rest}"));

    private static string Indented(string lines) =>
        string.Concat(lines.Split('\n').Where(l => l.Length > 0).Select(l => $"  {l}\n"));
}
