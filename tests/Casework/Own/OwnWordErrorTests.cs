using System.Text;
using Dryfit.Casework.Tests.Kit;
using Dryfit.Findings;

namespace Dryfit.Casework.Tests.Own;

/// <summary>What is said of own words that cannot be: at the line of their file, and where they are used.</summary>
public sealed class OwnWordErrorTests
{
    private const string Words = "words: { strip: strip.yaml }\n";

    [Theory]
    [InlineData("{ use: strap, rise: 5 }", "There is no own word 'strap'.")]
    [InlineData("{ use: strip }", "The strip has no 'rise'.")]
    [InlineData("{ use: strip, rise: 5, risee: 6 }", "The own word 'strip' has no parameter 'risee'.")]
    [InlineData("{ use: strip, rise: [5] }", "One value is wanted here.")]
    [InlineData("{ use: strip, rise: 500 }", "'rise' is 500 mm; it must be from 0 mm to 300 mm.")]
    [InlineData("{ use: strip, rise: upper }", "There is no name 'upper'.")]
    public void What_is_wrong_with_the_use_is_told_there(string use, string error)
    {
        var said = ErrorsOf(use, Words, ("strip.yaml", Strip("rise above box")));

        Assert.Contains(
            said,
            e => e.Message == error && e.Place is { File: "test.dryfit.yaml", Line: 10, UsedAt: null }
        );
    }

    [Theory]
    [InlineData("rise + side above box", "There is no name 'side'.")]
    [InlineData("box.width above box", "There is no name 'box.width'.")]
    [InlineData("rise above bix", "There is no part, board or carcase called 'bix'.")]
    public void What_is_wrong_in_the_file_is_told_there_and_at_the_use(string bottom, string error)
    {
        var said = ErrorsOf("{ use: strip, rise: 5 }", Words, ("strip.yaml", Strip(bottom)));

        var found = Assert.Single(said, e => e.Message == error);
        Assert.Equal(("strip.yaml", 5), (found.Place!.File, found.Place.Line));
        Assert.Equal(("test.dryfit.yaml", 10), (found.Place.UsedAt!.File, found.Place.UsedAt.Line));
        Assert.Contains("used at: test.dryfit.yaml:10:", ErrorText.Write(found, null), StringComparison.Ordinal);
    }

    [Fact]
    public void Key_that_is_none_is_told_in_the_file_once_for_all_uses()
    {
        var said = ErrorsOf(
            "{ use: strip, rise: 5 }\n  two: { use: strip, rise: 50 }",
            Words,
            ("strip.yaml", Strip("rise above box").Replace("width:", "widht:", StringComparison.Ordinal))
        );

        var found = Assert.Single(said);
        Assert.Equal("A board has no key 'widht'.", found.Message);
        Assert.Equal("strip.yaml", found.Place!.File);
    }

    [Fact]
    public void Text_that_is_no_yaml_is_told_in_the_file()
    {
        var said = ErrorsOf("{ use: strip, rise: 5 }", Words, ("strip.yaml", "word: [\n"));

        var found = Assert.Single(said);
        Assert.Equal("strip.yaml", found.Place!.File);
        Assert.NotNull(found.Place.UsedAt);
    }

    [Theory]
    [InlineData("../strip.yaml", "'../strip.yaml' leads out of the recipe's folder.")]
    [InlineData("words/../../strip.yaml", "'words/../../strip.yaml' leads out of the recipe's folder.")]
    [InlineData("/etc/strip.yaml", "'/etc/strip.yaml' is not told from the recipe's folder.")]
    [InlineData("C:/strip.yaml", "'C:/strip.yaml' is not told from the recipe's folder.")]
    [InlineData("~/strip.yaml", "'~/strip.yaml' is not told from the recipe's folder.")]
    [InlineData("words\\strip.yaml", "'words\\strip.yaml' has a backslash; the parts of a path are parted by /.")]
    [InlineData("words//strip.yaml", "'words//strip.yaml' is no path to a file.")]
    [InlineData("./strip.yaml", "'./strip.yaml' is no path to a file.")]
    public void Path_that_is_not_in_the_folder_is_never_read(string path, string error)
    {
        var files = new Files();
        var said = Built.Try(Recipe("{ use: strip, rise: 5 }", $"words: {{ strip: '{path}' }}\n"), files).Errors;

        Assert.Equal(error, Assert.Single(said).Message);
        Assert.Equal(0, files.Reads);
    }

