using System.Globalization;

namespace Dryfit.Slips.Tests;

/// <summary>
/// What raises nothing as it stands raises neither a stop nor a warning under parameters drawn within its own ranges.
/// DRYFIT_FUZZ set to a number tries that many draws of each recipe.
/// </summary>
public sealed class SoundnessTests
{
    private const int FewDraws = 3;

    [Fact]
    public void Sound_pieces_raise_nothing_under_random_parameters()
    {
        var (built, raised) = FalseAlarms.Count(new SlipBench(), Draws);
        Assert.InRange(built, 20, int.MaxValue);
        Assert.True(
            raised.Count == 0,
            string.Join('\n', raised.Select(r => $"{r.On.Said}: {r.Finding.Kind.Id}: {r.Finding.Message}"))
        );
    }

    private static int Draws =>
        int.TryParse(Environment.GetEnvironmentVariable("DRYFIT_FUZZ"), CultureInfo.InvariantCulture, out var many)
            ? many
            : FewDraws;
}
