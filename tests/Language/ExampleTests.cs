using System.Text;
using Dryfit.Casework;
using Dryfit.Casework.Own;
using Dryfit.Casework.Words;
using Dryfit.Recipe;

namespace Dryfit.Language.Tests;

/// <summary>Every example that the reference page and the editors show can be written as it stands.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Words { get; } =
    [
        .. All(RecipeWord.Shape)
            .Concat(All(ShopFile.Shape))
            .Concat(All(OwnWord.Shape))
            .Where(w => w.Example.Length > 0)
            .Select(w => w.Name)
            .Distinct(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Words))]
    public void The_example_of_a_word_fits_the_word(string name)
    {
        var word = All(RecipeWord.Shape)
            .Concat(All(ShopFile.Shape))
            .Concat(All(OwnWord.Shape))
            .First(w => w.Name == name);
        var read = RecipeReader.Read($"example of {name}", Encoding.UTF8.GetBytes(word.Example));
        Assert.Empty(read.Errors);

        // An example may stand inside its key, its name or its list, as it would in a recipe.
        var told = Inside(read.Value!, 3).Select(node => ShapeCheck.Check(node, word)).ToList();
        Assert.True(
            told.Any(errors => errors.Count == 0),
            string.Join('\n', told.SelectMany(t => t).Select(e => $"{e.Place}: {e.Message}"))
        );
    }

    [Fact]
    public void Every_word_has_a_name_of_its_own_and_every_key_a_sentence()
    {
        foreach (var root in (RecordShape[])[RecipeWord.Shape, ShopFile.Shape, OwnWord.Shape])
        {
            var words = All(root);
            Assert.Equal(words.Count, words.Select(w => w.Name).Distinct(StringComparer.Ordinal).Count());
            Assert.All(words, w => Assert.EndsWith(".", w.Doc, StringComparison.Ordinal));
            Assert.All(
                words.SelectMany(w => w.Fields),
                f => Assert.True(f.Doc.Length > 3 && f.Doc.EndsWith('.'), $"{f.Key}: {f.Doc}")
            );
        }
    }

    private static IEnumerable<Node> Inside(Node node, int depth)
    {
        yield return node;
        var inner = node switch
        {
            _ when depth == 0 => [],
            Mapping { Entries: [var only] } => [only.Value],
            Sequence list => list.Items,
            _ => (IEnumerable<Node>)[],
        };
        foreach (var found in inner.SelectMany(i => Inside(i, depth - 1)))
            yield return found;
    }

    private static List<RecordShape> All(RecordShape root)
    {
        var found = new List<RecordShape> { root };
        for (var i = 0; i < found.Count; i++)
            found.AddRange(
                found[i].Fields.SelectMany(f => Records(f.Shape)).Distinct().Where(r => !found.Contains(r)).ToList()
            );
        return found;
    }

    private static IEnumerable<RecordShape> Records(Shape shape) =>
        shape switch
        {
            RecordShape record => [record],
            ListShape list => Records(list.Item),
            NamedShape named => Records(named.Item),
            EitherShape either => either.Shapes.SelectMany(Records),
            _ => [],
        };
}
