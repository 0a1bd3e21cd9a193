using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Feet;

/// <summary>Legs of 50 under a box of 600 x 720 x 400, 400 high with rails of 70: 330 from the floor to the rails.</summary>
public sealed class LegShapeTests
{
    private const double Square = 400 * 50 * 50;

    /// <summary>What four dowel holes for two rails take: two of 8 across in each face, 20 deep and 1 for room.</summary>
    private static Piece Table(string legs) =>
        Built.From(
            Metric(
                $"box: {{ size: [600, 720, 400], stands on: {{ legs: {{ {legs} }}, height: 400, rails: 70 }} }}",
                materials: "posts: oak 50"
            )
        );

    [Theory]
    [InlineData("one", 330 * 30 / 2.0 * 50)]
    // Two wedges, less what both take: 30 x 30 x 330 / 3.
    [InlineData("two", (330 * 30 / 2.0 * 50 * 2) - (30.0 * 30 * 330 / 3))]
    // From 50 x 50 to 20 x 20: a prism less a frustum of 330 / 3 x (2500 + 400 + 1000).
    [InlineData("four", (330.0 * 2500) - (330 / 3.0 * (2500 + 400 + 1000)))]
    public void A_taper_takes_what_the_wedges_say(string faces, double taken)
    {
        var plain = Table("of: posts");
        var tapered = Table($"of: posts, taper: {{ to: 20, faces: {faces} }}");
        foreach (var leg in tapered.PartsOf(Role.Leg))
        {
            var was = plain.VolumeMm3(plain.Part(leg.Name));
            Assert.Equal(was - taken, tapered.VolumeMm3(leg), 1e-3);
        }
        tapered.MustBeSound();
        Assert.True(plain.VolumeMm3(plain.PartsOf(Role.Leg)[0]) < Square);
    }

    [Fact]
    public void The_inside_faces_lean_and_the_outside_stays_plumb()
    {
        var piece = Table("of: posts, taper: { to: 20, faces: two, below: 30 }");
        foreach (var leg in piece.PartsOf(Role.Leg))
        {
            // On the floor 20 is left at the outer corner of the piece.
            var floor = leg
                .Solid.Vertices.Select(leg.Placed.Frame.ToWorld)
                .Where(v => v.Z == 0)
                .Select(v => (X: piece.Grid.ToMm(v.X), Y: piece.Grid.ToMm(v.Y)))
                .ToList();
            var (outX, outY) = (
                leg.Name.Contains("left", StringComparison.Ordinal) ? 0.0 : 600.0,
                leg.Name.Contains("front", StringComparison.Ordinal) ? 0.0 : 400.0
            );
            Assert.Equal(4, floor.Count);
            Assert.All(floor, at => Assert.True(Math.Abs(at.X - outX) <= 20 && Math.Abs(at.Y - outY) <= 20));
        }
    }

    [Fact]
    public void Legs_glued_up_of_plies_are_tapered_as_one()
    {
        var piece = Built.From(
            Metric(
                "box: { size: [600, 720, 400], stands on: { legs: { of: plies, plies: 2, width: 50, taper: { to: 20, faces: four } }, height: 400, rails: 70 } }",
                materials: "plies: oak 25"
            )
        );
        var plain = Built.From(
            Metric(
                "box: { size: [600, 720, 400], stands on: { legs: { of: plies, plies: 2, width: 50 }, height: 400, rails: 70 } }",
                materials: "plies: oak 25"
            )
        );
        double Leg(Piece of) => of.PartsOf(Role.Leg).Take(2).Sum(of.VolumeMm3);
        Assert.Equal(Leg(plain) - ((330.0 * 2500) - (330 / 3.0 * (2500 + 400 + 1000))), Leg(piece), 1e-3);
        piece.MustBeSound();
    }

    [Fact]
    public void Edges_of_legs_are_chamfered_up_to_the_rails()
    {
        var plain = Table("width: 50");
        var piece = Table("width: 50, edge: chamfer 5");
        foreach (var leg in piece.PartsOf(Role.Leg))
            Assert.Equal(plain.VolumeMm3(plain.Part(leg.Name)) - (4 * 12.5 * 330), piece.VolumeMm3(leg), 1e-3);
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("of: posts, taper: { to: 50 }", "The legs are no thicker than they should be at the floor.")]
    [InlineData("of: posts, taper: { to: 20, below: 330 }", "The taper begins below the floor.")]
    [InlineData(
        "of: posts, taper: { to: 20 }, edge: chamfer 3",
        "Legs have one of taper, turning and edge, not both taper and edge."
    )]
    [InlineData("plies: 2", "What the legs are made of is missing.")]
    public void What_cannot_be_a_leg_is_said(string legs, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(
                Metric(
                    $"box: {{ size: [600, 720, 400], stands on: {{ legs: {{ {legs} }}, height: 400 }} }}",
                    materials: "posts: oak 50"
                )
            ),
            StringComparison.Ordinal
        );
}
