using System.Globalization;
using System.Text;

namespace Dryfit.Recipe;

/// <summary>Writes the shapes as a page to read (Markdown): every word with its keys, defaults and an example.</summary>
public static class ReferencePage
{
    /// <summary>The page, lines ended by LF.</summary>
    /// <param name="root">The whole recipe.</param>
    /// <param name="title">The page's heading.</param>
    /// <param name="opening">What stands below it: a sentence or two.</param>
    /// <param name="pieces">Small pieces that show a word, drawn beside the page in <c>words</c>: each named by the
    /// word's anchor, two hyphens and a turn of it after that where one word has several (<c>doors--glazed</c>).</param>
    /// <param name="chapters">Chapters in Markdown that stand before the words, each beginning with its own heading (<c>##</c>).</param>
    public static string Write(
        RecordShape root,
        string title,
        string opening,
        IReadOnlyList<string> pieces,
        params IReadOnlyList<string> chapters
    )
    {
        return Write(new Definitions(root), title, opening, pieces, chapters);
    }

    /// <summary>The same for a file that holds words of another: those are explained there.</summary>
    /// <param name="elsewhere">The root of the other page.</param>
    /// <param name="otherPage">Its file: <c>recipe.md</c>.</param>
    public static string WriteBeside(
        RecordShape root,
        RecordShape elsewhere,
        string otherPage,
        string title,
        string opening,
        params IReadOnlyList<string> chapters
    ) => Write(new Definitions(root, new Definitions(elsewhere), otherPage), title, opening, [], chapters);

    private static string Write(
        Definitions definitions,
        string title,
        string opening,
        IReadOnlyList<string> pieces,
        IReadOnlyList<string> chapters
    )
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"# {title}\n\n{opening.Trim()}\n\n");
        WriteContents(page, definitions, chapters);
        foreach (var chapter in chapters)
            page.Append('\n').Append(chapter.ReplaceLineEndings("\n").Trim()).Append('\n');
        foreach (var word in definitions.Own)
            WriteWord(page, word, definitions, pieces);
        return page.ToString();
    }

    private static void WriteContents(StringBuilder page, Definitions definitions, IReadOnlyList<string> chapters)
    {
        foreach (var chapter in chapters)
        {
            var heading = chapter.TrimStart().Split('\n')[0].TrimStart('#').Trim();
            page.Append(CultureInfo.InvariantCulture, $"- [{heading}](#{Anchor(heading)})\n");
        }
        foreach (var word in definitions.Own)
            page.Append(CultureInfo.InvariantCulture, $"- [{word.Name}](#{definitions.Slug(word)})\n");
    }

    private static void WriteWord(
        StringBuilder page,
        RecordShape word,
        Definitions definitions,
        IReadOnlyList<string> pieces
    )
    {
        page.Append(
            CultureInfo.InvariantCulture,
            $"\n<a id=\"{definitions.Slug(word)}\"></a>\n\n## {word.Name}\n\n{word.Doc}\n\n"
        );
        if (word.Example.Length > 0)
            page.Append(
                CultureInfo.InvariantCulture,
                $"```yaml\n{word.Example.ReplaceLineEndings("\n").TrimEnd()}\n```\n\n"
            );
        foreach (var piece in pieces.Where(p => Shows(p, definitions.Slug(word))))
            page.Append(
                CultureInfo.InvariantCulture,
                $"![{piece.Replace("--", ", ", StringComparison.Ordinal).Replace('-', ' ')}, from the front](words/{piece}.svg)\n\n[The recipe of this drawing](words/{piece}.dryfit.yaml)\n\n"
            );
        page.Append("| key | holds | meaning | left out |\n|---|---|---|---|\n");
        foreach (var field in word.Fields)
        {
            var leftOut = field.Required ? "**must be there**" : field.Default ?? "";
            page.Append(
                CultureInfo.InvariantCulture,
                $"| `{field.Key}` | {Cell(Holds(field.Shape, definitions))} | {Cell(field.Doc)} | {Cell(leftOut)} |\n"
            );
        }
        if (word.FurtherKeys is { } further)
            page.Append(CultureInfo.InvariantCulture, $"| … | | {Cell(further)} | |\n");
    }

    /// <summary>Whether a piece is named for the word with this anchor.</summary>
    public static bool Shows(string piece, string anchor) =>
        string.Equals(piece.Split("--")[0], anchor, StringComparison.Ordinal);

    private static string Holds(Shape shape, Definitions definitions) =>
        shape switch
        {
            LengthShape { Sign: LengthSign.AboveZero } => "[length](#lengths) above zero",
            LengthShape { Sign: LengthSign.Any } => "[length](#lengths), may be negative",
            LengthShape => "[length](#lengths)",
            CountShape c => string.Create(CultureInfo.InvariantCulture, $"whole number, {c.From} to {c.To}"),
            NumberShape => "number",
            QuantityShape => "[length](#lengths) or number",
            TextShape => "text",
            YesNoShape => "`yes` or `no`; nothing at all is yes",
            BareShape => "nothing",
            ChoiceShape c => Words(c, ", "),
            PhraseShape p => string.Join("; ", p.Groups.Select(g => Words(g, " or "))),
            NameShape n => $"name of {ShapeWords.A(n.Of)}",
            SpokenShape s => s.Describes,
            ListShape l => $"{List(l)} {Holds(l.Item, definitions)}",
            NamedShape n => $"names of your choosing ({n.Named}), each with {Holds(n.Item, definitions)}",
            RecordShape r => $"[{r.Name}]({definitions.Link(r)})",
            EitherShape e => string.Join(
                "; or ",
                Alternatives.Flatten(e).Select(s => Holds(s, definitions)).Distinct(StringComparer.Ordinal)
            ),
            _ => throw new InvalidOperationException($"A shape without words: {shape.GetType().Name}"),
        };

    private static string Words(ChoiceShape choice, string between) =>
        string.Join(between, choice.Words.Select(w => $"`{w}`"));

    private static string List(ListShape list) =>
        list.AtLeast == list.AtMost ? string.Create(CultureInfo.InvariantCulture, $"list of {list.AtLeast}:")
        : list.AtLeast > 0 ? string.Create(CultureInfo.InvariantCulture, $"list of at least {list.AtLeast}:")
        : "list of";

    private static string Cell(string text) =>
        text.ReplaceLineEndings(" ").Replace("|", "\\|", StringComparison.Ordinal);

    private static string Anchor(string heading) =>
        string.Concat(
            heading
                .ToLowerInvariant()
                .Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-')
                .Select(c => c == ' ' ? '-' : c)
        );
}
