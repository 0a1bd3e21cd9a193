namespace Dryfit.Cli.Tests;

public sealed class Help
{
    [Theory]
    [InlineData()]
    [InlineData("--help")]
    [InlineData("-h")]
    [InlineData("help")]
    public void Asked_for_in_any_way_it_lists_every_command(params string[] arguments)
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run(arguments));

        foreach (
            var command in new[] { "new [STARTER] [FILE]", "build RECIPE --out DIR", "check RECIPE", "why RECIPE" }
        )
            Assert.Contains(command, shell.Out, StringComparison.Ordinal);
        Assert.Contains("exit codes:", shell.Out, StringComparison.Ordinal);
        Assert.Empty(shell.Error);
    }

    [Theory]
    [InlineData("new")]
    [InlineData("build")]
    [InlineData("check")]
    [InlineData("why")]
    [InlineData("read")]
    public void Of_a_command_teaches_with_examples(string command)
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run(command, "--help"));
        var page = shell.Out;

        Assert.Contains($"usage: dryfit {command} ", page, StringComparison.Ordinal);
        Assert.Contains($"examples:\n  dryfit {command}", page, StringComparison.Ordinal);
        Assert.Equal(0, shell.Run("help", command));
        Assert.Equal(page, shell.Out);
    }

    [Theory]
    [InlineData("recipe", "# The recipe, word by word\n")]
    [InlineData("shop", "# The shop file, rule by rule\n")]
    public void Of_the_language_is_the_reference_page(string topic, string title)
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("help", topic));

        Assert.StartsWith(title, shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Is_given_even_where_the_rest_of_the_line_is_wrong()
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("build", "--nonsense", "--help"));

        Assert.Contains("usage: dryfit build", shell.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(100)]
    public void Prose_keeps_to_the_width_of_the_terminal(int width)
    {
        using var shell = new Shell { Width = width };

        foreach (var command in new[] { "new", "build", "check", "why" })
        {
            shell.Run(command, "--help");
            // Lines to be typed and headings stand whole; prose is broken.
            var examples = shell.Out.Split('\n').SkipWhile(line => line != "examples:");
            var prose = shell
                .Out.Split('\n')
                .TakeWhile(line => line != "examples:")
                .Concat(examples.Where(l => !l.StartsWith("  dryfit ", StringComparison.Ordinal)));
            Assert.All(
                prose.Where(line => !line.StartsWith("usage:", StringComparison.Ordinal)),
                line => Assert.InRange(line.Length, 0, width)
            );
        }
    }

    [Fact]
    public void Has_colour_only_where_there_is_a_terminal_that_shows_it()
    {
        using var plain = new Shell();
        using var coloured = new Shell { HasColour = true };

        plain.Run("--help");
        coloured.Run("--help");

        Assert.DoesNotContain('\u001b', plain.Out);
        Assert.Contains('\u001b', coloured.Out);
    }
}
