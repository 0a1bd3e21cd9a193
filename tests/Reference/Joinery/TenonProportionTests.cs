using Dryfit.Casework;
using Dryfit.Reference.Tests.Pieces;
using Dryfit.Reference.Tests.Published;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Joinery;

/// <summary>
/// Mortises of a face frame of 3/4 x 2 in stock against published proportions: a rail between two drawers, tenoned into
/// stiles.
/// </summary>
public sealed class TenonProportionTests
{
    private const double Exact = 1e-12;

    /// <summary>Source: WOOD magazine, sizing mortises and tenons (07-071): 1-1/2 long, 1/4 wide, 1 to 1-3/8 deep.</summary>
    [Test]
    public void A_mortise_in_stock_of_three_quarters_by_two_is_as_published()
    {
        var row = PublishedTable.Row("joinery.csv", "07-071");
        Assert.That(row.Value, Does.StartWith("1-1/2 long, 1/4 wide"));
        var (long_, wide, deep) = Mortise();

        Assert.That(long_, Is.EqualTo(Printed.Number("1-1/2")).Within(Exact), row.Source);
        Assert.That(wide, Is.EqualTo(Printed.Number("1/4")).Within(Exact), row.Source);
        Assert.That(deep, Is.InRange(1, Printed.Number("1-3/8")), row.Source);
    }

    /// <summary>Source: WOOD magazine: a third of the stock (07-069).</summary>
    [Test]
    public void A_tenon_is_a_third_as_thick_as_its_stock()
    {
        var share = Printed.Number(PublishedTable.Row("joinery.csv", "07-069").Value);

        Assert.That(Mortise().Wide, Is.EqualTo(0.75 * share).Within(Exact));
    }

    /// <summary>Source: WOOD magazine: half to two thirds of the mortised part (07-070).</summary>
    [Test]
    public void A_tenon_is_half_to_two_thirds_as_long_as_the_stile_is_wide() =>
        Assert.That(Tenon(), Is.InRange(2 * 1 / 2.0, 2 * 2 / 3.0));

    /// <summary>Source: Popular Woodworking: in 3/4 stock 1/4 thick and 1-1/4 long, five times as long as thick (07-076).</summary>
    [Test]
    public void A_tenon_in_three_quarter_stock_is_an_inch_and_a_quarter_long() =>
        Assert.That(Tenon(), Is.EqualTo(Printed.Number("1-1/4")).Within(Exact));

    /// <summary>Source: the note to 07-071: the tenon stays 1/16 to 1/8 in short of the depth.</summary>
    [Test]
    public void A_mortise_is_a_little_deeper_than_its_tenon_is_long() =>
        Assert.That(Mortise().Deep - Tenon(), Is.InRange(Printed.Number("1/16"), Printed.Number("1/8")));

    /// <summary>
    /// Through tenons of a door of 3/4 stock: a third as thick (07-069), and no wider than five times that or 4 in (07-073).
    /// </summary>
    [Test]
    public void A_through_tenon_of_a_door_is_as_thick_and_no_wider_than_published()
    {
        var share = Printed.Number(PublishedTable.Row("joinery.csv", "07-069").Value);
        Assert.That(PublishedTable.Row("joinery.csv", "07-073").Value, Is.EqualTo("5 times thickness, 4 in"));
        var piece = Door();
        var stile = piece.Parts.Single(p => p.Name.EndsWith("door left stile", StringComparison.Ordinal));
        var mortises = stile.Cuts.OfType<SquareCut>().Where(c => c.Kind == CutKind.Mortise).ToList();

        Assert.That(mortises, Has.Count.EqualTo(2));
        foreach (var mortise in mortises.Select(c => c.Extent))
        {
            Assert.That(mortise.Height.Inches.ToDouble(), Is.EqualTo(0.75 * share).Within(Exact));
            Assert.That(mortise.Width.Inches.ToDouble(), Is.LessThanOrEqualTo(Math.Min(5 * 0.75 * share, 4)));
        }
    }

    private static Piece Door() =>
        BuiltPiece.From(
            """
            piece: Worked example
            units: in
            materials: { body: maple 3/4, panels: birch plywood 1/4 }
            carcases:
              box:
                size: [20, 30, 14]
                front: { doors: { kind: framed, joint: through mortise and tenon } }
            """
        );

    private static double Tenon()
    {
        var rail = Rail(Piece());
        return (rail.Length.Length - rail.ShoulderLength!.Length).Inches.ToDouble() / 2;
    }

    private static (double Long, double Wide, double Deep) Mortise()
    {
        var piece = Piece();
        var joint = piece.Joints.First(j => j.Kind == JointKind.MortiseAndTenon && j.Enters == Rail(piece).Id);
        var stile = piece.Parts.Single(p => p.Id == joint.Receives);
        var mortise = stile.Cuts.OfType<SquareCut>().Single(c => c.Joint == joint.Id).Extent;
        // A stile lies along its length, across its width and through its thickness.
        return (mortise.Width.Inches.ToDouble(), mortise.Height.Inches.ToDouble(), mortise.Depth.Inches.ToDouble());
    }

    private static Part Rail(Piece piece) =>
        piece.Parts.Single(p => p.Name.EndsWith("face frame rail 1", StringComparison.Ordinal));

    private static Piece Piece() =>
        BuiltPiece.From(
            """
            piece: Worked example
            units: in
            materials: { body: maple 3/4, boxes: maple 1/2, bottoms: birch plywood 1/4 }
            carcases:
              box:
                size: [30, 30, 20]
                face frame: { stiles: 2, rails: 2, joint: mortise and tenon }
                front: { rows: [ drawer, drawer ] }
            """
        );
}
