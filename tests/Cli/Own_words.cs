using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class Own_words
{
    private const string Recipe = """
        piece: Rack
        units: mm
        materials: { body: pine 18 }
        words: words
        boards:
          end: { lies: "upright, facing left", length: 400, width: 200, left: at 0, front: at 0, bottom: at 0 }
          first: { use: arm, at: end, long: 300 }
        """;

    private const string Arm = """
        word: arm
        units: mm
        parameters: { at: { is: name }, long: { default: 200, from: 100, to: 400 } }
        boards:
          bar: { length: long, width: 50, left: screwed to at, front: flush with at, top: 20 below top of at }
        """;

    [Fact]
    public void Lie_beside_the_recipe_and_why_tells_their_lines()
    {
        using var shell = With(Recipe, Arm);

        Assert.Equal(0, shell.Run("why", "shed/rack.dryfit.yaml", "first bar.length"));

        Assert.Contains(
            "arm.dryfit-word.yaml line 5, used on recipe line 7: long",
            shell.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("recipe line 7", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_the_line_of_their_file_and_where_they_are_used()
    {
        using var shell = With(Recipe, Arm.Replace("length: long", "length: lang", StringComparison.Ordinal));

        Assert.Equal(3, shell.Run("check", "shed/rack.dryfit.yaml", "--json"));

        Assert.Contains("arm.dryfit-word.yaml:5:18: There is no name 'lang'.", shell.Error, StringComparison.Ordinal);
        Assert.Contains("5 |   bar: { length: lang,", shell.Error, StringComparison.Ordinal);
        Assert.Contains(
            "used at: shed/rack.dryfit.yaml:7:17",
            shell.Error.Replace('\\', '/'),
            StringComparison.Ordinal
        );
        var error = JsonDocument.Parse(shell.Out).RootElement.GetProperty("errors")[0];
        Assert.Equal(7, error.GetProperty("usedAt")[0].GetProperty("line").GetInt32());
    }

    [Fact]
    public void Of_which_there_is_no_file_are_told_at_the_recipe()
    {
        using var shell = With(Recipe.Replace("use: arm", "use: leg", StringComparison.Ordinal), Arm);

        Assert.Equal(3, shell.Run("check", "shed/rack.dryfit.yaml"));

        Assert.Contains("rack.dryfit.yaml:4:8: There is no own word", shell.Error, StringComparison.Ordinal);
        Assert.Contains("leg.dryfit-word.yaml", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("words")]
    [InlineData("words/arm.dryfit-word.yaml")]
    public void Are_not_read_through_a_link(string link)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links want rights there.");
        using var shell = With(Recipe, Arm);
        Directory.Move(shell.PathOf("shed/words"), shell.PathOf("elsewhere"));
        if (link == "words")
        {
            Directory.CreateSymbolicLink(shell.PathOf("shed/words"), shell.PathOf("elsewhere"));
        }
        else
        {
            Directory.CreateDirectory(shell.PathOf("shed/words"));
            File.CreateSymbolicLink(shell.PathOf($"shed/{link}"), shell.PathOf("elsewhere/arm.dryfit-word.yaml"));
        }

        Assert.Equal(3, shell.Run("check", "shed/rack.dryfit.yaml"));

        Assert.Contains(
            "is a link; a file of the recipe's own folder is wanted.",
            shell.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Have_a_page_of_their_own()
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("help", "own-words"));

        Assert.StartsWith("# Words of your own", shell.Out, StringComparison.Ordinal);
    }

    private static Shell With(string recipe, string arm)
    {
        var shell = new Shell();
        shell.Write("shed/rack.dryfit.yaml", recipe);
        shell.Write("shed/words/arm.dryfit-word.yaml", arm);
        return shell;
    }
}
