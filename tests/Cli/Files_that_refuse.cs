namespace Dryfit.Cli.Tests;

public sealed class Files_that_refuse
{
    [Theory]
    [InlineData("hall", "Did you mean 'hall.dryfit.yaml'?")]
    [InlineData("hal.dryfit.yaml", "Did you mean 'hall.dryfit.yaml'?")]
    [InlineData("nowhere/hall.dryfit.yaml", "There is no recipe 'nowhere/hall.dryfit.yaml'.")]
    [InlineData("", "The name of the recipe is empty.")]
    [InlineData("hall.dryfit.yaml/x", "recipe 'hall.dryfit.yaml/x'")]
    public void A_recipe_that_is_not_there_names_the_nearest(string name, string said)
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(4, shell.Run("check", name));

        Assert.Contains(said, shell.Error, StringComparison.Ordinal);
        Assert.Empty(shell.Out);
    }

    [Fact]
    public void A_folder_in_place_of_a_recipe_names_one_inside()
    {
        using var shell = new Shell();
        shell.Write("hall/hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(4, shell.Run("check", "hall"));

        Assert.Contains("'hall' is a folder", shell.Error, StringComparison.Ordinal);
        Assert.Contains(Path.Combine("hall", "hall.dryfit.yaml"), shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_with_a_NUL_or_without_end_is_no_crash()
    {
        using var shell = new Shell();

        Assert.Equal(4, shell.Run("check", "a\0b"));
        Assert.Equal(4, shell.Run("check", new string('x', 100_000)));
    }

    [Fact]
    public void A_missing_shop_file_is_called_a_shop_file()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(4, shell.Run("check", "hall.dryfit.yaml", "--shop", "shed.yaml"));

        Assert.Contains("There is no shop file 'shed.yaml'", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recipe_behind_a_symbolic_link_with_a_name_in_any_script_is_read()
    {
        using var shell = new Shell();
        shell.Write("тумба 戸棚.dryfit.yaml", Recipes.Cupboard);
        File.CreateSymbolicLink(shell.PathOf("link.dryfit.yaml"), shell.PathOf("тумба 戸棚.dryfit.yaml"));

        Assert.Equal(0, shell.Run("check", "link.dryfit.yaml"));
        Assert.Equal(0, shell.Run("check", "тумба 戸棚.dryfit.yaml"));
    }

    [Fact]
    public void A_device_without_end_is_refused_like_any_file_too_large()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "This system has no /dev/zero.");
        using var shell = new Shell();

        Assert.Equal(3, shell.Run("check", "/dev/zero"));
    }
}
