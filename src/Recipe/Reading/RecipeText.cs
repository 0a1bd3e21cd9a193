using System.Buffers;
using System.Text.Unicode;
using Dryfit.Findings;

namespace Dryfit.Recipe;

/// <summary>A file's text with its lines, or what is wrong with its bytes.</summary>
internal sealed class RecipeText
{
    private RecipeText(string file, string text)
    {
        File = file;
        Text = text;
        Lines = SourceLines.Split(text);
    }

    public string File { get; }

    public string Text { get; }

    /// <summary>Without their line ends; at least one.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>Null where the bytes are no text; what else is wrong with the characters is added to the errors.</summary>
    public static RecipeText? Decode(string file, ReadOnlySpan<byte> bytes, InputErrors errors)
    {
        if (bytes.Length > ReadLimits.Bytes)
        {
            errors.Add("The file is larger than 1 MiB; no recipe is.", Start(file));
            return null;
        }
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            errors.Add("The file is saved as UTF-16; save it as UTF-8.", Start(file));
            return null;
        }
        if (bytes is [0xEF, 0xBB, 0xBF, ..])
            bytes = bytes[3..];

        var characters = new char[bytes.Length];
        var status = Utf8.ToUtf16(bytes, characters, out var read, out var written, replaceInvalidSequences: false);
        var text = new RecipeText(file, new string(characters, 0, written));
        if (status == OperationStatus.Done)
            return text.CheckCharacters(errors) ? text : null;
        errors.Add(
            $"The file is not UTF-8 text: byte {bytes[read]:X2} (hexadecimal) does not belong here.",
            text.PlaceAt(written, 1),
            "a text file saved as UTF-8"
        );
        return null;
    }

    /// <summary>The place of a character, counted from the start of the text.</summary>
    public SourcePlace PlaceAt(int index, int length)
    {
        var (line, column) = (1, 1);
        for (var i = 0; i < index; i++)
        {
            var ends = Text[i] == '\n' || (Text[i] == '\r' && !(i + 1 < Text.Length && Text[i + 1] == '\n'));
            (line, column) = ends ? (line + 1, 1) : (line, column + 1);
        }
        return new SourcePlace(File, line, column, Math.Max(1, length));
    }

    private static SourcePlace Start(string file) => new(file, 1, 1, 1);

    private bool CheckCharacters(InputErrors errors)
    {
        var before = errors.Count;
        for (var l = 0; l < Lines.Count; l++)
        {
            var line = Lines[l];
            var indent = line.Length - line.TrimStart(' ', '\t').Length;
            var tab = line.IndexOf('\t', StringComparison.Ordinal);
            if (tab >= 0 && tab < indent)
                errors.Add("A tab indents this line; indent with spaces.", new(File, l + 1, tab + 1, 1), "spaces");
            for (var c = 0; c < line.Length && !errors.Full; c++)
            {
                if (IsForbidden(line[c]))
                    errors.Add(
                        $"{NameOf(line[c])} stands here; it has no business in a recipe.",
                        new SourcePlace(File, l + 1, c + 1, 1)
                    );
            }
        }
        return errors.Count == before;
    }

    // The parser would take U+0085, U+2028 and U+2029 for line ends, which no editor does: lines would be counted wrong.
    private static bool IsForbidden(char c) =>
        (char.IsControl(c) && c != '\t') || c is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF';

    private static string NameOf(char c) =>
        c switch
        {
            '\0' => "A NUL byte",
            '\uFEFF' => "A byte order mark",
            '\u2028' or '\u2029' or '\u0085' => "A line separator that editors do not show",
            _ => $"A control character (U+{(int)c:X4})",
        };
}
