namespace Dryfit.Casework.Tests.Materials;

public sealed class KnownStuffTests
{
    [Theory]
    [InlineData("maple", "sugar maple")]
    [InlineData("Maple", "sugar maple")]
    [InlineData("hard maple", "sugar maple")]
    [InlineData("hard-maple", "sugar maple")]
    [InlineData("  hard   maple ", "sugar maple")]
    [InlineData("maple, hard", "sugar maple")]
    [InlineData("soft maple", "red maple")]
    [InlineData("cherry", "black cherry")]
    [InlineData("walnut", "black walnut")]
    [InlineData("red oak", "northern red oak")]
    [InlineData("white oak", "white oak")]
    [InlineData("poplar", "yellow-poplar")]
    [InlineData("Douglas fir", "coast douglas-fir")]
    [InlineData("spf", "spruce-pine-fir")]
    [InlineData("Baltic birch", "birch plywood")]
    [InlineData("MDF", "mdf")]
    [InlineData("chipboard", "particleboard")]
    [InlineData("glass", "float glass")]
    public void Stuff_is_found_by_the_names_the_trade_uses(string name, string found) =>
        Assert.Equal(found, KnownStuff.Find(name)?.Name);

    [Theory]
    [InlineData("mapel", "maple")]
    [InlineData("chery", "cherry")]
    [InlineData("birch plywod", "birch plywood")]
    [InlineData("flota glass", "float glass")]
    public void A_misspelt_name_is_answered_with_the_nearest(string name, string nearest)
    {
        Assert.Null(KnownStuff.Find(name));
        Assert.Equal(nearest, KnownStuff.Nearest(name));
    }

    [Theory]
    [InlineData("unobtainium")]
    [InlineData("")]
    [InlineData(",")]
    public void What_is_like_nothing_known_is_answered_with_nothing(string name)
    {
        Assert.Null(KnownStuff.Find(name));
        Assert.Null(KnownStuff.Nearest(name));
    }

    [Fact]
    public void Every_stuff_has_a_plausible_density_a_source_and_an_id_of_its_own()
    {
        Assert.All(KnownStuff.All, stuff => Assert.InRange(stuff.DensityKgPerM3, 300, 2600));
        Assert.All(KnownStuff.All, stuff => Assert.NotEmpty(stuff.DensitySource));
        Assert.All(KnownStuff.All, stuff => Assert.Matches("^[a-z-]+$", stuff.Id));
        Assert.Equal(KnownStuff.All.Count, KnownStuff.All.Select(stuff => stuff.Id).Distinct().Count());
    }

    [Fact]
    public void A_cubic_decimetre_of_glass_weighs_two_and_a_half_kilograms() =>
        Assert.Equal(2.5, KnownStuff.Find("float glass")!.MassKg(1_000_000), 9);
}
