using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>
/// Reads what is said of a side of a board: <c>dadoed 8 into cupboard left side</c>, <c>resting on cleat</c>,
/// <c>20 behind front of cupboard left side</c>, <c>flush with cupboard top</c>, <c>at 0</c>.
/// </summary>
internal static class SidePhrase
{
    public const string Describes =
        "how it meets something (dadoed 6 into base left side, glued to, screwed to, resting on, against) or stands off it (20 behind, flush with)";

    /// <summary>Joints that hold face to face.</summary>
    private static readonly (string Words, Tie Tie)[] Touching =
    [
        ("pocket screwed to", Tie.PocketScrewed),
        ("screwed to", Tie.Screwed),
        ("glued to", Tie.Glued),
        ("dowelled to", Tie.Dowelled),
        ("biscuited to", Tie.Biscuits),
        ("screwed and plugged to", Tie.Plugged),
        ("resting on", Tie.Resting),
        ("against", Tie.Against),
    ];

    /// <summary>Joints that go in; a depth may stand before <c>into</c>.</summary>
    private static readonly (string Words, Tie Tie, string Depth)[] LetIn =
    [
        ("dadoed", Tie.Dado, "dado depth"),
        ("grooved", Tie.Groove, "groove depth"),
        ("rabbeted", Tie.Rabbet, "rabbet depth"),
        ("tenoned", Tie.Tenon, "tenon length"),
        ("loose", Tie.Loose, "groove depth"),
    ];

    private static readonly (string Words, Direction Way)[] Ways =
    [
        ("in front of", Direction.Front),
        ("left of", Direction.Left),
        ("right of", Direction.Right),
        ("above", Direction.Up),
        ("below", Direction.Down),
        ("behind", Direction.Back),
        ("before", Direction.Front),
    ];

    /// <summary>Reads the phrase of a side.</summary>
    /// <param name="side">The side of the board it is said of; null where it may be any that touches.</param>
    public static SideSaid Read(Scalar said, Direction? side, Scope scope)
    {
        var text = said.Text;
        var start = Start(text, 0);
        foreach (var (words, tie) in Touching)
        {
            if (After(text, start, words) is { } face)
            {
                var (end, glue) = Glue(text);
                return new MeetsSaid(tie, null, glue, Face(said, face, end), said.Place);
            }
        }
        foreach (var (words, tie, called) in LetIn)
        {
            if (After(text, start, words) is not { } depthAt)
                continue;
            if (Find(text, depthAt, "into") is not { } into)
                throw Refuse(said, "What it goes into is missing.", $"{words} into and the name of a part");
            var (end, glue) = Glue(text);
            var depth = FigureIn(said, depthAt, into.At, called, scope);
            return new MeetsSaid(tie, depth, glue, Face(said, into.End, end), said.Place);
        }
        return side is { } own
            ? ReadDistance(said, start, own, scope)
            : throw Refuse(said, "This says no joint.", "glued to, screwed to, resting on, against");
    }

    /// <summary>A face alone: <c>front of base left side</c>.</summary>
    public static FaceSaid ReadFace(Scalar said) => Face(said, Start(said.Text, 0), said.Text.Length);

    /// <summary>A side and how far from it: <c>back 10</c>.</summary>
    public static (Direction Side, Figure? By) ReadOffset(Scalar said, Scope scope)
    {
        var start = Start(said.Text, 0);
        var end = EndOfWord(said.Text, start);
        var word = said.Text[start..end];
        if (Sides.Find(word) is not { } side)
            throw new CannotBuildException(
                new InputError(
                    $"{Excerpt.Quote(word)} is no side of a board.",
                    said.PlaceOf(start, word.Length),
                    "a side and a distance: back 10",
                    NearestWord.To(word, Sides.Words)
                )
            );
        return (side, FigureIn(said, end, said.Text.Length, $"from the {word}", scope));
    }

