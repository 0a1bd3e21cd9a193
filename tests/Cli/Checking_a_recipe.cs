using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class Checking_a_recipe
{
    [Fact]
    public void That_is_right_finds_nothing_to_stop_for_and_tells_what_was_checked()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml"));

        Assert.Contains("\nChecked:\n", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("stop", shell.Out, StringComparison.Ordinal);
        Assert.Empty(shell.Error);
        Assert.Equal(["hall.dryfit.yaml"], shell.Names());
    }

    [Fact]
    public void With_a_door_cut_too_narrow_stops_the_saw()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(1, shell.Run("check", "hall.dryfit.yaml"));

        Assert.Contains("stop", shell.Out, StringComparison.Ordinal);
        Assert.Contains("hall.dryfit.yaml:", shell.Out, StringComparison.Ordinal);
        Assert.Empty(shell.Error);
    }

    [Fact]
    public void Quietly_says_nothing_of_what_is_right()
    {
        using var shell = new Shell();
        shell.Write("right.dryfit.yaml", Recipes.Cupboard);
        shell.Write("wrong.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(0, shell.Run("check", "right.dryfit.yaml", "--quiet"));
        Assert.Empty(shell.Out);
        Assert.Equal(1, shell.Run("check", "wrong.dryfit.yaml", "--quiet"));
        Assert.Contains("stop", shell.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Checked", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void As_json_is_what_build_would_write()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(1, shell.Run("check", "hall.dryfit.yaml", "--json"));
        var printed = shell.Out;
        shell.Run("build", "hall.dryfit.yaml", "--out", "out");

        Assert.True(JsonDocument.Parse(printed).RootElement.GetProperty("stopsTheSaw").GetBoolean());
        Assert.Equal(shell.Read("out/findings.json"), printed);
    }

    [Fact]
    public void Knows_parameters_set_for_the_run()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml", "--set", "width=60 cm"));
    }

    [Theory]
    [InlineData("width=2000", "from 600 mm to 1000 mm")]
    [InlineData("width=605", "600 mm or 610 mm")]
    [InlineData("widht=700", "did you mean: width")]
    [InlineData("width=wide", "There is no name 'wide'")]
    public void Refuses_a_setting_that_does_not_suit_the_recipe(string setting, string said)
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(2, shell.Run("check", "hall.dryfit.yaml", "--set", setting));

        Assert.Contains(said, shell.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Out);
    }

    [Fact]
    public void Takes_the_habits_of_a_shop_file()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);
        shell.Write("shed.yaml", "shop: The shed\nunits: mm\ngaps:\n  pair: 4\n");

        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml", "--shop", "shed.yaml"));
    }

    [Fact]
    public void Shows_what_is_wrong_with_a_shop_file_in_the_shop_file()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);
        shell.Write("shed.yaml", "shop: The shed\ngaps:\n  inst: 3\n");

        Assert.Equal(3, shell.Run("check", "hall.dryfit.yaml", "--shop", "shed.yaml"));

        Assert.Contains("shed.yaml:3:3: ", shell.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean: inset", shell.Error, StringComparison.Ordinal);
    }
}
