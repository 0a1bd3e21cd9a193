namespace Dryfit.Slips.Tests;

/// <summary>
/// Slips that makers really make, on sound pieces: every one that counts is found, and what stays inside its tolerance
/// raises nothing. What is not found yet stands in <see cref="NotYetFound"/>.
/// </summary>
public sealed class SlipTests(ITestOutputHelper output)
{
    private static readonly Lazy<IReadOnlyList<SlipResult>> Results = new(() => [.. new SlipBench().Run()]);

    private static IEnumerable<SlipResult> Covered =>
        Results.Value.Where(result => !NotYetFound.Kinds.ContainsKey(result.Slip.Kind));

    [Fact]
    public void More_than_a_thousand_slips_count()
    {
        output.WriteLine(SlipTable.Write(Results.Value));
        foreach (var missed in Results.Value.Where(result => result.Counts && !result.IsFound))
            output.WriteLine(missed.Told);
        Assert.InRange(Results.Value.Count(result => result.Counts), 1_000, int.MaxValue);
        Assert.InRange(Results.Value.Count(result => result.Verdict == Verdict.Inside), 100, int.MaxValue);
    }

    [Fact]
    public void Every_slip_that_counts_is_found() => None(Covered.Where(result => result.Counts && !result.IsFound));

    [Fact]
    public void What_is_found_names_a_part_that_came_out_wrong() =>
        None(Covered.Where(result => result.Counts && result.IsFound && !result.IsToldRightly));

    [Fact]
    public void A_slip_inside_its_tolerance_raises_nothing() =>
        None(Results.Value.Where(result => result.IsFalse && !result.FalseKinds.All(NotYetFound.NotQuiet.ContainsKey)));

    [Fact]
    public void A_kind_that_is_found_wholly_is_not_listed_as_not_yet_found()
    {
        var kinds = SlipKinds.All.Select(kind => kind.Name).ToHashSet(StringComparer.Ordinal);
        Assert.All(NotYetFound.Kinds.Keys, kind => Assert.Contains(kind, kinds));
        var wholly = NotYetFound
            .Kinds.Keys.Where(kind =>
                Results.Value.Where(result => result.Slip.Kind == kind && result.Counts).All(result => result.IsFound)
            )
            .ToList();
        var raised = Results.Value.Where(result => result.IsFalse).SelectMany(result => result.FalseKinds).ToHashSet();
        wholly.AddRange(NotYetFound.NotQuiet.Keys.Where(kind => !raised.Contains(kind)));
        Assert.True(wholly.Count == 0, $"Take these off the list, they are found: {string.Join("; ", wholly)}.");
    }

    private static void None(IEnumerable<SlipResult> wrong)
    {
        var all = wrong.ToList();
        Assert.True(all.Count == 0, $"{all.Count} slips:\n{string.Join('\n', all.Take(12).Select(r => r.Told))}");
    }
}
