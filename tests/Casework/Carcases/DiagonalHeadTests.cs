using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Carcases;

/// <summary>
/// Frieze and cornice of 20 round a corner carcase of 900 along both walls, from each of which 340 are cut off. Boards that
/// meet at 135 degrees are mitred at 22.5: over 20 that takes 20 x tan 22.5.
/// </summary>
public sealed class DiagonalHeadTests
{
    private const double Diagonal = 340 * 1.41421356237;
    private const double Tan = 0.41421356237;

    private static string Recipe(string head, string corner = "right") =>
        Metric(
            $"corner: {{ size: [900, 720, 900], face frame: {{ material: frame, rails: 90 }}, diagonal: {{ corner: {corner}, beside: 560 }}, head: {{ {head} }}, front: {{ doors: framed }} }}",
            materials: "frame: ash 20\nmouldings: ash 20"
        );

    [Theory]
    [InlineData("right")]
    [InlineData("left")]
    public void Boards_meet_at_half_of_135_degrees(string corner)
    {
        var piece = Built.From(Recipe("frieze: 60", corner));
        piece.MustBeSound();
        var front = piece.Part("corner head frieze front");
        Near(Diagonal + (2 * 20 * Tan), front.Length.Length);
        Near((Diagonal + (20 * Tan)) * 20 * 60, piece.VolumeMm3(front), 20);
        // From the corner of the diagonal to the wall, and past it at the outside.
        foreach (var side in (string[])["left", "right"])
        {
            var board = piece.Part($"corner frieze {side} return");
            Near(560 + (20 * Tan), board.Length.Length);
            Near((560 + (10 * Tan)) * 20 * 60, piece.VolumeMm3(board), 20);
        }
        Assert.Equal(2, piece.Joints.Count(j => j.Kind == JointKind.Mitre && j.Receives == front.Id));
    }

    [Fact]
    public void Cornice_goes_round_the_frieze()
    {
        var piece = Built.From(Recipe("frieze: 80, cornice: { height: 40, edge: cove 12 }"));
        piece.MustBeSound();
        Near(Diagonal + (2 * 40 * Tan), piece.Part("corner head cornice front").Length.Length);
        Near(560 + (40 * Tan), piece.Part("corner cornice left return").Length.Length);
    }

    [Fact]
    public void End_without_a_return_is_sawn_in_line_with_the_end()
    {
        var piece = Built.From(Recipe("frieze: { height: 60, along: front }, cornice: { height: 30, along: front }"));
        piece.MustBeSound();
        // At 45 degrees: as much shorter at the outside as it is thick, at both ends; so the cornice is shorter again.
        var frieze = piece.Part("corner head frieze front");
        Near(Diagonal, frieze.Length.Length);
        Near((Diagonal - 20) * 20 * 60, piece.VolumeMm3(frieze), 20);
        Near(Diagonal - 40, piece.Part("corner head cornice front").Length.Length);
        // Nothing of it stands past the ends of the carcase.
        var points = frieze.Solid.Vertices.Select(v => frieze.Placed.Frame.ToWorld(v)).ToList();
        Assert.Equal(0, piece.Grid.ToMm(points.Min(p => p.X)), 0.003);
        Assert.Equal(0, piece.Grid.ToMm(points.Min(p => p.Y)), 0.003);
    }

    [Fact]
    public void It_does_not_hang_before_the_door() =>
        Assert.EndsWith(
            "The corner head frieze front would hang before the front of the corner front opening.",
            Built.ErrorOf(Recipe("frieze: 100")),
            StringComparison.Ordinal
        );

    private static void Near(double mm, Measure.Length length) => Assert.Equal(mm, length.ToMillimetres(), 0.004);

    private static void Near(double mm3, double found, double within) => Assert.Equal(mm3, found, within);
}
