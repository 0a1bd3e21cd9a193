using Dryfit.Casework;
using Dryfit.Findings;

namespace Dryfit.Cli;

/// <summary>
/// A thing and its sizes, as asked for: <c>upper/left-door/top-rail.length</c>, or words of its name. A thing is a part, or a
/// whole: a door, a drawer, a carcase, an opening.
/// </summary>
/// <param name="Asked">The thing.</param>
/// <param name="Sizes">The sizes asked about, by name; all it has where none is named.</param>
internal sealed record SizeQuestion(Sized Asked, IReadOnlyList<NamedSize> Sizes)
{
    private const int MostNamed = 12;

    /// <summary>Finds what is meant, or says what is wrong with the question.</summary>
    public static (SizeQuestion? Question, string? Trouble) Read(string asked, Piece piece)
    {
        var things = Sized.All(piece);
        if (Matches(asked, things) is [var whole])
            return (new SizeQuestion(whole, whole.Sizes), null);
        var dot = asked.LastIndexOf('.');
        var (name, size) = dot < 0 ? (asked, null) : (asked[..dot], Plain(asked[(dot + 1)..]));
        return Matches(name, things) switch
        {
            [var thing] when size is null => (new SizeQuestion(thing, thing.Sizes), null),
            [var thing] => OneSize(thing, size),
            [] => (null, NoSuch(name, things)),
            var several => (null, Which(name, several)),
        };
    }

    private static (SizeQuestion?, string?) OneSize(Sized thing, string size)
    {
        var asked = thing.Sizes.Where(s => s.Name == size).ToList();
        if (asked.Count > 0)
            return (new SizeQuestion(thing, asked), null);
        var near = NearestWord.To(size, thing.Sizes.Select(s => s.Name));
        var meant = near is null
            ? $"It has {string.Join(", ", thing.Sizes.Select(s => s.Name))}."
            : $"Did you mean '{near}'?";
        return (null, $"The {thing.Name} has no size '{size}'. {meant}");
    }

    /// <summary>
    /// What has that id or name; else whose id ends in it; else whose name holds its words: the one whole that does, or else
    /// the parts.
    /// </summary>
    private static List<Sized> Matches(string asked, IReadOnlyList<Sized> things)
    {
        var plain = Plain(asked);
        var named = things.Where(t => t.Id == asked || Plain(t.Name) == plain).ToList();
        if (named.Count > 0)
            return named;
        var ending = things.Where(t => t.Id.EndsWith("/" + asked, StringComparison.Ordinal)).ToList();
        if (ending.Count > 0)
            return ending;
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return [];
        var holding = things.Where(t => words.All(Plain(t.Name).Split(' ').Contains)).ToList();
        var (wholes, parts) = (holding.FindAll(t => t.IsWhole), holding.FindAll(t => !t.IsWhole));
        return wholes.Count == 1 ? wholes
            : parts.Count == 1 ? parts
            : [.. wholes.Concat(parts).Take(MostNamed + 1)];
    }

    private static string NoSuch(string name, IReadOnlyList<Sized> things)
    {
        var near = NearestWord.To(name, things.Select(t => t.Id)) ?? NearestWord.To(name, things.Select(t => t.Name));
        var meant = near is null ? "Ask without a name for all of them." : $"Did you mean '{near}'?";
        return $"There is no part {Excerpt.Quote(name)}. {meant}";
    }

    private static string Which(string name, List<Sized> several)
    {
        var ids = several.Take(MostNamed).Select(t => "  " + t.Id);
        var more = several.Count > MostNamed ? "\n  and more" : "";
        var what = several.TrueForAll(t => !t.IsWhole) ? "several parts" : "several things";
        return $"{Excerpt.Quote(name)} may be {what}:\n{string.Join('\n', ids)}{more}";
    }

    private static string Plain(string text) => text.ToLowerInvariant().Replace('-', ' ').Replace('_', ' ').Trim();
}
