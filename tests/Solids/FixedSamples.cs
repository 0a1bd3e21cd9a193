using CsCheck;

namespace Dryfit.Solids.Tests;

/// <summary>Runs a property over the same samples every time, so that a red test is a change and not bad luck. With
/// DRYFIT_FUZZ set to a number, over that many fresh ones instead.</summary>
internal static class FixedSamples
{
    public static void Hold<T>(this Gen<T> samples, int count, Action<T> property)
    {
        if (int.TryParse(Environment.GetEnvironmentVariable("DRYFIT_FUZZ"), out var fresh))
        {
            samples.Sample(property, iter: fresh);
            return;
        }

        foreach (var sample in samples.Take(count))
        {
            property(sample);
        }
    }

    public static IEnumerable<T> Take<T>(this Gen<T> samples, int count) => samples.Take(0, count);

    public static IEnumerable<T> Take<T>(this Gen<T> samples, int first, int count)
    {
        for (var i = first; i < first + count; i++)
        {
            yield return samples.Generate(new PCG((uint)i, 20261125UL), null, out _);
        }
    }
}