    private static SideSaid ReadDistance(Scalar said, int start, Direction side, Scope scope)
    {
        var text = said.Text;
        if (After(text, start, "at") is { } at)
            return new AtSaid(
                FigureIn(said, at, text.Length, $"{Sides.Word(side)} at", scope)
                    ?? throw Refuse(said, "Where it is at is missing.", "at 0"),
                said.Place
            );
        if (After(text, start, "flush with") is { } flush)
        {
            var face = Face(said, flush, text.Length);
            return new OffSaid(face with { Side = face.Side ?? side }, side, null, said.Place);
        }
        var first = Ways.Select(w => (w.Way, Found: Find(text, start, w.Words)))
            .Where(w => w.Found is not null)
            .OrderBy(w => w.Found!.Value.At)
            .FirstOrDefault();
        if (first.Found is not { } way)
            throw Refuse(said, $"{Excerpt.Quote(text)} does not say where the {Sides.Word(side)} is.", Describes);
        if (first.Way.Axis() != side.Axis())
            throw new CannotBuildException(
                new InputError(
                    $"The {Sides.Word(side)} of a board cannot stand {text[way.At..way.End].Trim()} something: that is another way.",
                    said.PlaceOf(way.At, way.End - way.At),
                    string.Join(" or ", Ways.Where(w => w.Way.Axis() == side.Axis()).Select(w => w.Words))
                )
            );
        var told = Face(said, way.End, text.Length);
        return new OffSaid(
            told with
            {
                Side = told.Side ?? first.Way,
            },
            first.Way,
            FigureIn(said, start, way.At, text[way.At..].Trim(), scope),
            said.Place
        );
    }

    /// <summary>"without glue" or "with glue" at the end, and where the rest ends.</summary>
    private static (int End, bool? Glue) Glue(string text)
    {
        foreach (var (words, glue) in ((string, bool)[])[(" without glue", false), (" with glue", true)])
        {
            if (text.TrimEnd().EndsWith(words, StringComparison.Ordinal))
                return (text.TrimEnd().Length - words.Length, glue);
        }
        return (text.Length, null);
    }

    private static FaceSaid Face(Scalar said, int start, int end)
    {
        var text = said.Text[..end];
        start = SkipThe(text, start);
        Direction? side = null;
        var word = start < text.Length ? text[start..EndOfWord(text, start)] : "";
        if (Sides.Find(word) is { } named && After(text, start, $"{word} of") is { } name)
        {
            side = named;
            start = SkipThe(text, name);
        }
        var called = text[Math.Min(start, text.Length)..].Trim();
        if (called.Length == 0)
            throw Refuse(said, "What it is told from is missing.", "the name of a part, a board or a carcase");
        return new FaceSaid(side, called, said, said.PlaceOf(start, called.Length));
    }

    private static Figure? FigureIn(Scalar said, int start, int end, string name, Scope scope)
    {
        while (start < end && char.IsWhiteSpace(said.Text[start]))
            start++;
        var text = said.Text[start..end].TrimEnd();
        return text.Length == 0 ? null : scope.Length(scope.Within(said, start, text.Length), name);
    }

    private static int SkipThe(string text, int start)
    {
        start = Start(text, start);
        return After(text, start, "the") ?? start;
    }

    private static int Start(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }

    private static int EndOfWord(string text, int at)
    {
        while (at < text.Length && !char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }

    /// <summary>Where the text goes on behind words that stand at a place; null where they do not stand there.</summary>
    private static int? After(string text, int at, string words)
    {
        var end = at + words.Length;
        return
            string.CompareOrdinal(text, at, words, 0, words.Length) == 0
            && (end == text.Length || char.IsWhiteSpace(text[end]))
            ? Start(text, end)
            : null;
    }

    /// <summary>The first place from a start on where words stand as whole words.</summary>
    private static (int At, int End)? Find(string text, int start, string words)
    {
        for (var at = start; at < text.Length; at = Start(text, EndOfWord(text, at)))
        {
            if (After(text, at, words) is { } end)
                return (at, end);
        }
        return null;
    }

    private static CannotBuildException Refuse(Scalar said, string message, string expected) =>
        new(new InputError(message, said.Place, expected));
}
