using System.Globalization;
using System.Text.Json;

namespace Dryfit.Cli.Tests;

public sealed class Building_a_piece
{
    private static readonly string[] Everything =
    [
        "cutlist.html",
        "findings.json",
        "front.svg",
        "parts.csv",
        "parts.json",
        "piece.glb",
    ];

    [Fact]
    public void Writes_everything_there_is_and_names_it()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(0, shell.Run("build", "hall.dryfit.yaml", "--out", "hall cupboard"));

        Assert.Equal(Everything, shell.Names("hall cupboard"));
        foreach (var name in Everything)
            Assert.Contains(Path.Combine("hall cupboard", name), shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void With_a_mistake_writes_everything_and_still_stops_the_saw()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(1, shell.Run("build", "hall.dryfit.yaml", "--out", "out"));

        Assert.Equal(Everything, shell.Names("out"));
    }

    [Fact]
    public void Gives_the_same_bytes_in_another_folder_and_another_culture()
    {
        using var here = new Shell();
        using var there = new Shell();
        here.Write("hall.dryfit.yaml", Recipes.NarrowDoor);
        there.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        here.Run("build", "hall.dryfit.yaml", "--out", "out");
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = Elsewhere();
        try
        {
            there.Run("build", "hall.dryfit.yaml", "--out", "a folder of another name");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.All(
            Everything,
            name =>
                Assert.Equal(
                    File.ReadAllBytes(here.PathOf("out/" + name)),
                    File.ReadAllBytes(there.PathOf("a folder of another name/" + name))
                )
        );
    }

    [Fact]
    public void Over_an_earlier_one_leaves_no_trace_of_it()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);
        shell.Run("build", "hall.dryfit.yaml", "--out", "again");
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);
        shell.Run("build", "hall.dryfit.yaml", "--out", "again");
        shell.Run("build", "hall.dryfit.yaml", "--out", "fresh");

        Assert.Equal(Everything, shell.Names("again"));
        Assert.All(Everything, name => Assert.Equal(shell.Read("fresh/" + name), shell.Read("again/" + name)));
    }

    [Fact]
    public void Into_a_file_is_refused()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(4, shell.Run("build", "hall.dryfit.yaml", "--out", "hall.dryfit.yaml"));

        Assert.Contains("'hall.dryfit.yaml' is a file", shell.Error, StringComparison.Ordinal);
        Assert.Equal(Recipes.Cupboard, shell.Read("hall.dryfit.yaml"));
    }

    [Fact]
    public void As_json_lists_the_files_with_the_findings()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(1, shell.Run("build", "hall.dryfit.yaml", "--out", "out", "--json"));

        var root = JsonDocument.Parse(shell.Out).RootElement;
        Assert.Equal(
            Everything,
            root.GetProperty("files")
                .EnumerateArray()
                .Select(f => Path.GetFileName(f.GetString()))
                .Order(StringComparer.Ordinal)
        );
        Assert.Equal(1, root.GetProperty("report").GetProperty("version").GetInt32());
    }

    [Fact]
    public void In_other_units_writes_the_same_sizes_in_them()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        shell.Run("build", "hall.dryfit.yaml", "--out", "mm");
        shell.Run("build", "hall.dryfit.yaml", "--out", "in", "--units", "in");

        Assert.Contains("\"unit\": \"mm\"", shell.Read("mm/findings.json"), StringComparison.Ordinal);
        Assert.Contains("\"unit\": \"in\"", shell.Read("in/findings.json"), StringComparison.Ordinal);
        // 900 mm are 35.433 in: a little under 35 7/16.
        Assert.Contains("35 7/16", shell.Read("in/parts.csv"), StringComparison.Ordinal);
    }

    /// <summary>A culture that writes numbers otherwise: decimal comma, thousands apart, a minus of its own.</summary>
    private static CultureInfo Elsewhere()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "\u2212";
        return culture;
    }
}
