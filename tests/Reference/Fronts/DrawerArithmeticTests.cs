using Dryfit.Casework;
using Dryfit.Reference.Tests.Pieces;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Fronts;

/// <summary>Worked examples of drawers, each built from a recipe and measured. Sizes in inches, exact.</summary>
public sealed class DrawerArithmeticTests
{
    private const double Exact = 1e-12;

    /// <summary>Source: published slide practice: 1/2 a side, box width = opening - 1 (08-024). The shop's default.</summary>
    [Test]
    public void A_box_on_side_slides_is_an_inch_narrower_than_its_opening()
    {
        var piece = FaceFramedBox.With(15, 6, "drawer: { hang: overlaid, overlay: 3/8 }");

        Assert.That(BoxWidth(piece), Is.EqualTo(15 - 1).Within(Exact));
    }

    /// <summary>
    /// Source: drawer box supplier: opening 15, slides under the box: 14-5/8 with sides of 5/8 (08-022), 14-3/8 with sides of
    /// 1/2 (08-023); the slide's own room is half of the difference on each side.
    /// </summary>
    [TestCase("08-022", "3/16")]
    [TestCase("08-023", "5/16")]
    public void A_box_is_its_opening_less_the_room_of_its_slides(string id, string clearance)
    {
        var row = PublishedTable.Row("doors-and-drawers.csv", id);

        var piece = FaceFramedBox.With(
            15,
            6,
            "drawer: { hang: overlaid, overlay: 3/8 }",
            $"drawers: {{ slide clearance: {clearance} }}"
        );

        Assert.That(BoxWidth(piece), Is.EqualTo(Printed.Number(row.Value.Split(' ')[0])).Within(Exact), row.Source);
    }

    /// <summary>
    /// Source: drawer box supplier: opening 15, slides under the box: 14-5/8 with sides of 5/8 (08-022), 14-3/8 with sides of
    /// 1/2 (08-023). The shop's own under slides, by the sides that the box really has.
    /// </summary>
    [TestCase("08-022", "5/8")]
    [TestCase("08-023", "1/2")]
    public void A_box_on_under_slides_is_as_wide_as_its_supplier_says(string id, string side)
    {
        var row = PublishedTable.Row("doors-and-drawers.csv", id);
        var piece = BuiltPiece.From(
            $$"""
            piece: Worked example
            units: in
            materials: { body: maple 3/4, boxes: maple {{side}}, bottoms: birch plywood 1/4 }
            carcases:
              box:
                size: [18, 9, 20]
                face frame: { stiles: 1 1/2, rails: 1 1/2 }
                front: { drawer: { slides: under } }
            """
        );

        Assert.That(BoxWidth(piece), Is.EqualTo(Printed.Number(row.Value.Split(' ')[0])).Within(Exact), row.Source);
    }

    /// <summary>Source: published notes on drawers: a false front laps 3/8 a side over its opening (08-026).</summary>
    [Test]
    public void A_false_front_laps_three_eighths_a_side()
    {
        var lap = Printed.Number(PublishedTable.Row("doors-and-drawers.csv", "08-026").Value);
        var piece = FaceFramedBox.With(15, 6, "drawer: { hang: overlaid, overlay: 3/8 }");
        var front = piece.PartsOf(Role.DrawerFront).Around();
        var clear = piece.Openings.Single().Clear;

        Assert.That(FaceFramedBox.Inches(clear.Min.X - front.Min.X), Is.EqualTo(lap).Within(Exact));
        Assert.That(FaceFramedBox.Inches(front.Max.X - clear.Max.X), Is.EqualTo(lap).Within(Exact));
        Assert.That(FaceFramedBox.Inches(front.Width), Is.EqualTo(15 + (2 * lap)).Within(Exact));
    }

    private static double BoxWidth(Piece piece) => FaceFramedBox.Inches(piece.PartsOf(Role.DrawerSide).Around().Width);
}
