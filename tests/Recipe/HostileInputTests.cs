using System.Text;
using CsCheck;
using Dryfit.Findings;

namespace Dryfit.Recipe.Tests;

/// <summary>Files that mean harm or were never text: each ends in a clear error.</summary>
public sealed class HostileInputTests
{
    private static string Told(ReadOnlyMemory<byte> bytes)
    {
        var result = RecipeReader.Read("r.yaml", bytes);
        Assert.Null(result.Value);
        var error = Assert.Single(result.Errors);
        return $"{error.Place!.Line}:{error.Place.Column} {error.Message}";
    }

    private static string Told(string text) => Told(Encoding.UTF8.GetBytes(text));

    [Fact]
    public void Bytes_that_are_no_utf8_are_told_where_they_stand()
    {
        Assert.Equal(
            "2:4 The file is not UTF-8 text: byte E9 (hexadecimal) does not belong here.",
            Told((byte[])[.. "a: 1\nb: "u8, 0xE9, .. "\n"u8])
        );
        Assert.Equal(
            "1:4 The file is not UTF-8 text: byte C3 (hexadecimal) does not belong here.",
            Told((byte[])[.. "a: "u8, 0xC3])
        );
        Assert.Equal(
            "1:1 The file is saved as UTF-16; save it as UTF-8.",
            Told(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("a: 1")).ToArray())
        );
    }

    [Fact]
    public void Bytes_that_no_text_holds_are_told_by_name()
    {
        Assert.Equal("1:5 A NUL byte stands here; it has no business in a recipe.", Told("a: 1\0"));
        Assert.Equal(
            "1:5 A control character (U+001B) stands here; it has no business in a recipe.",
            Told("a: 1\u001b[31m")
        );
        Assert.Equal(
            "1:5 A line separator that editors do not show stands here; it has no business in a recipe.",
            Told("a: 1\u2028")
        );
        Assert.Equal("1:5 A byte order mark stands here; it has no business in a recipe.", Told("a: 1\uFEFF"));
    }

    [Fact]
    public void A_file_of_zeros_ends_in_two_hundred_errors_at_most()
    {
        Assert.Equal(201, RecipeReader.Read("r.yaml", new byte[ReadLimits.Bytes]).Errors.Count);
    }

    [Fact]
    public void A_file_may_be_one_mebibyte_and_no_more()
    {
        var line = "a: 1 #" + new string('x', ReadLimits.Bytes - 7) + "\n";

        Assert.Empty(Reading.Read(line).Errors);
        Assert.Equal("1:1 The file is larger than 1 MiB; no recipe is.", Told("#" + line));
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    public void Nesting_ends_at_sixty_four(string opening)
    {
        Assert.EndsWith(
            "Words are nested more than 64 deep.",
            Told(string.Concat(Enumerable.Repeat(opening, 100_000))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Sixty_four_deep_is_still_read()
    {
        // One word and 63 lists inside it.
        Assert.Empty(Reading.Read("a: " + new string('[', 63) + new string(']', 63)).Errors);
        Assert.Single(Reading.Read("a: " + new string('[', 64) + new string(']', 64)).Errors);
    }

    [Fact]
    public void More_than_a_hundred_thousand_values_are_refused()
    {
        // The word, its key and its list are values too.
        Assert.Empty(Reading.Read($"a: [{string.Concat(Enumerable.Repeat("1,", ReadLimits.Nodes - 3))}]").Errors);
        Assert.Equal(
            "1:199999 The file holds more than 100000 values; no recipe does.",
            Told($"a: [{string.Concat(Enumerable.Repeat("1,", ReadLimits.Nodes))}]")
        );
    }

    [Fact]
    public void An_alias_bomb_is_told_alias_by_alias_and_never_unfolded()
    {
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 20; i++)
            bomb.Append($"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9))}]\n");
        var result = Reading.Read(bomb.ToString());

        Assert.Null(result.Value);
        Assert.Equal(20 + (19 * 9), result.Errors.Count);
    }

    [Fact]
    public void A_word_that_holds_itself_is_refused()
    {
        Assert.Equal(
            [
                "1:4-1 '&x' names a value to be repeated; recipes do not use YAML's anchors.",
                "1:8-2 '*x' repeats a value from elsewhere; recipes do not use YAML's aliases.",
            ],
            Reading.Told("a: &x [*x]\n")
        );
    }

    [Fact]
    public void No_bytes_whatever_are_more_than_an_error()
    {
        Gen.Byte.Array[0, 200].Sample(bytes => Reads(bytes), iter: 20_000, threads: 1);
    }

    [Fact]
    public void No_jumble_of_yaml_signs_is_more_than_an_error()
    {
        const string signs = "a b:-?[]{},&*!|>'\"%@`#\n\n  \t1/2ü😀~.";
        Gen.Int[0, signs.Length - 1]
            .Array[0, 40]
            .Select(picks => string.Concat(picks.Select(p => signs[p])))
            .Sample(text => Reads(Encoding.UTF8.GetBytes(text)), iter: 50_000, threads: 1);
    }

    /// <summary>Every error lies in the file, and there is a tree or an error.</summary>
    private static bool Reads(byte[] bytes)
    {
        var result = RecipeReader.Read("r.yaml", bytes);
        var text = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF');
        var lines = SourceLines.Split(text);
        foreach (var error in result.Errors)
        {
            var place = error.Place!;
            if (
                place.Line < 1
                || place.Line > lines.Count
                || place.Column < 1
                || place.Column > lines[place.Line - 1].Length + 1
                || place.Length < 1
            )
                return false;
            if (ErrorText.Write(error, text).Length == 0)
                return false;
        }
        return result.Value is not null || result.Errors.Count > 0;
    }
}
