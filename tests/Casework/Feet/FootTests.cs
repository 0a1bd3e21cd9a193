using Dryfit.Casework.Tests.Kit;
using Dryfit.Solids;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Feet;

/// <summary>Bracket feet, plinths and arches under a box of 600 x 720 x 400 of pine 18.</summary>
public sealed class FootTests
{
    private static Piece Stands(string on, string rest = "") =>
        Built.From(Metric($"box: {{ size: [600, 720, 400], stands on: {{ {on} }}{rest} }}"));

    private static double TrueVolumeMm3(Piece piece, string part) =>
        piece.Grid.ToCubicMm(Round.Volume(piece.Part(part).Solid));

    [Fact]
    public void Bracket_feet_meet_in_mitres_at_the_front_and_butt_at_the_back()
    {
        var piece = Stands("brackets: { height: 120, length: 180, foot: 60, strip: 40, shape: straight }");
        piece.Measures("box feet front left bracket", "180 x 120 x 18");
        piece.StandsAt("box feet front right bracket", "420, 0, 0");
        piece.Measures("box feet front left end bracket", "180 x 120 x 18");
        piece.StandsAt("box feet rear right end bracket", "582, 220, 0");
        // 180 - 18, behind the end bracket; blocks of 60 - 18.
        piece.Measures("box feet rear left back bracket", "162 x 120 x 18");
        piece.StandsAt("box feet rear left back bracket", "18, 382, 0");
        piece.Measures("box feet front left block", "120 x 42 x 42");
        piece.StandsAt("box feet rear right block", "540, 340, 0");
        piece.Measures("box left side", "600 x 400 x 18");
        Assert.Equal(2, piece.Joints.Count(joint => joint.Kind == JointKind.Mitre));
        // From the strip of 40 the cut goes 80 up and comes out 80 further in: a strip of 40 x 80 and half a square of 80.
        var sawn = (40.0 * 80) + (80 * 80 / 2.0);
        piece.Holds("box feet rear left end bracket", ((180.0 * 120) - sawn) * 18);
        piece.Holds("box feet front left bracket", (((180.0 * 120) - sawn) * 18) - (18 * 18 / 2.0 * 120));
        piece.MustBeSound();
    }

    [Theory]
    // A strip of 40 x 80 beside a quarter disc of radius 80; or beside a square of 40, a quarter disc and what one leaves.
    [InlineData("cove", (40 * 80.0) + (Math.PI * 80 * 80 / 4))]
    [InlineData("ogee", (40 * 80.0) + (40 * 40) + (Math.PI * 40 * 40 / 4) + ((40 * 40) - (Math.PI * 40 * 40 / 4)))]
    public void Brackets_are_sawn_to_their_curve(string shape, double sawn)
    {
        var piece = Stands($"brackets: {{ height: 120, length: 180, foot: 60, strip: 40, shape: {shape} }}");
        Assert.Equal(((180.0 * 120) - sawn) * 18, TrueVolumeMm3(piece, "box feet rear left end bracket"), 1);
        piece.MustBeSound();
    }

