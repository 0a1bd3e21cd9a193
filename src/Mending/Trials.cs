using Dryfit.Findings;

namespace Dryfit.Mending;

/// <summary>Builds the piece with some edits made, each set of them once, and counts.</summary>
internal sealed class Trials(Job job)
{
    private readonly Dictionary<string, Tried?> _known = new(StringComparer.Ordinal);
    private int _limit = int.MaxValue;

    /// <summary>How often the piece was built so far.</summary>
    public int Builds { get; private set; }

    /// <summary>Whether no more may be built for the finding at hand, or at all.</summary>
    public bool AreUsedUp => Builds >= Math.Min(_limit, job.MostBuilds);

    /// <summary>The limit that is met first: of one finding, or of all together.</summary>
    public int Limit => _limit <= job.MostBuilds ? job.MostBuildsForOne : job.MostBuilds;

    /// <summary>Begins to count for another finding.</summary>
    public void Begin() => _limit = Builds + job.MostBuildsForOne;

    /// <summary>The piece with the edits made; null where it cannot be built, or no more may be.</summary>
    public Tried? With(IReadOnlyList<Edit> edits)
    {
        if (edits.Count == 0)
            return job.Now;
        var key = string.Join('\n', edits.Select(edit => $"{edit.Place} {edit.NewText}").Order(StringComparer.Ordinal));
        if (_known.TryGetValue(key, out var known))
            return known;
        if (AreUsedUp)
            return null;
        Builds++;
        var tried = job.Build(new Attempt([.. job.Texts.Select(text => text.With(edits))], AsReckoned: false));
        _known.Add(key, tried);
        return tried;
    }

    /// <summary>The piece without the maker's own numbers; null where it cannot be built so.</summary>
    public Tried? AsReckoned()
    {
        Builds++;
        return job.Build(new Attempt(job.Texts, AsReckoned: true));
    }
}
