using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class Asking_why_of_wholes
{
    private const string Recipe = """
        piece: Cupboard
        units: mm
        parameters: { width: 800 }
        materials: { body: pine 18, backs: birch plywood 6.5, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
        carcases:
          base:
            size: [width, 900, 400]
            front: { rows: [ { doors: slab pair }, { height: 150, drawer } ] }
        """;

    [Fact]
    public void A_door_tells_its_width_and_height()
    {
        using var shell = Cupboard();

        Assert.Equal(0, shell.Run("why", "base.dryfit.yaml", "left door"));

        Assert.Contains("base left door, width\n", shell.Out, StringComparison.Ordinal);
        Assert.Contains("base left door, height\n", shell.Out, StringComparison.Ordinal);
        // 800 - 2 x 18 inside, 2 x 16.5 overlay, 3 between the two.
        Assert.Contains("door width", shell.Out, StringComparison.Ordinal);
        Assert.Contains("397 mm", shell.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("base.width", "base, width\n", "800 mm")]
    [InlineData("base opening.width", "base opening, width\n", "764 mm")]
    [InlineData("drawer.front width", "base drawer 1, front width\n", "797 mm")]
    public void Carcases_openings_and_drawers_tell_theirs(string asked, string heading, string size)
    {
        using var shell = Cupboard();

        Assert.True(shell.Run("why", "base.dryfit.yaml", asked) == 0, shell.Error);

        Assert.StartsWith(heading, shell.Out, StringComparison.Ordinal);
        Assert.Contains(size, shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_says_what_it_is_that_was_asked_about()
    {
        using var shell = Cupboard();

        Assert.Equal(0, shell.Run("why", "base.dryfit.yaml", "left door", "--json"));

        var root = JsonDocument.Parse(shell.Out).RootElement;
        Assert.Equal("base/left-door", root.GetProperty("unit").GetString());
        Assert.Equal("397", root.GetProperty("sizes")[0].GetProperty("exactMm").GetString());
    }

    [Fact]
    public void List_names_them_after_the_parts()
    {
        using var shell = Cupboard();

        Assert.Equal(0, shell.Run("why", "base.dryfit.yaml"));

        Assert.Contains("base/left-door ", shell.Out, StringComparison.Ordinal);
        Assert.Contains("base opening 2 ", shell.Out, StringComparison.Ordinal);
    }

    private static Shell Cupboard()
    {
        var shell = new Shell();
        shell.Write("base.dryfit.yaml", Recipe);
        return shell;
    }
}
