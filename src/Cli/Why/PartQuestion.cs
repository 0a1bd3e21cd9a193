using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Cli;

/// <summary>A part and its sizes, as asked for: <c>upper/left-door/top-rail.length</c>, or words of its name.</summary>
/// <param name="Part">The part.</param>
/// <param name="Sizes">The sizes asked about, by name; all it has where none is named.</param>
internal sealed record PartQuestion(Part Part, IReadOnlyList<(string Name, Figure Figure)> Sizes)
{
    private const int MostNamed = 12;

    /// <summary>Finds what is meant, or says what is wrong with the question.</summary>
    public static (PartQuestion? Question, string? Trouble) Read(string asked, Piece piece)
    {
        if (Matches(asked, piece) is [var whole])
            return (new PartQuestion(whole, SizesOf(whole)), null);
        var dot = asked.LastIndexOf('.');
        var (name, size) = dot < 0 ? (asked, null) : (asked[..dot], Plain(asked[(dot + 1)..]));
        return Matches(name, piece) switch
        {
            [var part] when size is null => (new PartQuestion(part, SizesOf(part)), null),
            [var part] => OneSize(part, size),
            [] => (null, NoSuch(name, piece)),
            var several => (null, Which(name, several)),
        };
    }

    /// <summary>Every size a part has, by name, in the order a maker asks for them.</summary>
    public static IReadOnlyList<(string Name, Figure Figure)> SizesOf(Part part)
    {
        var all = new (string Name, Figure? Figure)[]
        {
            ("length", part.Length),
            ("width", part.Width),
            ("thickness", part.Thickness),
            ("shoulder length", part.ShoulderLength),
            ("shoulder width", part.ShoulderWidth),
            ("finished length", part.FinishedLength),
            ("finished width", part.FinishedWidth),
        };
        return [.. all.Where(size => size.Figure is not null).Select(size => (size.Name, size.Figure!))];
    }

    private static (PartQuestion?, string?) OneSize(Part part, string size)
    {
        var sizes = SizesOf(part);
        var asked = sizes.Where(s => s.Name == size).ToList();
        if (asked.Count > 0)
            return (new PartQuestion(part, asked), null);
        var near = NearestWord.To(size, sizes.Select(s => s.Name));
        var meant = near is null
            ? $"It has {string.Join(", ", sizes.Select(s => s.Name))}."
            : $"Did you mean '{near}'?";
        return (null, $"The {part.Name} has no size '{size}'. {meant}");
    }

    /// <summary>The part whose id or name it is; else those whose id ends in it; else those whose name holds its words.</summary>
    private static List<Part> Matches(string asked, Piece piece)
    {
        var plain = Plain(asked);
        var named = piece.Parts.Where(p => p.Id == asked || Plain(p.Name) == plain).ToList();
        if (named.Count > 0)
            return named;
        var ending = piece.Parts.Where(p => p.Id.EndsWith("/" + asked, StringComparison.Ordinal)).ToList();
        if (ending.Count > 0)
            return ending;
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0
            ? []
            : [.. piece.Parts.Where(p => words.All(Plain(p.Name).Split(' ').Contains)).Take(MostNamed + 1)];
    }

    private static string NoSuch(string name, Piece piece)
    {
        var near =
            NearestWord.To(name, piece.Parts.Select(p => p.Id))
            ?? NearestWord.To(name, piece.Parts.Select(p => p.Name));
        var meant = near is null ? "Ask without a name for all of them." : $"Did you mean '{near}'?";
        return $"There is no part {Excerpt.Quote(name)}. {meant}";
    }

    private static string Which(string name, List<Part> several)
    {
        var ids = several.Take(MostNamed).Select(p => "  " + p.Id);
        var more = several.Count > MostNamed ? "\n  and more" : "";
        return $"{Excerpt.Quote(name)} may be several parts:\n{string.Join('\n', ids)}{more}";
    }

    private static string Plain(string text) => text.ToLowerInvariant().Replace('-', ' ').Replace('_', ' ').Trim();
}
