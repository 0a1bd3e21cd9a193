namespace Dryfit.Cli.Tests;

public sealed class The_command_line
{
    [Theory]
    [InlineData("bild", "build")]
    [InlineData("chek", "check")]
    [InlineData("buidl", "build")]
    public void Misspelt_command_names_the_nearest(string written, string meant)
    {
        using var shell = new Shell();

        Assert.Equal(2, shell.Run(written, "a.dryfit.yaml"));

        Assert.Contains(
            $"There is no command '{written}'. Did you mean '{meant}'?",
            shell.Error,
            StringComparison.Ordinal
        );
        Assert.Empty(shell.Out);
    }

    [Theory]
    [InlineData("--ot", "--out")]
    [InlineData("--quite", "--quiet")]
    [InlineData("--unit", "--units")]
    [InlineData("--jsn=yes", "--json")]
    public void Misspelt_option_names_the_nearest(string written, string meant)
    {
        using var shell = new Shell();

        Assert.Equal(2, shell.Run("build", "a.dryfit.yaml", written));

        Assert.Contains($"Did you mean '{meant}'?", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("'dryfit build' needs --out DIR", "build", "a.dryfit.yaml")]
    [InlineData("'dryfit build' needs a RECIPE", "build", "--out", "x")]
    [InlineData("'dryfit check' needs a RECIPE", "check")]
    [InlineData("--out needs a value: --out DIR", "build", "a.dryfit.yaml", "--out")]
    [InlineData("--shop needs a value: --shop FILE", "check", "a.dryfit.yaml", "--shop")]
    [InlineData("--shop is given more than once", "check", "a.dryfit.yaml", "--shop", "a", "--shop", "b")]
    [InlineData("--set width gives no value", "check", "a.dryfit.yaml", "--set", "width")]
    [InlineData("--set width= gives no value", "check", "a.dryfit.yaml", "--set", "width=")]
    [InlineData("--set =3 gives no value", "check", "a.dryfit.yaml", "--set", "=3")]
    [InlineData("--units knows 'in' and 'mm', not 'cm'", "check", "a.dryfit.yaml", "--units", "cm")]
    [InlineData("cannot use 'b.yaml': it is one argument too many", "check", "a.dryfit.yaml", "b.yaml")]
    [InlineData("'dryfit' has no option '--verbose'", "--verbose")]
    public void Wrong_usage_says_what_is_missing_or_too_much(string said, params string[] arguments)
    {
        using var shell = new Shell();

        Assert.Equal(2, shell.Run(arguments));

        Assert.Contains(said, shell.Error, StringComparison.Ordinal);
        Assert.Contains("--help'.", shell.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Out);
        Assert.Empty(shell.Names());
    }

    [Fact]
    public void A_name_that_begins_with_an_at_sign_is_a_file_like_any_other()
    {
        using var shell = new Shell();

        Assert.Equal(4, shell.Run("check", "@recipe.dryfit.yaml"));

        Assert.Contains("There is no recipe '@recipe.dryfit.yaml'", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void After_two_dashes_a_name_may_begin_with_a_dash()
    {
        using var shell = new Shell();

        Assert.Equal(4, shell.Run("check", "--", "--odd.dryfit.yaml"));

        Assert.Contains("There is no recipe '--odd.dryfit.yaml'", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Version_is_a_result()
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("--version"));

        Assert.Matches(@"^dryfit \d+\.\d+\.\d+\n$", shell.Out);
        Assert.Empty(shell.Error);
    }
}