    [Fact]
    public void Words_that_use_each_other_are_told_with_the_circle()
    {
        var said = ErrorsOf(
            "{ use: one }",
            "words: { one: one.yaml, two: two.yaml }\n",
            ("one.yaml", "word: one\nunits: mm\nboards: { a: { use: two } }\n"),
            ("two.yaml", "word: two\nunits: mm\nboards: { b: { use: one } }\n")
        );

        Assert.Equal("These own words use each other in a circle: one -> two -> one.", Assert.Single(said).Message);
    }

    [Fact]
    public void Words_deep_in_words_are_refused()
    {
        var words = Enumerable
            .Range(0, 12)
            .Select(n => ($"w{n}.yaml", $"word: w{n}\nunits: mm\nboards: {{ a: {{ use: w{n + 1} }} }}\n"));
        var named = string.Join(", ", Enumerable.Range(0, 13).Select(n => $"w{n}: w{n}.yaml"));

        var said = ErrorsOf("{ use: w0 }", $"words: {{ {named} }}\n", [.. words]);

        Assert.Equal("Own words are used in own words more than 8 deep.", Assert.Single(said).Message);
    }

    [Fact]
    public void Words_that_multiply_are_stopped()
    {
        // Each uses the next ten times over: 10^7 uses if nobody stopped it.
        var words = Enumerable
            .Range(0, 7)
            .Select(n =>
            {
                var text = new StringBuilder($"word: w{n}\nunits: mm\nboards:\n");
                for (var i = 0; i < 10; i++)
                    text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  b{i}: {{ use: w{n + 1} }}\n");
                return ($"w{n}.yaml", text.ToString());
            });
        var named = string.Join(", ", Enumerable.Range(0, 8).Select(n => $"w{n}: w{n}.yaml"));

        var said = ErrorsOf("{ use: w0 }", $"words: {{ {named} }}\n", [.. words]);

        Assert.Contains(said, e => e.Message == "Own words are used more than 500 times.");
    }

    [Fact]
    public void Circle_through_the_sizes_of_a_words_carcase_is_told()
    {
        var said = ErrorsOf(
            "{ length: 5 }",
            "words: { box: box.yaml }\n",
            (
                "box.yaml",
                "word: box\nunits: mm\nparameters: { width: { default: 300 } }\ncarcases: { it: { size: [width, 300, 300] } }\n"
            ),
            "  tall: { use: box, width: tall.width }\n"
        );

        Assert.Contains(
            said,
            e => e.Message.StartsWith("These lean on each other in a circle:", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Front_in_the_place_of_a_board_is_refused()
    {
        var said = ErrorsOf(
            "{ use: bank }",
            "words: { bank: bank.yaml }\n",
            ("bank.yaml", "word: bank\nunits: mm\nfront: { open: }\n")
        );

        Assert.Equal("The own word 'bank' has no carcases or boards to stand here.", Assert.Single(said).Message);
    }

    private static string Strip(string bottom) =>
        $$"""
            word: strip
            units: mm
            parameters: { rise: { from: 0, to: 300 } }
            boards:
              one: { length: 200, width: 30, left: at 0, front: at 0, bottom: {{bottom}} }
            """;

    private static IReadOnlyList<InputError> ErrorsOf(string use, string words, params (string, string)[] files) =>
        Errors(Recipe(use, words), files);

    private static IReadOnlyList<InputError> ErrorsOf(
        string use,
        string words,
        (string, string) file,
        string carcase
    ) => Errors(Recipe(use, words, carcase), [file]);

    private static IReadOnlyList<InputError> Errors(string recipe, (string, string)[] files)
    {
        var result = Built.Try(recipe, new Files(files));
        Assert.Null(result.Value);
        return result.Errors;
    }

    private static string Recipe(string use, string words, string carcase = "  box: { size: [600, 400, 300] }\n") =>
        $"""
            piece: Strips
            units: mm
            materials:
              body: pine 18
              backs: birch plywood 6.5
            {words}carcases:
            {carcase}boards:
              one: {use}

            """;
}
