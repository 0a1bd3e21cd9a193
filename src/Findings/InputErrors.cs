namespace Dryfit.Findings;

/// <summary>
/// The errors of one input as they are found. A broken file can hold tens of thousands; past the first two hundred
/// only one more line is kept, which says so.
/// </summary>
public sealed class InputErrors
{
    private const int Most = 200;

    private readonly List<InputError> _errors = [];

    /// <summary>In the order found.</summary>
    public IReadOnlyList<InputError> All => _errors;

    public int Count => _errors.Count;

    /// <summary>True once further errors are dropped.</summary>
    public bool Full => _errors.Count > Most;

    public void Add(InputError error)
    {
        if (_errors.Count < Most)
            _errors.Add(error);
        else if (_errors.Count == Most)
            _errors.Add(new InputError($"There are more errors; these are the first {Most}.", error.Place));
    }

    public void Add(string message, SourcePlace? place, string? expected = null, string? suggestion = null) =>
        Add(new InputError(message, place, expected, suggestion));

    /// <summary>Puts a fuller error in place of the last one.</summary>
    public void Amend(InputError fuller) => _errors[^1] = fuller;

    public void AddAll(IEnumerable<InputError> errors)
    {
        foreach (var error in errors)
            Add(error);
    }

    /// <summary>In the order of the text, as a maker mends them; files in the order first met, what has no place first.</summary>
    public static IReadOnlyList<InputError> InTextOrder(IEnumerable<InputError> errors)
    {
        var all = errors.ToList();
        var files = all.Select(e => e.Place?.File).Distinct(StringComparer.Ordinal).ToList();
        return
        [
            .. all.OrderBy(e => e.Place is null ? -1 : files.IndexOf(e.Place.File))
                .ThenBy(e => e.Place?.Line ?? 0)
                .ThenBy(e => e.Place?.Column ?? 0),
        ];
    }
}
