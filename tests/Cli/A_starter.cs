namespace Dryfit.Cli.Tests;

public sealed class A_starter
{
    public static TheoryData<string> Recipes() =>
        [.. Starter.All.Where(s => s.Kind == StarterKind.Recipe).Select(s => s.Name)];

    public static TheoryData<string> Shops() =>
        [.. Starter.All.Where(s => s.Kind == StarterKind.Shop).Select(s => s.Name)];

    [Fact]
    public void Is_listed_with_what_it_is()
    {
        using var shell = new Shell { Width = 200 };

        Assert.Equal(0, shell.Run("new"));

        var lines = shell.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.InRange(lines.Length, 3, 20);
        Assert.All(lines, line => Assert.Matches(@"^[a-z-]+ {3,}\S.{10,}", line));
        Assert.Contains(lines, line => line.StartsWith("shop-", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Becomes_a_recipe_of_ones_own_that_builds_without_a_stop(string name)
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("new", name, "mine.dryfit.yaml"));
        Assert.Equal("mine.dryfit.yaml\n", shell.Out);
        Assert.Equal(0, shell.Run("build", "mine.dryfit.yaml", "--out", "out"));
    }

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Tells_editors_of_the_schema_beside_it(string name)
    {
        using var shell = new Shell();

        shell.Run("new", name, "pieces/mine.dryfit.yaml");

        Assert.Contains(
            "# yaml-language-server: $schema=./dryfit.schema.json\n",
            shell.Read("pieces/mine.dryfit.yaml"),
            StringComparison.Ordinal
        );
        Assert.Equal(["dryfit.schema.json", "mine.dryfit.yaml"], shell.Names("pieces"));
        Assert.Contains("dryfit.schema.json", shell.Error, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public void Of_a_shop_file_says_the_habits_that_are_built_in(string name)
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Tests.Recipes.Cupboard);

        Assert.Equal(0, shell.Run("new", name, "shed.yaml"));
        Assert.Equal(["dryfit-shop.schema.json", "hall.dryfit.yaml", "shed.yaml"], shell.Names());
        shell.Run("build", "hall.dryfit.yaml", "--out", "built-in");
        Assert.Equal(0, shell.Run("build", "hall.dryfit.yaml", "--out", "written", "--shop", "shed.yaml"));

        Assert.Equal(shell.Read("built-in/parts.csv"), shell.Read("written/parts.csv"));
    }

    [Fact]
    public void Is_printed_where_no_file_is_named()
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("new", Starter.All[0].Name));

        Assert.Equal(Starter.All[0].Text, shell.Out);
        Assert.Empty(shell.Names());
    }

    [Fact]
    public void Never_overwrites_a_recipe_unless_it_is_forced_to()
    {
        using var shell = new Shell();
        shell.Write("mine.dryfit.yaml", "a day's work");
        var name = Starter.All[0].Name;

        Assert.Equal(4, shell.Run("new", name, "mine.dryfit.yaml"));
        Assert.Contains("--force", shell.Error, StringComparison.Ordinal);
        Assert.Equal("a day's work", shell.Read("mine.dryfit.yaml"));
        Assert.Equal(0, shell.Run("new", name, "mine.dryfit.yaml", "--force"));
        Assert.StartsWith("#", shell.Read("mine.dryfit.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public void That_is_none_names_the_nearest()
    {
        using var shell = new Shell();
        var name = Starter.All[0].Name;

        Assert.Equal(2, shell.Run("new", name[..^1], "mine.dryfit.yaml"));

        Assert.Contains($"Did you mean '{name}'?", shell.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Names());
    }

    [Fact]
    public void Goes_to_a_file_not_to_a_folder()
    {
        using var shell = new Shell();
        Directory.CreateDirectory(shell.PathOf("pieces"));

        Assert.Equal(4, shell.Run("new", Starter.All[0].Name, "pieces"));

        Assert.Contains("is a folder", shell.Error, StringComparison.Ordinal);
    }
}
