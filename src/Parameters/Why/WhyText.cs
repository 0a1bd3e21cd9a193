using System.Text;
using Dryfit.Measure;

namespace Dryfit.Parameters.Why;

/// <summary>
/// Writes the sum behind a figure as a maker would on paper: the figure at the top with its terms below it, then each
/// term that has a sum of its own in turn, once. What was given says where; what was rounded says what that hid.
/// </summary>
public static class WhyText
{
    /// <summary>The sums, lines ended by LF.</summary>
    /// <param name="figure">The figure asked about.</param>
    /// <param name="format">The maker's unit and finest step.</param>
    /// <param name="heading">What to call it; its own name where left out.</param>
    /// <param name="recipeFile">The recipe's name in places; lines of other files are named by theirs. Null: all are the recipe's.</param>
    public static string Write(Figure figure, LengthFormat format, string? heading = null, string? recipeFile = null)
    {
        var sums = new Sums(new Wording(format, recipeFile));
        var blocks = sums.Of(figure, heading);
        return Lay(blocks);
    }

    /// <summary>Names to the left, numbers in a column with their wholes and fractions aligned, remarks to the right.</summary>
    private static string Lay(IReadOnlyList<Block> blocks)
    {
        var rows = blocks.SelectMany(b => b.Rows).ToList();
        var names = rows.Max(r => r.Name.Length);
        var wholes = rows.Max(r => r.Number.Whole.Length);
        var rests = rows.Where(r => r.Remark.Length > 0).Select(r => r.Number.Rest.Length).DefaultIfEmpty().Max();
        var text = new StringBuilder();
        foreach (var block in blocks)
        {
            if (text.Length > 0)
                text.Append('\n');
            foreach (var row in block.Rows)
            {
                var line =
                    $"{row.Name.PadRight(names)}  {row.Number.Whole.PadLeft(wholes)}{row.Number.Rest.PadRight(rests)}  {row.Remark}";
                text.Append(line.TrimEnd()).Append('\n');
            }
        }
        return text.ToString();
    }
}

/// <summary>A figure with its terms; the first row is the figure.</summary>
internal sealed record Block(IReadOnlyList<Row> Rows);

/// <summary>One line of a sum.</summary>
internal sealed record Row(string Name, Digits Number, string Remark);

/// <summary>A number cut where columns are aligned: before its fraction or point.</summary>
internal readonly record struct Digits(string Whole, string Rest)
{
    public static Digits Cut(string number)
    {
        var at = number.AsSpan().IndexOfAny(' ', '.');
        var first = at > 0 ? number[..at] : number;
        // A fraction alone stands in the column of fractions.
        return first.Contains('/', StringComparison.Ordinal)
            ? new("", " " + number)
            : new(first, number[first.Length..]);
    }
}
