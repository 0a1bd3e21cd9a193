using System.Text;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>
/// Comma-separated values after RFC 4180, in UTF-8 with plain line feeds. Text that a spreadsheet would take for a
/// formula (its full-width look-alikes too) gets an apostrophe in front, so that it stays text.
/// </summary>
internal sealed class CsvText
{
    private readonly StringBuilder _text = new();

    public void Row(IEnumerable<string> cells) => _text.AppendJoin(',', cells).Append('\n');

    public byte[] ToUtf8() => new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(_text.ToString());

    /// <summary>A cell of words from wherever they come, on one line.</summary>
    public static string Words(string text)
    {
        var words = PlainText.Clean(text);
        var isFormula =
            words.AsSpan().TrimStart()
            is ['=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20', ..];
        if (isFormula)
            words = "'" + words;
        var isPlain =
            !isFormula && !words.AsSpan().ContainsAny(',', '"') && words.AsSpan().Trim().Length == words.Length;
        return isPlain ? words : $"\"{words.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
