using System.Globalization;

namespace Dryfit.Bench;

/// <summary>Times of runs that took turns; medians are printed, and how they stand to the peer's.</summary>
internal sealed class Times
{
    private readonly Dictionary<string, List<double>> runs = [];

    public long BytesPerPart { get; set; }

    public void Add(string what, double ms)
    {
        if (!runs.TryGetValue(what, out var list))
        {
            runs[what] = list = [];
        }

        list.Add(ms);
    }

    public void Print(int parts)
    {
        Say($"# {parts} parts, {BytesPerPart} bytes allocated a part; medians of runs that took turns:");
        foreach (var (what, list) in runs)
        {
            var against = what == "pairs" ? "peer pairs" : "peer build";
            var ratio =
                !what.StartsWith("peer", StringComparison.Ordinal) && runs.ContainsKey(against)
                    ? $", 1/{Median(against) / Median(what):F1} of {against}"
                    : "";
            Say($"# {what}: {Median(what):F3} ms (least {list.Min():F3}){ratio}");
        }
    }

    private static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private double Median(string what)
    {
        var sorted = runs[what].Order().ToList();
        return sorted[sorted.Count / 2];
    }
}
