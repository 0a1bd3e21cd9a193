using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class Asking_why
{
    [Fact]
    public void Without_a_part_lists_the_parts()
    {
        using var shell = Hall();

        Assert.Equal(0, shell.Run("why", "hall.dryfit.yaml"));

        Assert.Contains("cupboard/left-side", shell.Out, StringComparison.Ordinal);
        Assert.Contains(" x 18", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void About_one_size_prints_the_sum_down_to_the_recipe()
    {
        using var shell = Hall();

        Assert.Equal(0, shell.Run("why", "hall.dryfit.yaml", "cupboard/bottom.length"));

        Assert.StartsWith("cupboard bottom, length\n", shell.Out, StringComparison.Ordinal);
        Assert.Contains("recipe line ", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void In_words_asks_about_the_same_part()
    {
        using var shell = Hall();

        shell.Run("why", "hall.dryfit.yaml", "cupboard/left-side.width");
        var byId = shell.Out;
        Assert.Equal(0, shell.Run("why", "hall.dryfit.yaml", "cupboard", "left", "side.width"));

        Assert.Equal(byId, shell.Out);
    }

    [Theory]
    [InlineData("cupboard/left-sid", "Did you mean 'cupboard/left-side'?")]
    [InlineData("cupboard/left-side.lenght", "Did you mean 'length'?")]
    [InlineData("cupboard/left-side.colour", "It has length, width, thickness")]
    [InlineData("side", "may be several parts:\n  cupboard/left-side\n  cupboard/right-side\n")]
    public void About_what_is_not_there_names_the_nearest(string asked, string said)
    {
        using var shell = Hall();

        Assert.Equal(2, shell.Run("why", "hall.dryfit.yaml", asked));

        Assert.Contains(said, shell.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Out);
    }

    [Fact]
    public void As_json_gives_the_same_sums_exactly()
    {
        using var shell = Hall();

        Assert.Equal(0, shell.Run("why", "hall.dryfit.yaml", "cupboard/left-side.thickness", "--json"));

        var size = JsonDocument.Parse(shell.Out).RootElement.GetProperty("sizes")[0];
        Assert.Equal("18", size.GetProperty("exactMm").GetString());
        Assert.NotEqual(0, size.GetProperty("sum").GetArrayLength());
    }

    [Fact]
    public void Shows_a_parameter_that_was_set_for_the_run()
    {
        using var shell = Hall();

        Assert.Equal(0, shell.Run("why", "hall.dryfit.yaml", "cupboard/bottom.length", "--set", "width=700"));

        Assert.Contains("set on the command line", shell.Out, StringComparison.Ordinal);
    }

    private static Shell Hall()
    {
        var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);
        return shell;
    }
}
