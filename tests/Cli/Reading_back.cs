using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class Reading_back
{
    [Theory]
    [InlineData("31 1/2\"", "31 1/2 in", "800.1 mm")]
    [InlineData("80 cm", "31 1/2 - 0.3/64 in", "800 mm")]
    [InlineData("2' 7 1/2\"", "31 1/2 in", "800.1 mm")]
    public void Says_how_a_length_was_understood(string written, string inches, string millimetres)
    {
        using var shell = new Shell();
        shell.Write(
            "hall.dryfit.yaml",
            Recipes.Cupboard.Replace(
                "900, 350",
                $"'{written.Replace("'", "''", StringComparison.Ordinal)}', 350",
                StringComparison.Ordinal
            )
        );

        Assert.Equal(0, shell.Run("read", "hall.dryfit.yaml"));

        var line = shell.Out.Split('\n').Single(row => row.Contains(written, StringComparison.Ordinal));
        Assert.StartsWith("  10:", line, StringComparison.Ordinal);
        Assert.Contains("  " + inches + "  ", line, StringComparison.Ordinal);
        Assert.EndsWith("  " + millimetres, line, StringComparison.Ordinal);
    }

    [Fact]
    public void Works_formulas_out_with_what_was_set()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard.Replace("900", "width + 100", StringComparison.Ordinal));

        Assert.Equal(0, shell.Run("read", "hall.dryfit.yaml", "--set", "width=700"));

        Assert.Matches(@"10:\d+ +width \+ 100 .* 800 mm\n", shell.Out);
        Assert.Matches(@"--set +700 .* 700 mm\n", shell.Out);
    }

    [Fact]
    public void Says_what_it_can_of_a_recipe_with_errors_and_the_errors_too()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard.Replace("900", "widht", StringComparison.Ordinal));

        Assert.Equal(3, shell.Run("read", "hall.dryfit.yaml"));

        Assert.Contains("800 mm", shell.Out, StringComparison.Ordinal);
        Assert.Contains("did you mean: width", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void As_json_names_the_places()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(0, shell.Run("read", "hall.dryfit.yaml", "--json"));

        var first = JsonDocument.Parse(shell.Out).RootElement.GetProperty("values")[0];
        Assert.Equal((4, "800"), (first.GetProperty("line").GetInt32(), first.GetProperty("written").GetString()));
    }
}
