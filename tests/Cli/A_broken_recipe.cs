using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class A_broken_recipe
{
    [Fact]
    public void Is_shown_at_its_place_with_the_nearest_right_word()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard.Replace("shelves:", "shelvs:", StringComparison.Ordinal));

        Assert.Equal(3, shell.Run("check", "hall.dryfit.yaml"));

        Assert.StartsWith("hall.dryfit.yaml:11:5: ", shell.Error, StringComparison.Ordinal);
        Assert.Contains(
            "\n  11 |     shelvs: { adjustable: 2 }\n     |     ^^^^^^\n",
            shell.Error,
            StringComparison.Ordinal
        );
        Assert.Contains("did you mean: shelves", shell.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Out);
    }

    [Fact]
    public void Shows_all_its_errors_in_one_go()
    {
        using var shell = new Shell();
        var broken = Recipes
            .Cupboard.Replace("shelves:", "shelvs:", StringComparison.Ordinal)
            .Replace("slab pair", "slob pair", StringComparison.Ordinal)
            .Replace("units: mm", "units: cm", StringComparison.Ordinal);
        shell.Write("hall.dryfit.yaml", broken);

        Assert.Equal(3, shell.Run("check", "hall.dryfit.yaml"));

        foreach (var line in new[] { ":2:", ":11:", ":12:" })
            Assert.Contains("hall.dryfit.yaml" + line, shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Is_json_for_editors_as_well()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard.Replace("shelves:", "shelvs:", StringComparison.Ordinal));

        Assert.Equal(3, shell.Run("check", "hall.dryfit.yaml", "--json"));

        var error = JsonDocument.Parse(shell.Out).RootElement.GetProperty("errors")[0];
        Assert.Equal(11, error.GetProperty("line").GetInt32());
        Assert.Equal(5, error.GetProperty("column").GetInt32());
        Assert.Equal("shelves", error.GetProperty("suggestion").GetString());
    }

    [Fact]
    public void Writes_nothing_and_leaves_what_was_written_before()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);
        Assert.Equal(0, shell.Run("build", "hall.dryfit.yaml", "--out", "out"));
        var before = shell
            .Names("out")
            .ToDictionary(name => name, name => shell.Read("out/" + name), StringComparer.Ordinal);
        shell.Write("hall.dryfit.yaml", "piece: [");

        Assert.Equal(3, shell.Run("build", "hall.dryfit.yaml", "--out", "out"));
        Assert.Equal(3, shell.Run("build", "hall.dryfit.yaml", "--out", "elsewhere"));

        Assert.Equal(before.Keys, shell.Names("out"));
        Assert.All(before, file => Assert.Equal(file.Value, shell.Read("out/" + file.Key)));
        Assert.False(Directory.Exists(shell.PathOf("elsewhere")));
    }

    [Theory]
    [MemberData(nameof(HostileFiles))]
    public void However_hostile_gets_an_error_of_its_own(string what, byte[] bytes)
    {
        using var shell = new Shell();
        File.WriteAllBytes(shell.PathOf("evil.dryfit.yaml"), bytes);

        Assert.Equal(3, shell.Run("check", "evil.dryfit.yaml"));

        Assert.StartsWith("evil.dryfit.yaml", shell.Error, StringComparison.Ordinal);
        Assert.InRange(shell.Error.Length, 20, 200_000);
        Assert.DoesNotContain(shell.Error, c => char.IsControl(c) && c is not ('\n' or '\t'));
        Assert.NotNull(what);
    }

    [SuppressMessage("Design", "CA1024", Justification = "xunit wants a member that gives the data.")]
    public static TheoryData<string, byte[]> HostileFiles() =>
        new()
        {
            { "nothing at all", [] },
            { "one NUL", [0] },
            { "a picture", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0xFF, 0xFE] },
            { "Latin-1", [.. "piece: Schr"u8, 0xE4, .. "nkchen"u8] },
            { "UTF-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Recipes.Cupboard)] },
            { "two megabytes", Text(new string('#', 2 << 20)) },
            { "a megabyte of brackets", Text(new string('[', (1 << 20) - 1)) },
            { "a megabyte of braces", Text(new string('{', (1 << 20) - 1)) },
            {
                "a hundred levels",
                Text(string.Concat(Enumerable.Range(0, 100).Select(i => new string(' ', i) + "a:\n")))
            },
            { "escape codes", Text("piece: \u001b[31mred\u0007\n") },
            { "an alias bomb", Text("a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\npiece: *c\n") },
            {
                "a million drawers",
                Text(
                    Recipes.Cupboard.Replace(
                        "doors: slab pair",
                        "rows: { equal: 1000000, of: drawer }",
                        StringComparison.Ordinal
                    )
                )
            },
            { "a size of nothing", Text(Recipes.Cupboard.Replace("900, 350", "0, -350", StringComparison.Ordinal)) },
            { "NaN", Text(Recipes.Cupboard.Replace("900, 350", "NaN, .inf", StringComparison.Ordinal)) },
            {
                "division by nothing",
                Text(Recipes.Cupboard.Replace("900, 350", "900 / (width - width), 350", StringComparison.Ordinal))
            },
            {
                "a loop",
                Text(
                    Recipes.Cupboard.Replace(
                        "default: 800, from: 600, to: 1000, step: 10",
                        "default: depth }\n  depth: { default: width",
                        StringComparison.Ordinal
                    )
                )
            },
            {
                "a deep formula",
                Text(
                    Recipes.Cupboard.Replace(
                        "900, 350",
                        new string('(', 50_000) + "900" + new string(')', 50_000) + ", 350",
                        StringComparison.Ordinal
                    )
                )
            },
        };

    private static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);
}
