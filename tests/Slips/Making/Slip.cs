namespace Dryfit.Slips;

/// <summary>What must come of a slip, as somebody judges it who knows nothing of the checks.</summary>
internal enum Verdict
{
    /// <summary>A measured value leaves its tolerance by more than 1/128 in: it must be found.</summary>
    Counts,

    /// <summary>All that changed stays inside its tolerance: nothing may be raised.</summary>
    Inside,

    /// <summary>Past its tolerance by less than 1/128 in, or nothing that has a tolerance changed: either is right.</summary>
    Open,
}

/// <summary>One mistake of a maker on a sound piece.</summary>
/// <param name="Kind">The kind as the table names it: "door rail, length".</param>
/// <param name="Mistake">How it came about: "an eighth misread".</param>
/// <param name="Edit">The recipe that holds it.</param>
/// <param name="Parts">Ids of the parts that came out wrong.</param>
internal sealed record Slip(SoundPiece Sound, string Kind, string Mistake, RecipeEdit Edit, IReadOnlyList<string> Parts)
{
    /// <summary>What is known by hand of its effect; null where it is judged by the solids.</summary>
    public Verdict? ByHand { get; init; }
}
