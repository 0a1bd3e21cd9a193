using System.Text.RegularExpressions;
using Dryfit.Measure;

namespace Dryfit.Parameters.Tests;

/// <summary>What the reference page says by example is so.</summary>
public sealed partial class ReferenceChapterTests
{
    private static string Block { get; } = YamlBlock().Match(ReferenceChapters.Formulas).Groups[1].Value;

    public static TheoryData<string, string, string> Lengths { get; } = Table(ReferenceChapters.Lengths, "written");

    public static TheoryData<string, string, string> Formulas { get; } = Table(ReferenceChapters.Formulas, "formula");

    public static TheoryData<string, string, string> Refused { get; } =
        Table(ReferenceChapters.Formulas, "not allowed");

    [Theory]
    [MemberData(nameof(Lengths))]
    public void A_length_means_what_the_page_says(string written, string inInches, string inMillimetres)
    {
        Assert.Equal(Said(inInches), Recipes.Size(written).Length);
        Assert.Equal(Said(inMillimetres), Recipes.Size(written, unit: LengthUnit.Millimetre).Length);
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void A_formula_gives_what_the_page_says(string formula, string gives, string why)
    {
        Assert.NotEmpty(why);
        var scope = Recipes.Bind($"{Block}sizes:\n  a: {formula}\n");
        Assert.Empty(scope.Errors);
        var last = Understood.List(scope)[^1];
        Assert.Equal(formula, last.Value.Text);
        Assert.Equal(Said(gives), scope.Length(last.Value, "a").Length);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_formula_is_refused_as_the_page_says(string formula, string because, string none)
    {
        Assert.Empty(none);
        Assert.Equal([because], Recipes.Bind($"{Block}sizes:\n  a: {formula}\n").Errors.Select(e => e.Message));
    }

    [Fact]
    public void Every_value_can_be_echoed_with_what_was_understood()
    {
        var scope = Recipes.Bind(
            "parameters:\n  n: { is: count, default: 3 }\n  w: 3-1/2\nsizes: { a: w * 2 + 1 mm }\ngaps: { b: nope }\n"
        );

        Assert.Equal(
            ["3: 3", "3-1/2: 3 1/2 in = 88.9 mm", "w * 2 + 1 mm: 7 3/64 - 0.5/64 in = 178.8 mm"],
            Understood.List(scope).Select(u => $"{u.Value.Text}: {u.Number ?? $"{u.Inches} = {u.Millimetres}"}")
        );
    }

    /// <summary>The page's own results are read here by hand, not by the code under test: whole, fraction, decimal; in or mm.</summary>
    private static Length Said(string text)
    {
        var match = SaidLength().Match(text);
        Assert.True(match.Success, text);
        var value = Rational.Zero;
        if (match.Groups["whole"] is { Success: true } whole)
            value += int.Parse(whole.Value, System.Globalization.CultureInfo.InvariantCulture);
        if (match.Groups["decimals"] is { Success: true } decimals)
            value += new Rational(
                int.Parse(decimals.Value, System.Globalization.CultureInfo.InvariantCulture),
                System.Numerics.BigInteger.Pow(10, decimals.Length)
            );
        if (match.Groups["over"] is { Success: true } over)
            value += new Rational(
                int.Parse(over.Value, System.Globalization.CultureInfo.InvariantCulture),
                int.Parse(match.Groups["under"].Value, System.Globalization.CultureInfo.InvariantCulture)
            );
        return match.Groups["unit"].Value == "in" ? Length.FromInches(value) : Length.FromMillimetres(value);
    }

    private static TheoryData<string, string, string> Table(string page, string firstHeading)
    {
        var rows = new TheoryData<string, string, string>();
        var lines = page.Split('\n')
            .SkipWhile(l => !l.StartsWith($"| {firstHeading} |", StringComparison.Ordinal))
            .Skip(2);
        foreach (var line in lines.TakeWhile(l => l.StartsWith('|')))
        {
            var cells = line.Trim('|', ' ').Split(" | ");
            rows.Add(cells[0].Trim().Trim('`'), cells[1].Trim(), cells.Length > 2 ? cells[2].Trim() : "");
        }
        Assert.NotEmpty(rows);
        return rows;
    }

    [GeneratedRegex("```yaml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex YamlBlock();

    [GeneratedRegex(
        @"^(?<whole>\d+)?(\.(?<decimals>\d+))?( ?(?<over>\d+)/(?<under>\d+))? (?<unit>in|mm)$",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex SaidLength();
}
