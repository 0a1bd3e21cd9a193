using System.Text.RegularExpressions;

namespace Dryfit.Cli.Tests;

public sealed class A_survey
{
    [Theory]
    [InlineData("mm", "All in millimetres", "[900, ____]")]
    [InlineData("in", "All in inches", "[36, ____]")]
    public void Is_a_page_in_the_unit_of_the_tape(string unit, string says, string line)
    {
        using var shell = new Shell();

        Assert.Equal(0, shell.Run("survey", "alcove.html", "--units", unit));
        Assert.Equal("alcove.html\n", shell.Out);
        var page = shell.Read("alcove.html");
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains(line, page, StringComparison.Ordinal);
    }

    [Fact]
    public void Filled_in_its_lines_stand_in_place_of_what_the_recipe_took()
    {
        using var shell = new Shell();
        shell.Run("survey", "alcove.html");
        var lines = Regex.Match(
            shell.Read("alcove.html"),
            "<pre>(.*?)</pre>",
            RegexOptions.Singleline,
            TimeSpan.FromSeconds(1)
        );
        // Whoever fills it in writes 1500 for each width and the far end of the floor, 2600 for the ceiling, and nothing for what
        // is plumb and level.
        var filled = Regex.Replace(
            lines.Groups[1].Value,
            @"(widths: .*)",
            m => m.Value.Replace("____", "1500", StringComparison.Ordinal),
            RegexOptions.None,
            TimeSpan.FromSeconds(1)
        );
        filled = Regex.Replace(
            filled,
            @"(ceiling: .*)",
            m =>
                m.Value.Replace("[____, ____]", "[1500, 2600]", StringComparison.Ordinal)
                    .Replace("____", "2600", StringComparison.Ordinal),
            RegexOptions.None,
            TimeSpan.FromSeconds(1)
        );
        filled = filled
            .Replace("[____, ____]", "[1500, 0]", StringComparison.Ordinal)
            .Replace("depth: ____", "depth: 400", StringComparison.Ordinal)
            .Replace("____", "0", StringComparison.Ordinal);
        shell.Write(
            "shelf.dryfit.yaml",
            "piece: Shelf\nunits: mm\nmaterials: { body: pine 18 }\nroom: { alcove: { widths: [[0, 2000], [2400, 2000]] } }\n"
                + "carcases: { shelf: { size: [alcove.narrowest - 20, 900, 300], between: alcove, back: none } }\n"
                + filled
        );

        Assert.Equal(0, shell.Run("check", "shelf.dryfit.yaml"));
        shell.Run("why", "shelf.dryfit.yaml", "shelf bottom.length");
        Assert.Contains("1500", shell.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Does_not_write_over_a_file_unasked()
    {
        using var shell = new Shell();
        shell.Write("alcove.html", "mine");

        Assert.Equal(ExitCode.FileTrouble, shell.Run("survey", "alcove.html"));
        Assert.Equal("mine", shell.Read("alcove.html"));
        Assert.Equal(0, shell.Run("survey", "alcove.html", "--force"));
    }

    [Fact]
    public void In_another_unit_is_refused_with_the_two_there_are()
    {
        using var shell = new Shell();

        Assert.Equal(ExitCode.Usage, shell.Run("survey", "alcove.html", "--units", "cm"));
        Assert.Contains("mm", shell.Error, StringComparison.Ordinal);
    }
}
