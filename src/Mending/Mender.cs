using Dryfit.Findings;

namespace Dryfit.Mending;

/// <summary>
/// The door of the stage: a report goes in, the same report with the exact edits that mend its findings comes out. Each
/// edit was tried: the piece was read, built and inspected with it, the finding was gone, and no other had come up.
/// </summary>
public static class Mender
{
    /// <summary>Looks for edits, the gravest finding first; one that an edit before has mended already gets that edit.</summary>
    /// <returns>The report, each finding that can be mended with its remedy, and all of it together as <see cref="Report.Mended"/>.</returns>
    public static Report Mend(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var report = job.Now.Report;
        var trials = new Trials(job);
        var open = Standing.Of(report).ToList();
        if (open.Count == 0)
            return report with { Mended = new([], [], 0, report) };
        var numbers = WrittenLengths.In(job.Texts, job.Understood);
        var own =
            numbers.Any(number => number.IsAsCut) && trials.AsReckoned() is { } reckoned
                ? new OwnNumbers(job.Now.Piece, reckoned.Piece)
                : null;

        var settled = new List<Edit>();
        var now = job.Now;
        var mended = new Dictionary<Finding, IReadOnlyList<Edit>>(ReferenceEqualityComparer.Instance);
        var left = new Dictionary<Finding, string>(ReferenceEqualityComparer.Instance);
        // What nothing mends at first may be mended once another mistake is out of the way: it is tried once more.
        for (var (round, before) = (1, -1); round <= 2 && settled.Count > before; round++)
        {
            before = settled.Count;
            foreach (var finding in open.Where(finding => !mended.ContainsKey(finding)).ToList())
            {
                if (mended.ContainsKey(finding))
                    continue;
                trials.Begin();
                var aim = new Aim(Standing.Same(finding, report, now.Report) ?? finding, [.. settled], now, trials);
                var free = numbers.Where(number => !settled.Exists(edit => edit.Place == number.Place)).ToList();
                var search = new Search(aim, finding, job.Now.Piece, free, own);
                if (search.Cure() is not { } cure)
                {
                    left[finding] = search.WhyNot();
                    continue;
                }
                foreach (
                    var gone in open.Where(o =>
                        !mended.ContainsKey(o) && Standing.Same(o, report, cure.Outcome.Report) is null
                    )
                )
                {
                    // One cause, one edit, however many findings tell of it.
                    mended.Add(gone, InOrder(cure.Edits));
                    left.Remove(gone);
                }
                settled.AddRange(cure.Edits);
                now = cure.Outcome;
            }
        }

        return report with
        {
            Findings =
            [
                .. report.Findings.Select(finding =>
                    mended.TryGetValue(finding, out var edits) ? Told(finding, edits, job) : finding
                ),
            ],
            Mended = new(
                InOrder(settled),
                [
                    .. report
                        .Findings.Select((finding, n) => (finding, Number: n + 1))
                        .Where(f => left.ContainsKey(f.finding))
                        .Select(f => new Unmended(f.Number, left[f.finding])),
                ],
                trials.Builds,
                now.Report
            ),
        };
    }

    private static IReadOnlyList<Edit> InOrder(IEnumerable<Edit> edits) =>
        [
            .. edits
                .OrderBy(edit => edit.Place.File, StringComparer.Ordinal)
                .ThenBy(edit => edit.Place.Line)
                .ThenBy(edit => edit.Place.Column),
        ];

    private static Finding Told(Finding finding, IReadOnlyList<Edit> edits, Job job) =>
        finding with
        {
            Remedy = new(Words.Of(edits, job.Texts[0].Name) + ".", Sure: true) { Edits = edits },
        };
}
