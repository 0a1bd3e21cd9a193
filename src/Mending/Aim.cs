using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>One finding to be mended, with the edits that are settled already, and what a further edit makes of it.</summary>
/// <param name="before">The piece with the settled edits made.</param>
internal sealed class Aim(Finding finding, IReadOnlyList<Edit> settled, Tried before, Trials trials)
{
    public Finding Finding => finding;

    public Tried Before => before;

    public IReadOnlyList<Edit> Settled => settled;

    /// <summary>Whether no more may be tried.</summary>
    public bool IsOver => trials.AreUsedUp;

    /// <summary>How many builds there may be: for this finding, or in all where those run out first.</summary>
    public int Limit => trials.Limit;

    /// <summary>How far it is off now.</summary>
    public Miss? Now => Miss.Of(finding);

    /// <summary>An edit that would mend it and brings up something else, with that; null while there was none.</summary>
    public (Edit Edit, Finding Instead)? Spoiled { get; private set; }

    /// <summary>What further edits make of it.</summary>
    public Outcome Try(params IReadOnlyList<Edit> edits)
    {
        if (trials.With([.. settled, .. edits]) is not { } tried)
            return Outcome.CannotBe;
        var same = Standing.Same(finding, before.Report, tried.Report);
        if (same is not null)
            return new(tried, IsMended: false, Miss.Of(same));
        if (Standing.New(tried.Report, before.Report) is { } instead)
        {
            if (edits.Count == 1)
                Spoiled ??= (edits[0], instead);
            return new(tried, IsMended: false, null);
        }
        return new(tried, IsMended: true, null);
    }
}

/// <summary>What an edit makes of a finding.</summary>
/// <param name="Tried">The piece with it; null where there is none.</param>
/// <param name="IsMended">Whether the finding is gone and nothing new has come up.</param>
/// <param name="Miss">How far it is off; null where it is gone, or was not measured.</param>
internal sealed record Outcome(Tried? Tried, bool IsMended, Miss? Miss)
{
    public static Outcome CannotBe { get; } = new(null, IsMended: false, null);
}

/// <summary>Edits that mend a finding.</summary>
/// <param name="Edits">One, or several that only do it together.</param>
/// <param name="By">How far they change their numbers in all.</param>
/// <param name="Outcome">The piece with them made.</param>
internal sealed record Cure(IReadOnlyList<Edit> Edits, Length By, Tried Outcome);
