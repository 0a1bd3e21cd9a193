using Dryfit.Casework.Drawers;
using Dryfit.Casework.Fronts;
using Dryfit.Recipe;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>What the recipe may say of fronts.</summary>
public sealed class FrontShapeTests
{
    [Theory]
    [InlineData("framed pair")]
    [InlineData("glazed, hinged left")]
    [InlineData("slab pair, overlaid")]
    [InlineData("pair")]
    [InlineData("{ kind: framed, overlay: { left: 1/2, right: 1/4 } }")]
    [InlineData("{ kind: slab, overlay: 1/2, edging: none, hinges: 3 }")]
    public void Doors_are_said_in_words_or_by_keys(string said) => Assert.Empty(Check("doors", said, DoorsWord.Shape));

    [Theory]
    [InlineData("framd pair", "framed")]
    [InlineData("{ kind: framed, stile: 2 }", "stiles")]
    public void Misspelt_words_get_the_nearest_right_one(string said, string meant)
    {
        var error = Assert.Single(Check("doors", said, DoorsWord.Shape));
        Assert.Equal(meant, error.Suggestion);
    }

    [Theory]
    [InlineData("")]
    [InlineData("inset")]
    [InlineData("{ box height: 4, slides: side }")]
    public void Drawers_are_said_by_their_name_alone_in_words_or_by_keys(string said) =>
        Assert.Empty(Check("drawer", said, DrawerWord.Shape));

    [Fact]
    public void Examples_of_the_reference_page_are_right()
    {
        foreach (var word in (RecordShape[])[DoorShapes.Written, DrawerShapes.Written])
            Assert.Empty(ShapeCheck.Check(Yaml(word.Example)[word.Name]!, word));
    }

    private static IReadOnlyList<Findings.InputError> Check(string word, string said, Shape shape) =>
        ShapeCheck.Check(Yaml($"{word}: {said}\n")[word]!, shape);
}
