using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class A_list_by_hand
{
    [Fact]
    public void That_differs_stops_the_saw_and_tells_what_it_would_do()
    {
        using var shell = Cupboard("part,width\nleft door slab,379\n");

        Assert.Equal(1, shell.Run("check", "hall.dryfit.yaml", "--numbers", "list.csv"));

        Assert.Contains("list.csv:2:16: cupboard left door slab, width", shell.Out, StringComparison.Ordinal);
        Assert.Contains("two digits of 397 mm swapped", shell.Out, StringComparison.Ordinal);
        Assert.Contains("in place   stop: The gap between", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void That_is_right_says_so()
    {
        using var shell = Cupboard("part,width\nleft door slab,397\n");

        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml", "--numbers", "list.csv"));

        Assert.Contains("The list is right: 1 sizes compared.", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Is_told_to_other_programs()
    {
        using var shell = Cupboard("part,width\nleft door slab,379\n");

        Assert.Equal(1, shell.Run("check", "hall.dryfit.yaml", "--numbers", "list.csv", "--json"));

        var wrong = JsonDocument.Parse(shell.Out).RootElement.GetProperty("differences")[0];
        Assert.Equal("397", wrong.GetProperty("modelExactMm").GetString());
        Assert.Equal(16, wrong.GetProperty("column").GetInt32());
    }

    [Fact]
    public void Is_put_in_place_by_a_build()
    {
        using var shell = Cupboard("part,width\nleft door slab,379\n");

        Assert.Equal(1, shell.Run("build", "hall.dryfit.yaml", "--numbers", "list.csv", "--out", "out"));

        Assert.Contains("front-gap-too-wide", shell.Read("out/findings.json"), StringComparison.Ordinal);
        Assert.Contains("379 mm", shell.Read("out/parts.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void With_errors_shows_them_at_their_place()
    {
        using var shell = Cupboard("part,width\nleft door slab,wide\n");

        Assert.Equal(3, shell.Run("check", "hall.dryfit.yaml", "--numbers", "list.csv"));

        Assert.Contains("list.csv:2:16: ", shell.Error, StringComparison.Ordinal);
        Assert.Equal(4, shell.Run("check", "hall.dryfit.yaml", "--numbers", "none.csv"));
    }

    private static Shell Cupboard(string list)
    {
        var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);
        shell.Write("list.csv", list);
        return shell;
    }
}
