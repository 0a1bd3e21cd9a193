using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Pieces;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Frameless;

/// <summary>
/// 32 mm rows and cup hinges in a frameless carcase built from a recipe, measured where they were bored. The rows are trade
/// practice, set down by no standards body (06-010); the hinge is one maker's quick reference: another maker's may differ.
/// </summary>
public sealed class RowsAndHingesTests
{
    private const double Exact = 1e-9;

    private static readonly Piece Overlaid = BuiltPiece.From(
        """
        piece: Worked example
        units: mm
        materials: { body: birch plywood 18 }
        carcases:
          box:
            size: [600, 720, 560]
            shelves: { adjustable: 1 }
            front: { doors: "slab pair, overlaid" }
        """
    );

    private static readonly Piece Inset = BuiltPiece.From(
        """
        piece: Worked example
        units: mm
        materials: { body: birch plywood 18, fronts: birch plywood 21 }
        carcases:
          box:
            size: [600, 720, 560]
            front: { doors: "slab pair, inset" }
        """
    );

    /// <summary>Source: notes on 32 mm practice: holes 5 mm wide, 32 mm apart (06-001, 06-002).</summary>
    [Test]
    public void Shelf_pins_stand_in_holes_of_five_millimetres_every_thirty_two()
    {
        foreach (var side in Overlaid.PartsOf(Role.Side))
        {
            var holes = side.Holes(CutKind.ShelfPinHole);
            Assert.That(holes, Is.Not.Empty);
            Assert.That(holes.Select(hole => Mm(hole.Hole.Diameter)), Is.All.EqualTo(Value("06-002")).Within(Exact));
            foreach (var row in holes.GroupBy(hole => hole.At.Y))
            {
                var heights = row.Select(hole => Mm(hole.At.Z)).Order().ToList();
                var steps = heights.Skip(1).Zip(heights, (upper, lower) => upper - lower);
                Assert.That(steps, Is.All.EqualTo(Value("06-001")).Within(Exact));
            }
        }
    }

    /// <summary>Source: the same: the front row stands 37 mm behind the front edge (06-003).</summary>
    [Test]
    public void The_front_row_stands_thirty_seven_millimetres_behind_the_front_edge()
    {
        foreach (var side in Overlaid.PartsOf(Role.Side))
        {
            var first = side.Holes(CutKind.ShelfPinHole).Min(hole => Mm(hole.At.Y));

            Assert.That(first - Mm(side.Extent.Min.Y), Is.EqualTo(Value("06-003")).Within(Exact));
        }
    }

    /// <summary>Source: notes on 32 mm practice: 3 mm between frameless fronts, 1.5 mm at the outside edges (06-007).</summary>
    [Test]
    public void Frameless_fronts_leave_three_millimetres_between_and_half_of_that_at_the_edges()
    {
        var box = Overlaid.PartsOf(Role.Side).Around();
        var (left, right) = (
            Overlaid.PartsOf(Overlaid.Fronts[0]).Around(),
            Overlaid.PartsOf(Overlaid.Fronts[1]).Around()
        );

        Assert.That(Mm(right.Min.X - left.Max.X), Is.EqualTo(Value("06-007")).Within(Exact));
        Assert.That(Mm(left.Min.X - box.Min.X), Is.EqualTo(Value("06-007") / 2).Within(Exact));
        Assert.That(Mm(box.Max.X - right.Max.X), Is.EqualTo(Value("06-007") / 2).Within(Exact));
    }

    /// <summary>
    /// Source: hinge maker's quick reference: cups 35 mm wide and 13 mm deep (06-011, 06-012), with a boring distance of 5 mm
    /// their middle 22.5 mm from the edge (06-014).
    /// </summary>
    [Test]
    public void Hinge_cups_are_bored_where_the_hinge_maker_wants_them()
    {
        foreach (var front in Overlaid.Fronts)
        {
            var door = Overlaid.PartsOf(front).Single();
            var edge = front.Motion == FrontMotion.TurnsOnLeftEdge ? door.Extent.Min.X : door.Extent.Max.X;
            var cups = door.Holes(CutKind.HingeCup);

            Assert.That(cups, Is.Not.Empty);
            Assert.That(cups.Select(cup => Mm(cup.Hole.Diameter)), Is.All.EqualTo(Value("06-011")).Within(Exact));
            Assert.That(cups.Select(cup => Mm(cup.Hole.Depth)), Is.All.EqualTo(Value("06-012")).Within(Exact));
            Assert.That(cups.Select(cup => Mm(Length.Abs(cup.At.X - edge))), Is.All.EqualTo(5 + 17.5).Within(Exact));
        }
    }

