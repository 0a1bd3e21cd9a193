using Dryfit.Casework;
using Dryfit.Reference.Tests.Pieces;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Fronts;

/// <summary>
/// Worked examples of doors, each built as a cupboard from a recipe and measured; the row of <c>doors-and-drawers.csv</c>
/// is named in each. Sizes in inches, exact.
/// </summary>
public sealed class DoorArithmeticTests
{
    private const double Exact = 1e-12;

    /// <summary>
    /// Source: published article on building frame-and-panel doors (2019): door 14 wide, stiles 2-1/2, stub tenons 3/8:
    /// rails of 9-3/4 (08-001, 08-002).
    /// </summary>
    [Test]
    public void Rails_of_a_cope_and_stick_door_are_the_width_less_stiles_plus_tenons()
    {
        var piece = FaceFramedBox.With(13, 27, "doors: { hang: overlaid, overlay: 1/2, stiles: 2 1/2 }");

        Assert.That(WidthOf(piece), Is.EqualTo(14).Within(Exact));
        Assert.That(RailsOf(piece), Is.All.EqualTo(Value("08-002")).Within(Exact));
        Assert.That(ShouldersOf(piece), Is.All.EqualTo(9).Within(Exact));
    }

    /// <summary>The same source (08-001, 08-002): a rail between the others, straight or arched, is as long as they are.</summary>
    [TestCase("middle rails: 1", 3)]
    [TestCase("middle rails: { equal: 2, width: 1 1/2 }, muntins: 1", 4)]
    [TestCase("arch: 1", 2)]
    public void Every_rail_of_a_door_follows_the_same_sum(string said, int rails)
    {
        var piece = FaceFramedBox.With(13, 27, $"doors: {{ hang: overlaid, overlay: 1/2, stiles: 2 1/2, {said} }}");

        Assert.That(RailsOf(piece).Count(), Is.EqualTo(rails));
        Assert.That(RailsOf(piece), Is.All.EqualTo(Value("08-002")).Within(Exact));
        Assert.That(ShouldersOf(piece), Is.All.EqualTo(9).Within(Exact));
    }

    /// <summary>
    /// Source: raised panel tutorial: 1/8 at the sides and 1/16 at top and bottom (08-013): a raised panel of solid timber
    /// has that room in its grooves as a flat one has.
    /// </summary>
    [Test]
    public void Raised_panel_has_the_published_room_in_its_grooves()
    {
        var piece = FaceFramedBox.With(
            13,
            27,
            "doors: { hang: overlaid, overlay: 1/2, stiles: 2 1/2, rails: 2 1/2, panel: body, raised: { bevel: 1 } }"
        );
        var panel = piece.PartsOf(Role.DoorPanel).Single();

        Assert.That(FaceFramedBox.Inches(panel.Width.Length), Is.EqualTo(9 + 0.75 - (2 * 0.125)).Within(Exact));
        Assert.That(FaceFramedBox.Inches(panel.Length.Length), Is.EqualTo(23 + 0.75 - (2 * 0.0625)).Within(Exact));
    }

    /// <summary>
    /// Source: published guide to frame and panel doors: door 27 x 45-1/2, stiles of 1x4 (3-1/2), tongues 3/8: rails 20-3/4,
    /// stiles the full height (08-005, computed from its numbers; 08-006).
    /// </summary>
    [Test]
    public void Stiles_run_the_full_height_and_rails_fit_between_with_their_tongues()
    {
        var piece = FaceFramedBox.With(26, 44.5, "doors: { hang: overlaid, overlay: 1/2, stiles: 3 1/2 }");

        Assert.That(WidthOf(piece), Is.EqualTo(27).Within(Exact));
        Assert.That(RailsOf(piece), Is.All.EqualTo(Value("08-005")).Within(Exact));
        Assert.That(
            piece.PartsOf(Role.DoorStile).Select(stile => FaceFramedBox.Inches(stile.Length.Length)),
            Is.All.EqualTo(Value("08-006")).Within(Exact)
        );
    }

    /// <summary>
    /// Source: published shop guide to cabinet doors: grooves 1/2 deep, doors an inch larger than their opening each way
    /// (08-010); rails then door width less stiles plus an inch (08-011, computed).
    /// </summary>
    [Test]
    public void A_door_with_half_inch_grooves_laps_half_an_inch_all_round()
    {
        var piece = FaceFramedBox.With(
            15,
            27,
            "doors: { hang: overlaid, overlay: 1/2, stiles: 2 }",
            "doors: { groove depth: 1/2 }"
        );

        Assert.That(WidthOf(piece), Is.EqualTo(15 + 1).Within(Exact));
        Assert.That(HeightOf(piece), Is.EqualTo(27 + 1).Within(Exact));
        Assert.That(RailsOf(piece), Is.All.EqualTo(16 - (2 * 2) + (2 * 0.5)).Within(Exact));
    }

    /// <summary>
    /// Source: published raised-panel tutorial: stiles 2.38, grooves 0.38: rails are the door's width less 4.00 (08-012,
    /// computed from its numbers).
    /// </summary>
    [Test]
    public void Decimal_stiles_and_grooves_that_add_up_to_four_inches_take_exactly_four()
    {
        var piece = FaceFramedBox.With(
            15,
            27,
            "doors: { hang: overlaid, overlay: 1/2, stiles: 2.38 }",
            "doors: { groove depth: 0.38 }"
        );

        Assert.That(RailsOf(piece), Is.All.EqualTo(16 - 4.00).Within(Exact));
    }

