using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>An island of 1000 x 800 x 600 faced with stuff of 20; stiles 60, rails 80.</summary>
public sealed class FacingTests
{
    private static Piece Island(string faced, string more = "") =>
        Built.From(
            Metric(
                $"island: {{ size: [1000, 800, 600], faced: {{ {faced}, material: ash, stiles: 60, rails: 80 }}{more} }}",
                materials: "ash: ash 20"
            )
        );

    [Fact]
    public void Facings_count_in_the_size_of_the_carcase()
    {
        var piece = Island("ends: slab, back: slab");
        piece.MustBeSound();
        // 1000 less two facings and two sides; 600 less the facing at the back.
        piece.StandsAt("island left side", "20, 0, 0");
        Assert.Equal("580", piece.Write(piece.Part("island left side").Width.Length));
        piece.Measures("island left facing slab", "800 x 580 x 20");
        piece.Measures("island right facing slab", "800 x 580 x 20");
        piece.Measures("island back facing slab", "800 x 1000 x 20");
        InPlace(piece, "island left facing slab", 0, 0, 20, 580);
        InPlace(piece, "island right facing slab", 980, 0, 1000, 580);
        InPlace(piece, "island back facing slab", 0, 580, 1000, 600);
    }

    [Fact]
    public void Framed_facing_is_put_together_like_a_door()
    {
        var piece = Island("left end: framed, muntins: 1");
        piece.MustBeSound();
        var depth = piece.Part("island left facing top rail").Length.Length - piece.Read("480");
        // Between stiles of 60 on 600 there are 480; tongues at both ends.
        Assert.Equal(piece.Part("island left facing top rail").ShoulderLength!.Length, piece.Read("480"));
        piece.Measures("island left facing left stile", "800 x 60 x 20");
        // Between rails of 80 on 800 there are 640; the muntin has the same tongues.
        Assert.Equal(piece.Read("640") + depth, piece.Part("island left facing muntin").Length.Length);
        // Two panels share what the muntin of 60 leaves: 210 each, and as far into the grooves, less the play.
        var panel = piece.Part("island left facing panel 1");
        Assert.Equal(panel.Length.Length - piece.Read("640"), panel.Width.Length - piece.Read("210"));
        // It is screwed to the side behind it, which is narrower by nothing and stands 20 in.
        Assert.Equal(
            2,
            piece.Joints.Count(j =>
                j is { Kind: JointKind.Screwed, Receives: "island/left-side" }
                && j.Enters.Contains("facing", StringComparison.Ordinal)
            )
        );
    }

    [Theory]
    [InlineData("ends: framed, back: framed, muntins: 2", "")]
    [InlineData("ends: framed, back: slab", ", stands on: { plinth: 100 }, top: { overhang: 20 }")]
    [InlineData("back: framed", ", stands on: { legs: 60 }, back: planted")]
    [InlineData("right end: slab, back: framed", ", face frame: , front: { doors: framed pair }")]
    [InlineData("ends: slab, back: framed", ", back: none, stands on: { toe space: 100 }")]
    public void Whatever_is_faced_holds_together(string faced, string more) => Island(faced, more).MustBeSound();

    [Fact]
    public void Top_reaches_over_the_facings() =>
        Assert.Equal(
            "1040",
            Island("ends: slab", ", top: { overhang: 20 }") is var piece
                ? piece.Write(piece.Part("island top").Length.Length)
                : ""
        );

    [Theory]
    [InlineData("faced: { muntins: 1 }", "What is faced is missing.")]
    [InlineData("faced: { ends: framed, panel: body }", "Lip and panel take all of the thickness of the facing.")]
    [InlineData("faced: { ends: framed, stiles: 310 }", "Stiles and rails of a facing leave nothing between them.")]
    [InlineData("faced: { ends: framed, muntins: 12 }", "The muntins leave no panels between them.")]
    [InlineData("faced: { ends: slab }, filler: ", "A carcase with faced ends or back takes no 'filler'.")]
    public void What_cannot_be_is_told(string more, string message) =>
        Assert.EndsWith(
            message,
            Built.ErrorOf(Metric($"island: {{ size: [1000, 800, 600], {more} }}")),
            StringComparison.Ordinal
        );

    private static void InPlace(Piece piece, string name, double left, double front, double right, double back)
    {
        var part = piece.Part(name);
        var points = part.Solid.Vertices.Select(v => part.Placed.Frame.ToWorld(v)).ToList();
        Assert.Equal(left, piece.Grid.ToMm(points.Min(p => p.X)), 1e-6);
        Assert.Equal(front, piece.Grid.ToMm(points.Min(p => p.Y)), 1e-6);
        Assert.Equal(right, piece.Grid.ToMm(points.Max(p => p.X)), 1e-6);
        Assert.Equal(back, piece.Grid.ToMm(points.Max(p => p.Y)), 1e-6);
    }
}
