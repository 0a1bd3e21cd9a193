using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Numbers;

/// <summary>A list held against the model.</summary>
/// <param name="Differences">The sizes that differ, in the order of the list.</param>
/// <param name="Strange">Lines that meet no part, with the nearest name where there is one.</param>
/// <param name="Counts">Lines whose quantity is not the model's.</param>
/// <param name="Missing">Names of the parts that no line is about.</param>
/// <param name="Compared">How many sizes were compared.</param>
/// <param name="InPlace">What the checks say of the piece put together by the list; null where nothing differs or it cannot be built.</param>
/// <param name="Numbers">What differs, to build the piece by.</param>
public sealed record Held(
    IReadOnlyList<Difference> Differences,
    IReadOnlyList<StrangeLine> Strange,
    IReadOnlyList<CountDifference> Counts,
    IReadOnlyList<string> Missing,
    int Compared,
    Report? InPlace,
    IReadOnlyList<CutNumbers> Numbers
)
{
    /// <summary>Whether the list is the model's, as far as it goes.</summary>
    public bool IsRight => Differences.Count + Strange.Count + Counts.Count == 0;
}

/// <summary>A size of the list that is not the model's.</summary>
/// <param name="Part">The part or unit, by name.</param>
/// <param name="Listed">As the list says it.</param>
/// <param name="Right">As the model has it.</param>
/// <param name="Guesses">What the slip may have been; several only where they are equally good.</param>
/// <param name="Findings">What would be found of this part with the listed numbers in place.</param>
public sealed record Difference(
    string Part,
    ListSize Listed,
    Length Right,
    IReadOnlyList<string> Guesses,
    IReadOnlyList<Finding> Findings
);

/// <summary>A line that meets nothing of the piece.</summary>
public sealed record StrangeLine(ListLine Line, string? Nearest);

/// <summary>A line whose quantity differs: how many parts of the model it meets.</summary>
public sealed record CountDifference(ListLine Line, int Right);

/// <summary>A piece that was built, and what the checks say of it.</summary>
public sealed record Built(Piece Piece, Report Report);