    /// <summary>Source: the same: two holes of 8 mm, 45 mm apart, 9.5 mm behind the middle of the cup (06-013).</summary>
    [Test]
    public void The_screw_holes_of_a_cup_stand_forty_five_millimetres_apart()
    {
        var printed = Printed.Decimals(Row("06-013").Value);
        var door = Overlaid.PartsOf(Overlaid.Fronts[0]).Single();

        foreach (var (_, cup) in door.Holes(CutKind.HingeCup))
        {
            var screws = door.Holes(CutKind.Bore)
                .Where(hole => Length.Abs(hole.At.Z - cup.Z) < Length.FromMillimetres(40))
                .ToList();

            Assert.That(screws, Has.Count.EqualTo(2));
            Assert.That(screws.Select(hole => Mm(hole.Hole.Diameter)), Is.All.EqualTo(printed[0]).Within(Exact));
            Assert.That(Mm(Length.Abs(screws[0].At.Z - screws[1].At.Z)), Is.EqualTo(printed[1]).Within(Exact));
            Assert.That(screws.Select(hole => Mm(hole.At.X - cup.X)), Is.All.EqualTo(printed[2]).Within(Exact));
        }
    }

    /// <summary>
    /// Source: notes on 32 mm practice: hinge plates sit in the front row, 37 mm behind the front edge, for an inset door
    /// the thickness of the door further back (06-003, 06-004); its two holes 32 mm apart.
    /// </summary>
    [TestCase(false, 37)]
    [TestCase(true, 37 + 21)]
    public void Hinge_plates_sit_in_the_front_row(bool inset, double setbackMm)
    {
        var piece = inset ? Inset : Overlaid;
        var side = piece.PartsOf(Role.Side)[0];
        var cups = piece.PartsOf(piece.Fronts[0]).Single().Holes(CutKind.HingeCup);

        foreach (var (_, cup) in cups)
        {
            var plate = side.Holes(CutKind.Bore)
                .Where(hole => Mm(hole.At.Y - side.Extent.Min.Y) < 100)
                .Where(hole => Length.Abs(hole.At.Z - cup.Z) < Length.FromMillimetres(40))
                .ToList();

            Assert.That(plate, Has.Count.EqualTo(2));
            Assert.That(
                plate.Select(hole => Mm(hole.At.Y - side.Extent.Min.Y)),
                Is.All.EqualTo(setbackMm).Within(Exact)
            );
            Assert.That(Mm(Length.Abs(plate[0].At.Z - plate[1].At.Z)), Is.EqualTo(Value("06-001")).Within(Exact));
            Assert.That(Mm(plate[0].At.Z + plate[1].At.Z) / 2, Is.EqualTo(Mm(cup.Z)).Within(Exact));
        }
    }

    /// <summary>
    /// Source: hinge maker's quick reference, chart of hinges by height (read off its axis), light doors: 2 up to 40 in, 3 up
    /// to 60, 4 up to 80, 5 up to 100 (06-016 to 06-019). The distance from the first to the last is more than the door is
    /// wide (06-020).
    /// </summary>
    [TestCase(39, "06-016")]
    [TestCase(41, "06-017")]
    [TestCase(59, "06-017")]
    [TestCase(61, "06-018")]
    [TestCase(81, "06-019")]
    public void A_door_has_as_many_hinges_as_its_height_asks_for(int heightInches, string id)
    {
        var piece = BuiltPiece.From(
            $$"""
            piece: Worked example
            units: in
            materials: { body: birch plywood 3/4 }
            carcases:
              box:
                size: [12, {{heightInches}}, 20]
                front: { doors: slab }
            """
        );
        var door = piece.PartsOf(piece.Fronts.Single()).Single();
        var cups = door.Holes(CutKind.HingeCup);

        Assert.That(cups, Has.Count.EqualTo((int)Printed.Decimals(Row(id).Item)[0]), Row(id).ToString());
        Assert.That(Mm(cups.Max(cup => cup.At.Z) - cups.Min(cup => cup.At.Z)), Is.GreaterThan(Mm(door.Extent.Width)));
    }

    private static PublishedRow Row(string id) => PublishedTable.Row("rows-and-hinges.csv", id);

    private static double Value(string id) => Printed.Number(Row(id).Value);

    private static double Mm(Length length) => length.ToMillimetres();
}
