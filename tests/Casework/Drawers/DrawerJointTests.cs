using Dryfit.Casework.Tests.Kit;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Drawers;

/// <summary>Corners of drawer boxes: what is cut from the one is left on the other.</summary>
public sealed class DrawerJointTests
{
    private static string Recipe(string drawer, string frame = "", string box = "{ solid: beech, thickness: 12 }") =>
        $$"""
            piece: Drawer
            units: mm
            materials: { body: birch plywood 18, boxes: {{box}}, bottoms: birch plywood 6, fronts: oak 21, runners: beech 18 }
            carcases:
              chest:
                size: [436, 236, 480]
                {{frame}}
                front: { rows: [ {{drawer}} ] }
            """;

    private static double Walls(Piece piece) =>
        piece
            .Parts.Where(p => p.Role is Role.DrawerSide or Role.DrawerBack or Role.DrawerBoxFront or Role.DrawerFront)
            .Where(p => !(p.Role == Role.DrawerFront && piece.PartsOf(Role.DrawerBoxFront).Count > 0))
            .Sum(piece.VolumeMm3);

    /// <summary>
    /// Opening 400 x 200 mm. Box 400 - 2 x 12.7 = 374.6 wide; 200 - 12 - 12 = 176 to steps of 5 mm = 175 high, of which a
    /// planted bottom of 6 mm leaves walls of 169 mm. However the corners are cut, the walls together fill the ring between
    /// outside and inside.
    /// </summary>
    [Theory]
    [InlineData("rabbeted")]
    [InlineData("dovetailed")]
    [InlineData("half-blind dovetailed")]
    [InlineData("box jointed")]
    [InlineData("screwed")]
    public void Walls_fill_the_ring_of_the_box_and_nothing_twice(string joint)
    {
        var piece = Built.From(Recipe($"{{ drawer: {{ joint: {joint}, bottom set: planted }} }}"));
        piece.MustBeSound();
        // Side length as the slides are; half-blind dovetails leave a lap of 12 / 3 = 4 mm before it.
        var length = joint == "half-blind dovetailed" ? 404.0 : 400.0;
        var ring = (374.6 * length) - ((374.6 - 24) * (length - 24));
        Assert.Equal(ring * 169, Walls(piece), 0.5);
    }

    [Fact]
    public void Dadoed_back_stands_in_from_the_ends_of_the_sides()
    {
        var piece = Built.From(Recipe("{ drawer: { joint: dadoed } }"));
        piece.MustBeSound();
        var (side, back) = (piece.Part("chest drawer 1 left side"), piece.Part("chest drawer 1 back"));
        Assert.Equal(Exact("12 mm"), side.Extent.Max.Y - back.Extent.Max.Y);
        Assert.Contains(side.Cuts, c => c.Kind == CutKind.Dado);
    }

    /// <summary>
    /// Walls of 175 mm with pins of 6 mm at about 38 mm: (175 - 6) / 38 = 4.4, so four tails of (175 - 5 x 6) / 4 = 36.25 mm
    /// at their ends. Beech, 1 in 8: over 12 mm a flank goes 1.5 mm.
    /// </summary>
    [Fact]
    public void Tails_stand_between_half_pins_at_both_edges()
    {
        var piece = Built.From(Recipe("{ drawer: dovetailed }"));
        piece.MustBeSound();
        var side = piece.Part("chest drawer 1 left side");
        var sockets = Sockets(side, 200).ToList();
        Assert.Equal(5, sockets.Count);
        Assert.Equal((Exact("0 mm"), Exact("7.5 mm")), Spread(sockets[0]));
        Assert.Equal((Exact("167.5 mm"), Exact("175 mm")), Spread(sockets[^1]));
        // The uppermost tail begins at 175 - 42.25, marked 132.8, and the next ends at 126.75, marked 126.8: counted from the
        // upper edge 42.2 and 48.2 at their ends, and 1.5 more to both sides at their roots.
        Assert.Equal((Exact("40.7 mm"), Exact("49.7 mm")), Spread(sockets[1]));
        Assert.Equal(4, Sockets(piece.Part("chest drawer 1 box front"), 200).Count());
    }

