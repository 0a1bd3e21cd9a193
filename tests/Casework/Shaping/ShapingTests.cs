using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using static Dryfit.Casework.Tests.Shaping.ShapedBoard;

namespace Dryfit.Casework.Tests.Shaping;

/// <summary>Cuts that are not square, on a board of 400 x 60 x 20: what is left, worked out by hand.</summary>
public sealed class ShapingTests
{
    private const double Whole = 400 * 60 * 20;

    /// <summary>The ways a board of a piece lies: rail, upright, shelf, end.</summary>
    public static TheoryData<Direction, Direction> Lies =>
        new()
        {
            { Direction.Right, Direction.Front },
            { Direction.Up, Direction.Left },
            { Direction.Right, Direction.Up },
            { Direction.Back, Direction.Right },
            { Direction.Back, Direction.Down },
        };

    [Theory]
    [MemberData(nameof(Lies))]
    public void A_mitre_of_45_degrees_takes_half_a_square_prism_off_the_end(Direction along, Direction shows)
    {
        foreach (var end in (Direction[])[along, along.Opposite()])
        {
            foreach (var longSide in (Direction[])[shows, shows.Opposite()])
            {
                var board = Of(400, 60, 20, along, shows);
                EndMitre.Cut(board.Draft, end, longSide, 45);
                Assert.Equal(Whole - (20 * 20 / 2 * 60), board.VolumeMm3, 1e-6);
            }
        }
    }

    [Fact]
    public void The_long_side_keeps_its_length()
    {
        var board = Of(400, 60, 20, Direction.Right, Direction.Front);
        EndMitre.Cut(board.Draft, Direction.Left, Direction.Front, Mm(30));
        var cut = Assert.IsType<OutlineCut>(Assert.Single(board.Draft.Cuts));
        // Board x runs to the right, z to the front: at the left end the back (z = 0) loses 30, the front nothing.
        Assert.Equal(Axis.Y, cut.Along);
        Assert.Equal(
            [(Mm(0), Mm(0)), (Mm(0), Mm(30)), (Mm(20), Mm(0))],
            cut.Outline.Select(corner => (corner.A, corner.B)).Order()
        );
    }

    [Fact]
    public void A_mitre_of_30_degrees_runs_by_the_tangent_rounded_once()
    {
        // tan 30 = 0.577350269; times 60 is 34.641016 mm, 22170.25 steps of 1/640 mm.
        Assert.Equal(Mm(new(22170, 640)), EndMitre.RunAt(Mm(60), 30));
        Assert.Equal(Mm(60), EndMitre.RunAt(Mm(60), 45));
    }

