using System.Text;
using Dryfit.Findings;

namespace Dryfit.Mending;

/// <summary>A file that the piece is built from, the recipe or a word beside it, byte for byte.</summary>
/// <param name="Name">As places call it.</param>
/// <param name="Bytes">UTF-8, with or without a byte order mark.</param>
public sealed record SourceText(string Name, ReadOnlyMemory<byte> Bytes)
{
    private const int MarkLength = 3;

    /// <summary>The characters, without a byte order mark.</summary>
    public string Text => Encoding.UTF8.GetString(Bytes.Span[Mark..]);

    private int Mark => Bytes.Span is [0xEF, 0xBB, 0xBF, ..] ? MarkLength : 0;

    /// <summary>The file with the edits made that belong to it; every other byte stays what it was.</summary>
    /// <param name="edits">Edits of any files, none over another.</param>
    /// <exception cref="InvalidOperationException">What an edit takes out does not stand there: a fault of ours.</exception>
    public SourceText With(IEnumerable<Edit> edits)
    {
        var own = edits.Where(edit => edit.Place.File == Name).ToList();
        if (own.Count == 0)
            return this;
        var text = Text;
        var bytes = new List<byte>(Bytes.Length + 16);
        bytes.AddRange(Bytes.Span[..Mark]);
        var done = 0;
        foreach (var (edit, start) in own.Select(edit => (edit, IndexOf(text, edit.Place))).OrderBy(e => e.Item2))
        {
            if (start < done || !Stands(text, start, edit.OldText))
                throw new InvalidOperationException($"'{edit.OldText}' does not stand at {edit.Place}.");
            bytes.AddRange(Encoding.UTF8.GetBytes(text[done..start] + edit.NewText));
            done = start + edit.OldText.Length;
        }
        bytes.AddRange(Encoding.UTF8.GetBytes(text[done..]));
        return this with { Bytes = bytes.ToArray() };
    }

    /// <summary>Whether a text stands at a place.</summary>
    public bool Holds(SourcePlace place, string text) => Stands(Text, IndexOf(Text, place), text);

    private static bool Stands(string text, int index, string what) =>
        index >= 0 && string.CompareOrdinal(text, index, what, 0, what.Length) == 0;

    /// <summary>Where a place begins, counted from the start of the text; -1 where there is no such line.</summary>
    private static int IndexOf(string text, SourcePlace place)
    {
        var start = 0;
        for (var line = 1; line < place.Line; line++)
        {
            var end = text.AsSpan(start).IndexOfAny('\n', '\r');
            if (end < 0)
                return -1;
            start += end + 1;
            if (text[start - 1] == '\r' && start < text.Length && text[start] == '\n')
                start++;
        }
        return Math.Min(start + place.Column - 1, text.Length);
    }
}
