using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Numbers;

namespace Dryfit.Cli;

/// <summary>A list held against the model, on a terminal.</summary>
internal static class NumbersText
{
    private const int MostFindings = 4;
    private const int MostMissing = 10;

    public static void Write(Held held, Piece piece, TextWriter writer)
    {
        var format = piece.Format;
        foreach (var wrong in held.Differences)
        {
            var off = wrong.Listed.Value - wrong.Right;
            writer.WriteLine($"{wrong.Listed.Place}: {wrong.Part}, {Say(wrong.Listed.Which)}");
            Line("listed", wrong.Listed.Text);
            Line("model", format.WriteWithUnit(wrong.Right));
            Line("off by", $"{format.WriteWithUnit(Length.Abs(off))} too {(off.Sign > 0 ? "much" : "little")}");
            foreach (var guess in wrong.Guesses)
                Line("perhaps", guess);
            foreach (var finding in wrong.Findings.Take(MostFindings))
                Line("in place", $"{(finding.Kind.Severity == Severity.Stop ? "stop" : "warn")}: {finding.Message}");
            if (wrong.Findings.Count > MostFindings)
                Line(
                    "",
                    string.Create(CultureInfo.InvariantCulture, $"and {wrong.Findings.Count - MostFindings} more")
                );
            if (wrong.Findings.Count == 0 && held.InPlace is not null)
                Line("in place", "nothing that the checks find");
            writer.WriteLine();
        }
        foreach (var strange in held.Strange)
        {
            var meant = strange.Nearest is null ? "" : $" Did you mean '{strange.Nearest}'?";
            writer.WriteLine(
                $"{strange.Line.Place}: No part of the piece is called {Excerpt.Quote(strange.Line.Phrase)}.{meant}"
            );
        }
        foreach (var count in held.Counts)
            writer.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{count.Line.Place}: {count.Line.Phrase}: {count.Line.Quantity} are listed, and the piece has {count.Right}."
                )
            );
        if (held.Missing.Count > 0)
        {
            var more =
                held.Missing.Count > MostMissing
                    ? string.Create(CultureInfo.InvariantCulture, $" and {held.Missing.Count - MostMissing} more")
                    : "";
            writer.WriteLine($"Not in the list: {string.Join(", ", held.Missing.Take(MostMissing))}{more}");
        }
        if (held.Differences.Count > 0 && held.InPlace is null)
            writer.WriteLine("With these numbers the piece cannot be put together at all.");
        writer.WriteLine(
            held.IsRight
                ? string.Create(CultureInfo.InvariantCulture, $"The list is right: {held.Compared} sizes compared.")
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{held.Differences.Count} of {held.Compared} sizes differ, {held.Strange.Count} lines meet no part, {held.Counts.Count} quantities differ."
                )
        );

        void Line(string label, string value) => writer.WriteLine("    " + label.PadRight(11) + value);
    }

    public static string Say(SizeKind which) =>
        which switch
        {
            SizeKind.Length => "length",
            SizeKind.Width => "width",
            _ => "thickness",
        };
}
