using System.Globalization;
using System.Text;

namespace Dryfit.Findings;

/// <summary>
/// Writes an error for the terminal: the place as editors jump to it, what is wrong, the maker's own line with the
/// text underlined, what was expected, and what was probably meant.
/// </summary>
/// <example>
/// <code>
/// shelf.dryfit.yaml:3:1: A recipe has no key 'face_frame'.
///   3 | face_frame: yes
///     | ^^^^^^^^^^
///     expected: one of face frame, front
///     did you mean: face frame
/// </code>
/// </example>
public static class ErrorText
{
    private const int TabWidth = 4;

    /// <summary>Longer lines are cut to a window around the error.</summary>
    private const int Widest = 100;

    /// <summary>The error with lines ended by LF.</summary>
    /// <param name="error">What is wrong.</param>
    /// <param name="sourceText">The text of the file it is about; null where there is none to show.</param>
    /// <param name="colour">Whether to set colours by ANSI codes: the place bold, the carets red.</param>
    public static string Write(InputError error, string? sourceText, bool colour = false)
    {
        var text = new StringBuilder();
        if (error.Place is { } place)
            text.Append(Painted($"{place}:", Bold, colour)).Append(' ');
        text.Append(error.Message).Append('\n');
        var margin = "  ";
        if (error.Place is { } at && LineOf(sourceText, at) is { } line)
        {
            var number = at.Line.ToString(CultureInfo.InvariantCulture);
            var (shown, before, carets) = Underline(line, at);
            margin = new string(' ', number.Length + 2);
            text.Append(CultureInfo.InvariantCulture, $"  {number} | {shown}\n");
            text.Append(CultureInfo.InvariantCulture, $"{margin} | {new string(' ', before)}");
            text.Append(Painted(new string('^', carets), Red, colour)).Append('\n');
        }
        if (error.Expected is { } expected)
            text.Append(CultureInfo.InvariantCulture, $"{margin}expected: {expected}\n");
        if (error.Suggestion is { } suggestion)
            text.Append(CultureInfo.InvariantCulture, $"{margin}did you mean: {suggestion}\n");
        foreach (var use in error.Place?.Uses ?? [])
            text.Append(CultureInfo.InvariantCulture, $"{margin}used at: {use}\n");
        return text.ToString();
    }

    private const string Bold = "\u001b[1m";
    private const string Red = "\u001b[31m";
    private const string Plain = "\u001b[0m";

    private static string Painted(string text, string code, bool colour) => colour ? code + text + Plain : text;

    private static string? LineOf(string? sourceText, SourcePlace place) =>
        sourceText is null
            ? null
            : SourceLines.Line(sourceText.StartsWith('\uFEFF') ? sourceText[1..] : sourceText, place.Line);

    /// <summary>
    /// The line with its tabs spread, cut where it is too wide, and how many cells of a terminal stand before and under
    /// the carets.
    /// </summary>
    private static (string Line, int Before, int Carets) Underline(string line, SourcePlace place)
    {
        var start = Math.Clamp(place.Column - 1, 0, line.Length);
        var end = Math.Clamp(start + Math.Max(1, place.Length), start, line.Length);
        var cut = CutBefore(line, start);
        var shown = new StringBuilder(cut > 0 ? "…" : "");
        var (cells, before, after) = (shown.Length, shown.Length, 0);
        for (var i = cut; i < line.Length; )
        {
            var rune = Rune.TryGetRuneAt(line, i, out var whole) ? whole : Rune.ReplacementChar;
            var width = rune.Value == '\t' ? TabWidth - (cells % TabWidth) : CellWidth.Of(rune);
            if (cells + width > Widest)
            {
                shown.Append('…');
                break;
            }
            if (i < start)
                before = cells + width;
            if (i < end)
                after = cells + width;
            cells += width;
            shown.Append(rune.Value == '\t' ? new string(' ', width) : Visible(rune));
            i += rune == Rune.ReplacementChar && line[i] != '\uFFFD' ? 1 : rune.Utf16SequenceLength;
        }
        return (shown.ToString(), before, Math.Max(1, after - before));
    }

    /// <summary>Where to begin so that the error stands inside the window; never in the middle of a pair.</summary>
    private static int CutBefore(string line, int start)
    {
        if (start <= Widest * 3 / 4)
            return 0;
        var cut = start - (Widest / 2);
        return char.IsLowSurrogate(line[cut]) ? cut + 1 : cut;
    }

    /// <summary>Control characters would move the cursor or worse; a sign stands for each.</summary>
    private static string Visible(Rune rune) => Rune.IsControl(rune) ? "\uFFFD" : rune.ToString();
}
