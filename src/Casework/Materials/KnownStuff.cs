using System.Collections.Frozen;
using Dryfit.Findings;

namespace Dryfit.Casework;

/// <summary>Everything a material can be made of, found by name.</summary>
/// <remarks>
/// Names are compared without regard to case, hyphens and spaces around them; "maple, hard" is "hard maple". A recipe may
/// use any other stuff too, but must then say its density.
/// </remarks>
public static class KnownStuff
{
    /// <summary>All of it: timber, sheet goods, glass, plastics.</summary>
    public static IReadOnlyList<Stuff> All { get; } =
    [.. Species.All.Select(species => species.AsStuff), .. PanelProducts.All, .. ClearSheets.All];

    private static readonly FrozenDictionary<string, Stuff> ByName = Named();

    /// <summary>Every name there is, the other names of a stuff behind its own.</summary>
    public static IEnumerable<string> Names => All.SelectMany(NamesOf);

    /// <summary>The stuff of that name, or null where none is known.</summary>
    public static Stuff? Find(string name) => ByName.GetValueOrDefault(Plain(name));

    /// <summary>The known name nearest to one that is not, or null where none is near.</summary>
    public static string? Nearest(string name) => NearestWord.To(Plain(name), Names);

    private static IEnumerable<string> NamesOf(Stuff stuff) => stuff.AlsoCalled.Prepend(stuff.Name);

    private static FrozenDictionary<string, Stuff> Named() =>
        All.SelectMany(stuff => NamesOf(stuff).Select(name => (Name: Plain(name), Stuff: stuff)))
            .ToDictionary(named => named.Name, named => named.Stuff, StringComparer.Ordinal)
            .ToFrozenDictionary(StringComparer.Ordinal);

    private static string Plain(string name)
    {
        var turned = name.Split(',', 2) is [var family, var kind] ? $"{kind} {family}" : name;
        var words = turned
            .ToLowerInvariant()
            .Replace('-', ' ')
            .Replace('_', ' ')
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return string.Join(' ', words);
    }
}
