using Dryfit.Findings;
using Dryfit.Parameters.Formulas;

namespace Dryfit.Parameters;

/// <summary>The names that the file of a maker's own word knows, in one use of it: its parameters and its carcases' sizes.</summary>
public sealed class InnerNames
{
    private readonly NameTable _outer;
    private readonly Dictionary<string, string> _own = new(StringComparer.OrdinalIgnoreCase);

    internal InnerNames(string name, NameTable table, NameTable outer)
    {
        Name = name;
        Table = table;
        _outer = outer;
    }

    /// <summary>The name of the use, with which the names of its parts begin.</summary>
    public string Name { get; }

    internal NameTable Table { get; }

    /// <summary>Says what a board or carcase of the file is called in the whole piece.</summary>
    public void Call(string local, string full) => _own[local] = full;

    /// <summary>What a board or carcase of the file is called in the whole piece; null where it has none of that name.</summary>
    public string? Full(string local) => _own.GetValueOrDefault(local);

    /// <summary>A phrase that begins with the name of a board or carcase of the file, as it is said in the whole piece.</summary>
    public string Spell(string phrase)
    {
        foreach (
            var (local, full) in _own.OrderByDescending(o => o.Key.Length).ThenBy(o => o.Key, StringComparer.Ordinal)
        )
        {
            if (
                phrase.StartsWith(local, StringComparison.OrdinalIgnoreCase)
                && (phrase.Length == local.Length || phrase[local.Length] == ' ')
            )
                return full + phrase[local.Length..];
        }
        return phrase;
    }

    /// <summary>Makes a name of the recipe, a size of a carcase, known to the file under a name of its own.</summary>
    public void Lend(string name, string known) => Table.Lend(name, _outer, known);

    internal void Define(string name, SourcePlace place, Func<Figure> work) => Table.Add(name, place, work, null);

    internal void DefineWord(string name, SourcePlace place, string word, IReadOnlyList<string> choices) =>
        Table.Add(name, place, null, new NamedWord(word, choices));
}