    /// <summary>1 in 6 in softwood, 1 in 8 in hardwood: common practice.</summary>
    [Theory]
    [InlineData("{ solid: pine, thickness: 12 }", "8 mm")]
    [InlineData("{ solid: beech, thickness: 12 }", "7.5 mm")]
    public void Slope_goes_by_the_timber(string box, string halfPin)
    {
        var piece = Built.From(Recipe("{ drawer: dovetailed }", box: box));
        Assert.Equal(Exact(halfPin), Spread(Sockets(piece.Part("chest drawer 1 left side"), 200).First()).To);
    }

    /// <summary>Inset in a frame of 40 mm: the front is 436 - 80 - 2 x 2 = 352 mm wide, and so is its box.</summary>
    [Fact]
    public void Own_front_takes_the_sides_half_blind()
    {
        var piece = Built.From(
            Recipe(
                "{ drawer: { joint: half-blind dovetailed, own front: yes, slides: runners, bottom set: slid in } }",
                "face frame: { stiles: 40, rails: 36 }"
            )
        );
        piece.MustBeSound();
        var front = piece.Part("chest drawer 1 front");
        var (left, right) = (piece.Part("chest drawer 1 left side"), piece.Part("chest drawer 1 right side"));
        Assert.Equal(Exact("352 mm"), front.Length.Length);
        Assert.Equal(Exact("352 mm"), right.Extent.Max.X - left.Extent.Min.X);
        // A lap of 6 mm is left of 21.
        Assert.Equal(Exact("6 mm"), left.Extent.Min.Y - front.Extent.Min.Y);
        Assert.Empty(piece.PartsOf(Role.DrawerBoxFront));
        Assert.DoesNotContain(piece.Hardware, h => h.Kind.Contains("slide", StringComparison.Ordinal));
    }

    [Fact]
    public void Box_joint_has_an_uneven_number_of_fingers()
    {
        // 175 mm at about 12 mm: 7 pairs and one, 15 fingers; the sides have 7 sockets an end, front and back 8.
        var piece = Built.From(Recipe("{ drawer: box jointed }"));
        piece.MustBeSound();
        int Count(string part) => piece.Part(part).Cuts.Count(c => c.Kind == CutKind.FingerSocket);
        Assert.Equal(14, Count("chest drawer 1 left side"));
        Assert.Equal(16, Count("chest drawer 1 back"));
    }

    [Theory]
    [InlineData(
        "{ drawer: { own front: yes, joint: half-blind dovetailed } }",
        "overlaid|lies in front of its opening"
    )]
    [InlineData(
        "{ drawer: { own front: yes, hang: inset, joint: half-blind dovetailed } }",
        "narrower than its opening"
    )]
    [InlineData("{ drawer: { own front: yes, hang: inset, slides: runners } }", "let in between its sides")]
    [InlineData("{ drawer: { box height: 20, bottom set: planted, joint: dovetailed } }", "no room")]
    [InlineData("{ drawer: { slides: under, bottom set: planted } }", "planted bottom is in its way")]
    public void What_cannot_be_joined_is_refused_at_its_line(string drawer, string says)
    {
        var error = Built.ErrorOf(Recipe(drawer));
        Assert.Contains(says.Split('|')[^1], error, StringComparison.Ordinal);
        Assert.StartsWith("8:", error, StringComparison.Ordinal);
    }

    private static IEnumerable<OutlineCut> Sockets(Part part, int before) =>
        part
            .Cuts.OfType<OutlineCut>()
            .Where(c => c.Kind == CutKind.DovetailSocket)
            .Where(c =>
                c.Along == Axis.Z
                    ? part.Place.ToPiece(new Point(c.Outline[0].A, c.Outline[0].B, c.From)).Y
                        < Length.FromMillimetres(before)
                    : c.From == Length.Zero
            )
            .OrderBy(c => Spread(c).From);

    private static (Length From, Length To) Spread(OutlineCut cut) =>
        cut.Along == Axis.Z
            ? (cut.Outline.Min(c => c.B), cut.Outline.Max(c => c.B))
            : (cut.Outline.Min(c => c.A), cut.Outline.Max(c => c.A));
}