    [Fact]
    public void Brackets_by_habit_are_half_as_long_again_as_high()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 500], stands on: { brackets } }"));
        // 150 high by the house; foot a third of 225, blocks 75 - 18.
        piece.Measures("box feet front left bracket", "225 x 150 x 18");
        piece.Measures("box feet front left block", "150 x 57 x 57");
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("brackets: { height: 100, length: 301 }", "Two brackets are longer than the carcase over them.")]
    [InlineData(
        "brackets: { height: 150, length: 140 }",
        "There is no room for the curve of the brackets between their foot and their inner end."
    )]
    [InlineData(
        "brackets: { height: 100, foot: 18 }",
        "The foot of the brackets is narrower than they are thick, or their blocks are longer than they."
    )]
    [InlineData(
        "plinth: 80, set: let in, setback: 390",
        "The plinth is not let in between the sides: it would stand before or behind them."
    )]
    [InlineData("plinth: 80, arch: 230", "The arch in the box plinth front is no part of a circle.")]
    public void Feet_that_cannot_stand_are_told(string on, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"box: {{ size: [600, 720, 400], stands on: {{ {on} }} }}")),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_planted_plinth_goes_round_the_foot_and_the_floor_lies_above_it()
    {
        var piece = Stands("plinth: 90, set: planted, edge: chamfer 8");
        piece.Measures("box left side", "720 x 400 x 18");
        piece.StandsAt("box bottom", "18, 0, 90");
        // 600 + 2 x 18; 400 + 18.
        piece.Measures("box plinth front", "636 x 90 x 18");
        piece.StandsAt("box plinth front", "-18, -18, 0");
        piece.Measures("box plinth right return", "418 x 90 x 18");
        piece.MustBeSound();
    }

    [Fact]
    public void Before_a_face_frame_it_covers_the_lower_rail()
    {
        var piece = Stands("plinth: 60, set: planted", ", face frame: { rails: 70 }");
        piece.StandsAt("box face frame bottom rail", "40, 0, 0");
        piece.StandsAt("box plinth front", "-18, -18, 0");
        piece.MustBeSound();
        Assert.EndsWith(
            "The box plinth front would hang before the front of the box opening.",
            Built.ErrorOf(
                Metric(
                    "box: { size: [600, 720, 400], face frame: { rails: 40 }, stands on: { plinth: 60, set: planted }, front: { doors: slab } }"
                )
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_plinth_let_in_stands_between_sides_that_go_to_the_floor()
    {
        var piece = Stands("plinth: 80, set: let in, setback: 10");
        piece.Measures("box left side", "720 x 400 x 18");
        piece.Holds("box left side", piece.VolumeMm3(piece.Part("box right side")));
        piece.Measures("box plinth", "564 x 80 x 18");
        piece.StandsAt("box plinth", "18, 10, 0");
        piece.StandsAt("box bottom", "18, 0, 80");
        piece.MustBeSound();
    }

    [Fact]
    public void Rails_are_arched_from_leg_to_leg_and_plinths_keep_feet()
    {
        var plain = Stands("legs: 50, height: 400, rails: 80");
        var arched = Stands("legs: 50, height: 400, rails: 80, arch: { rise: 30, along: front and ends }");
        // Span 500, rise 30: radius (250 x 250 + 30 x 30) / 60.
        Assert.Equal(
            plain.VolumeMm3(plain.Part("box stand front rail")) - (Segment(500, 30) * 18),
            TrueVolumeMm3(arched, "box stand front rail") + Bores(arched, plain, "box stand front rail"),
            1
        );
        Assert.Empty(arched.Part("box stand rear rail").Cuts.OfType<OutlineCut>());
        Assert.Single(arched.Part("box stand left end rail").Cuts.OfType<OutlineCut>());
        arched.MustBeSound();

        // A plinth 80 high keeps 80 at each end by habit.
        var plinth = Stands("plinth: 80, arch: 40");
        Assert.Equal(((600.0 * 80) - Segment(440, 40)) * 18, TrueVolumeMm3(plinth, "box plinth front"), 1);
        plinth.MustBeSound();
    }

    /// <summary>What round bores make of the difference between true and faceted volume: the same on both pieces.</summary>
    private static double Bores(Piece piece, Piece plain, string part)
    {
        Assert.Equal(piece.Part(part).Cuts.OfType<RoundCut>(), plain.Part(part).Cuts.OfType<RoundCut>());
        return plain.VolumeMm3(plain.Part(part)) - TrueVolumeMm3(plain, part);
    }

    private static double Segment(double span, double rise)
    {
        var radius = ((span * span / 4) + (rise * rise)) / (2 * rise);
        var half = Math.Asin(span / 2 / radius);
        return radius * radius * (half - (Math.Sin(half) * Math.Cos(half)));
    }

    [Fact]
    public void A_turned_leg_is_round_below_its_pommel()
    {
        string Table(string legs) =>
            Metric(
                $"box: {{ size: [600, 720, 400], stands on: {{ legs: {{ of: posts{legs} }}, height: 400, rails: 70 }} }}",
                materials: "posts: oak 50"
            );
        var plain = Built.From(Table(""));
        var piece = Built.From(
            Table(", turning: { pommel: 30, stretches: [ { length: 20, diameter: 50 } ], diameter: 40 }")
        );
        // Below the rails 330: 30 square, 20 round at 50, 280 round at 40.
        var taken = ((2500 - (Math.PI * 625)) * 20) + ((2500 - (Math.PI * 400)) * 280);
        foreach (var leg in piece.PartsOf(Role.Leg))
        {
            Assert.Equal(TrueVolumeMm3(plain, leg.Name) - taken, TrueVolumeMm3(piece, leg.Name), 1);
            // The blank is in the list as it is sawn.
            piece.Measures(leg.Name, "400 x 50 x 50");
        }
        piece.MustBeSound();
    }

    [Theory]
    [InlineData("diameter: 51", "A leg is turned from a square blank, to no more than the blank's own width.")]
    [InlineData("pommel: 330, diameter: 40", "The stretches that are turned are longer than the leg below its pommel.")]
    public void A_turning_that_the_blank_does_not_hold_is_told(string turning, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(
                Metric(
                    $"box: {{ size: [600, 720, 400], stands on: {{ legs: {{ width: 50, turning: {{ {turning} }} }}, height: 400, rails: 70 }} }}"
                )
            ),
            StringComparison.Ordinal
        );
}