    /// <summary>
    /// Source: published raised-panel tutorial: a solid panel has 1/8 of room in its groove on each side and 1/16 at top and
    /// bottom (08-013). Door 14 x 28, stiles and rails 2-1/4, grooves 3/8, worked out by hand: between the stiles 9-1/2, so
    /// 9-1/2 + 3/4 - 1/4 = 10 wide; between the rails 23-1/2, so 23-1/2 + 3/4 - 1/8 = 24-1/8 high.
    /// </summary>
    [Test]
    public void A_solid_panel_has_room_in_its_grooves()
    {
        Assert.That(Row("08-013").Value, Is.EqualTo("1/8 / 1/16"));
        var piece = FaceFramedBox.With(
            13,
            27,
            "doors: { hang: overlaid, overlay: 1/2, stiles: 2 1/4, rails: 2 1/4, panel: body }"
        );
        var panel = piece.PartsOf(Role.DoorPanel).Single();

        Assert.That(FaceFramedBox.Inches(panel.Width.Length), Is.EqualTo(10).Within(Exact));
        Assert.That(FaceFramedBox.Inches(panel.Length.Length), Is.EqualTo(24.125).Within(Exact));
    }

    /// <summary>Source: door supplier's how-to guide: opening 15 x 27, overlay 1/2: door 16 x 28 (08-015).</summary>
    [TestCase("framed")]
    [TestCase("slab")]
    public void An_overlaid_door_is_its_opening_and_twice_the_overlay(string kind)
    {
        var piece = FaceFramedBox.With(15, 27, $"doors: {{ kind: {kind}, hang: overlaid, overlay: 1/2 }}");
        var printed = Printed.Decimals(Row("08-015").Value);

        Assert.That(WidthOf(piece), Is.EqualTo(printed[0]).Within(Exact));
        Assert.That(HeightOf(piece), Is.EqualTo(printed[1]).Within(Exact));
    }

    /// <summary>
    /// Source: the same guide: each door of a pair is (opening + 1)/2 - 1/16, which leaves 1/8 between them (08-016): 7-15/16
    /// in an opening of 15.
    /// </summary>
    [Test]
    public void Each_door_of_an_overlaid_pair_is_half_the_whole_less_a_sixteenth()
    {
        var piece = FaceFramedBox.With(15, 27, "doors: { leaves: pair, hang: overlaid, overlay: 1/2, pair gap: 1/8 }");
        var (left, right) = (piece.PartsOf(piece.Fronts[0]).Around(), piece.PartsOf(piece.Fronts[1]).Around());

        Assert.That(FaceFramedBox.Inches(left.Width), Is.EqualTo(((15 + 1) / 2.0) - (1 / 16.0)).Within(Exact));
        Assert.That(right.Width, Is.EqualTo(left.Width));
        Assert.That(FaceFramedBox.Inches(right.Min.X - left.Max.X), Is.EqualTo(1 / 8.0).Within(Exact));
    }

    /// <summary>
    /// Source: trade forum's knowledge base on inset door clearance (2006): 3/32 a side, 3/16 off the opening for one door
    /// (08-019). It is the shop's default.
    /// </summary>
    [Test]
    public void An_inset_door_is_three_sixteenths_smaller_than_its_opening()
    {
        var piece = FaceFramedBox.With(15, 27, "doors: { hang: inset }");

        Assert.That(WidthOf(piece), Is.EqualTo(15 - Value("08-019")).Within(Exact));
        Assert.That(HeightOf(piece), Is.EqualTo(27 - Value("08-019")).Within(Exact));
    }

    /// <summary>Source: the same: 9/32 off the opening for a pair, three gaps of 3/32 (08-020).</summary>
    [Test]
    public void An_inset_pair_is_nine_thirty_seconds_smaller_than_its_opening()
    {
        var piece = FaceFramedBox.With(30, 27, "doors: { leaves: pair, hang: inset }");
        var widths = piece.Fronts.Select(front => FaceFramedBox.Inches(piece.PartsOf(front).Around().Width)).ToList();

        Assert.That(widths, Has.Count.EqualTo(2));
        Assert.That(widths.Sum(), Is.EqualTo(30 - Value("08-020")).Within(Exact));
        Assert.That(widths[0], Is.EqualTo(widths[1]).Within(Exact));
    }

    /// <summary>
    /// Source: trade bulletin (2021): a face frame of 1-1/2 with an overlay of 1-1/4 shows a reveal of 1/4 (08-021).
    /// </summary>
    [Test]
    public void The_reveal_is_what_the_overlay_leaves_of_the_frame()
    {
        var piece = FaceFramedBox.With(15, 27, "doors: { hang: overlaid, overlay: 1 1/4 }");
        var door = piece.PartsOf(piece.Fronts.Single()).Around();
        var frame = piece.PartsOf(Role.FrameStile).Around();

        Assert.That(FaceFramedBox.Inches(door.Min.X - frame.Min.X), Is.EqualTo(Value("08-021")).Within(Exact));
        Assert.That(FaceFramedBox.Inches(frame.Max.X - door.Max.X), Is.EqualTo(Value("08-021")).Within(Exact));
    }

    private static PublishedRow Row(string id) => PublishedTable.Row("doors-and-drawers.csv", id);

    private static double Value(string id) => Printed.Number(Row(id).Value);

    private static double WidthOf(Piece piece) =>
        FaceFramedBox.Inches(piece.PartsOf(piece.Fronts.Single()).Around().Width);

    private static double HeightOf(Piece piece) =>
        FaceFramedBox.Inches(piece.PartsOf(piece.Fronts.Single()).Around().Height);

    private static IEnumerable<double> RailsOf(Piece piece) =>
        piece.PartsOf(Role.DoorRail).Select(rail => FaceFramedBox.Inches(rail.Length.Length));

    private static IEnumerable<double> ShouldersOf(Piece piece) =>
        piece.PartsOf(Role.DoorRail).Select(rail => FaceFramedBox.Inches(rail.ShoulderLength!.Length));
}
