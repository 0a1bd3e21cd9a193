using Dryfit.Casework.Tests.Kit;
using Dryfit.Solids;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Doors under an arched top rail.</summary>
public sealed class ArchedDoorTests
{
    /// <summary>
    /// Opening 320 x 620, door 316 x 616, stiles and rails of 58: 200 between the stiles. Rise 50: the radius is
    /// (100 x 100 + 50 x 50) / (2 x 50) = 125.
    /// </summary>
    private const string Door = "stiles: 58, rails: 58, arch: 50";

    [Fact]
    public void Arched_rail_is_sawn_from_a_board_wider_by_its_rise()
    {
        var piece = Framed($"doors: {{ kind: framed, panel: backs, {Door} }}");
        piece.MustBeSound();
        piece.Measures("base door top rail", "220 x 108 x 18");
        // The groove is as wide as the panel of 6.5 is thick: 6 where sheet goods are thicker than the house's groove.
        var wood = piece.VolumeMm3(piece.Part("base door top rail"));
        // A segment of a circle: r^2 (t - sin t) / 2 with sin (t/2) = 100/125.
        var t = 2 * Math.Asin(0.8);
        var arch = 125.0 * 125 * (t - Math.Sin(t)) / 2 * 18;
        // What the arch leaves, less at most the grooves and the shoulders of both tenons.
        Assert.InRange(wood, (220 * 108 * 18) - arch - (250 * 20 * 6.5) - (2 * 10 * 108 * 18), (220 * 108 * 18) - arch);
    }

    [Fact]
    public void Panel_follows_the_arch_with_its_play()
    {
        var piece = Framed($"doors: {{ kind: framed, panel: backs, {Door} }}");
        var (panel, rail) = (piece.Part("base door panel"), piece.Part("base door top rail"));
        // 616 less two rails of 58 is 500 in the middle; 10 of groove at both ends, less 1 of play each.
        Assert.Equal(piece.Read("518"), panel.Length.Length);
        var gap = Pair.GapAlong(panel.Placed, rail.Placed, new Vec3(0, 0, 1), piece.Grid.UnitsPerMm * 100.0)!;
        Assert.InRange(piece.Grid.ToMm(gap.Distance), 0.9, 1.0001);
        // At its sides the panel ends where the circle of 125 + 9 about the same centre is: sqrt(134^2 - 109^2) = 77.94.
        var drop = 134 - Math.Sqrt((134.0 * 134) - (109 * 109));
        var lowest = panel
            .Placed.Solid.Vertices.Select(panel.Placed.Frame.ToWorld)
            .Where(v => Math.Abs(v.X - piece.Grid.ToUnits(panel.Extent.Min.X)) < 1)
            .Max(v => v.Z);
        Assert.Equal(panel.Extent.Max.Z.ToMillimetres() - drop, piece.Grid.ToMm(lowest), 0.02);
    }

    [Fact]
    public void Thick_panel_has_its_tongue_round_the_arch_too()
    {
        Framed($"doors: {{ kind: framed, panel: body, {Door} }}").MustBeSound();
    }

    [Fact]
    public void Pane_and_beads_stay_square_behind_the_arch()
    {
        var piece = Framed($"doors: {{ kind: glazed, {Door} }}");
        piece.MustBeSound();
        // 500 and two rabbets of 10, less 1.5 of play each.
        piece.Measures("base door pane", "517 x 217 x 3");
        piece.Holds("base door pane", 517.0 * 217 * 3);
    }

    [Theory]
    [InlineData("{ kind: slab, arch: 20 }", "no top rail")]
    [InlineData("{ kind: framed, arch: 20, muntins: 1 }", "straight rails")]
    [InlineData("{ kind: framed, arch: 20, raised: }", "straight edges")]
    [InlineData("{ kind: framed, arch: 200 }", "circle")]
    [InlineData("{ kind: framed, arch: 40, middle rails: { at: [470] } }", "all the height")]
    public void What_cannot_be_arched_is_refused(string doors, string because)
    {
        var error = Built.ErrorOf(Recipe($"doors: {doors}"));
        Assert.Contains(because, error, StringComparison.Ordinal);
    }

    private static Piece Framed(string front) => Built.From(Recipe(front));

    private static string Recipe(string front) =>
        Metric(
            $"base: {{ size: [400, 700, 300], face frame: {{ stiles: 40, rails: 40 }}, front: {{ {front} }} }}",
            materials: "panes: float glass 3"
        );
}