    [Theory]
    [MemberData(nameof(Lies))]
    public void Tapers_on_two_faces_share_the_corner_between_them(Direction along, Direction shows)
    {
        var board = Of(400, 60, 20, along, shows);
        var across = board.Draft.Place.Lie.Across;
        FaceTaper.Cut(board.Draft, shows, along, Mm(300), Mm(8));
        FaceTaper.Cut(board.Draft, across, along, Mm(300), Mm(12));
        // Each wedge, less what both take: the integral of 8 t x 12 t over 300 mm is 8 x 12 x 300 / 3.
        var wedges = (300.0 * 8 / 2 * 60) + (300.0 * 12 / 2 * 20);
        Assert.Equal(Whole - wedges + (8.0 * 12 * 300 / 3), board.VolumeMm3, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Lies))]
    public void Chamfers_round_a_corner_meet_as_a_cutter_leaves_them(Direction along, Direction shows)
    {
        var board = Of(400, 60, 20, along, shows);
        var across = board.Draft.Place.Lie.Across;
        var chamfer = EdgeShape.Chamfer(Mm(6), Mm(6), "chamfer 6");
        ShapedEdge.Cut(board.Draft, along, shows, chamfer);
        ShapedEdge.Cut(board.Draft, across, shows, chamfer);
        // Two prisms of 6 x 6 / 2; at the corner both take the pyramid of 6 x 6 x 6 / 3.
        Assert.Equal(Whole - (18.0 * 400) - (18.0 * 60) + (6.0 * 6 * 6 / 3), board.VolumeMm3, 1e-6);
    }

    [Fact]
    public void A_shape_stops_where_it_is_told()
    {
        var board = Of(400, 60, 20, Direction.Up, Direction.Front);
        ShapedEdge.Cut(
            board.Draft,
            Direction.Left,
            Direction.Front,
            EdgeShape.Chamfer(Mm(5), Mm(5), "chamfer 5"),
            (Mm(100), Mm(350))
        );
        Assert.Equal(Whole - (12.5 * 250), board.VolumeMm3, 1e-6);
    }

    /// <summary>Radius or size, what the shape takes of a metre of edge with its rounds true (by hand), how far it may be off.</summary>
    public static TheoryData<string, double> Shapes =>
        new()
        {
            // A square less a quarter disc; a quarter disc; a square's half, since its two quarters even out.
            { "round", (12 * 12) - (Math.PI * 12 * 12 / 4) },
            { "cove", Math.PI * 12 * 12 / 4 },
            { "ogee", (6 * 6 * 2) + ((6 * 6) - (Math.PI * 6 * 6 / 4)) - ((6 * 6) - (Math.PI * 6 * 6 / 4)) },
            // Two spandrels of a half disc of radius 6 and a quirk of 3 x 6.
            { "bead", (12 * 6) - (Math.PI * 6 * 6 / 2) + (3 * 6) },
        };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_round_shape_takes_what_its_circles_say(string name, double areaMm2)
    {
        var shape = name switch
        {
            "round" => EdgeShape.Round(Mm(12), name),
            "cove" => EdgeShape.Cove(Mm(12), name),
            "ogee" => EdgeShape.Ogee(Mm(12), name),
            _ => EdgeShape.Bead(Mm(12), name),
        };
        foreach (var edge in (Direction[])[Direction.Up, Direction.Down])
        {
            var board = Of(400, 60, 20, Direction.Right, Direction.Front);
            ShapedEdge.Cut(board.Draft, edge, Direction.Front, shape);
            // The circle is told by chords that lie no more than 0.05 mm off it, some 19 mm of it.
            Assert.Equal(Whole - (areaMm2 * 400), board.VolumeMm3, 400 * 19 * 0.05);
            Assert.Equal(Whole - (areaMm2 * 400), board.TrueVolumeMm3, 1e-3);
        }
    }

    [Fact]
    public void An_arch_takes_a_segment_of_its_circle()
    {
        var board = Of(400, 60, 20, Direction.Right, Direction.Front);
        EdgeArch.Cut(board.Draft, Direction.Down, Direction.Front, Mm(40), Mm(40), Mm(360));
        // Span 320, rise 40: radius (160 x 160 + 40 x 40) / 80 = 340; half the angle has the sine 160 / 340.
        var half = Math.Asin(160.0 / 340);
        var segment = 340 * 340 * (half - (Math.Sin(half) * Math.Cos(half)));
        Assert.Equal(Whole - (segment * 20), board.TrueVolumeMm3, 0.1);
        Assert.Equal(Whole - (segment * 20), board.VolumeMm3, 320 * 20 * 0.05);
    }

    [Fact]
    public void An_arch_is_no_more_than_half_a_circle()
    {
        var board = Of(400, 60, 20, Direction.Right, Direction.Front);
        var tooSteep = Assert.Throws<CannotBuildException>(() =>
            EdgeArch.Cut(board.Draft, Direction.Down, Direction.Front, Mm(51), Mm(100), Mm(200))
        );
        Assert.Equal("The arch in the board is no part of a circle.", tooSteep.Message);
        var tooHigh = Assert.Throws<CannotBuildException>(() =>
            EdgeArch.Cut(board.Draft, Direction.Down, Direction.Front, Mm(60), Mm(100), Mm(300))
        );
        Assert.Equal("The arch in the board leaves nothing of it.", tooHigh.Message);
    }

    [Fact]
    public void What_leaves_nothing_is_refused()
    {
        var board = Of(400, 60, 20, Direction.Right, Direction.Front);
        var tooThin = Assert.Throws<CannotBuildException>(() =>
            FaceTaper.Cut(board.Draft, Direction.Front, Direction.Right, Mm(100), Mm(20))
        );
        Assert.Equal("The taper leaves nothing of the board at its end.", tooThin.Message);
        var tooLong = Assert.Throws<CannotBuildException>(() =>
            EndMitre.Cut(board.Draft, Direction.Left, Direction.Front, Mm(401))
        );
        Assert.Equal("The mitre of the board takes more than the part is long.", tooLong.Message);
        var tooDeep = Assert.Throws<CannotBuildException>(() =>
            ShapedEdge.Cut(
                board.Draft,
                Direction.Up,
                Direction.Front,
                EdgeShape.Chamfer(Mm(10), Mm(21), "chamfer 10 x 21")
            )
        );
        Assert.Equal("The chamfer 10 x 21 on the board is deeper than the part is thick.", tooDeep.Message);
    }
}
