using Dryfit.Recipe;

namespace Dryfit.Parameters.Tests;

public sealed class ReferencePageTests
{
    private static readonly string Page = ReferencePage.Write(
        SampleShapes.Root,
        "The recipe",
        "What a recipe may say.",
        ["region", "region--open"],
        ReferenceChapters.Lengths,
        ReferenceChapters.Formulas
    );

    [Fact]
    public void Drawings_named_for_a_word_stand_under_it_each_with_its_recipe()
    {
        var word = Page[Page.IndexOf("## region\n", StringComparison.Ordinal)..];
        var drawings = word[..word.IndexOf("| key |", StringComparison.Ordinal)];

        Assert.Contains("![region, from the front](words/region.svg)", drawings, StringComparison.Ordinal);
        Assert.Contains("](words/region--open.svg)", drawings, StringComparison.Ordinal);
        Assert.Contains("](words/region--open.dryfit.yaml)", drawings, StringComparison.Ordinal);
        Assert.Equal(2, Page.Split("](words/region").Length / 2);
    }

    [Fact]
    public void The_page_leads_from_its_contents_to_every_chapter_and_word()
    {
        Assert.StartsWith(
            "# The recipe\n\nWhat a recipe may say.\n\n- [Lengths](#lengths)\n- [Formulas](#formulas)\n- [recipe](#recipe)\n- [parameter](#parameter)\n- [region](#region)\n- [overlay](#overlay)\n",
            Page,
            StringComparison.Ordinal
        );
        foreach (var word in (string[])["recipe", "parameter", "region", "overlay"])
            Assert.Contains($"<a id=\"{word}\"></a>\n\n## {word}\n", Page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_key_stands_with_what_it_holds_what_it_means_and_what_happens_without_it()
    {
        Assert.Contains("| `piece` | text | Its name. | **must be there** |\n", Page, StringComparison.Ordinal);
        Assert.Contains("| `share` | number | Its share of what is left. | 1 |\n", Page, StringComparison.Ordinal);
        Assert.Contains(
            "| `overlay` | [length](#lengths); or [overlay](#overlay) | Lap \\| of fronts. |  |\n",
            Page,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "| `doors` | `slab` or `framed`; `single` or `pair`; `hinged left` or `hinged right` | Doors. |  |\n",
            Page,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "| `size` | list of 3: [length](#lengths) above zero | Width, height, depth. |  |\n",
            Page,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_example_of_a_parameter_on_the_page_can_be_bound()
    {
        Assert.Empty(Recipes.Bind($"parameters:\n  {ParameterSection.Word.Example}\n").Errors);
    }
}
