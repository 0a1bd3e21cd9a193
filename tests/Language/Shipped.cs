using System.Text;
using Dryfit.Casework;
using Dryfit.Casework.Boards;
using Dryfit.Casework.Own;
using Dryfit.Casework.Words;
using Dryfit.Kit;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Language.Tests;

/// <summary>The files about the language that ship with the tool, as the shapes give them.</summary>
internal static class Shipped
{
    /// <summary>Set to 1, the files are written anew instead of compared.</summary>
    private const string Switch = "DRYFIT_UPDATE";

    /// <summary>Where small pieces stand that show one word each, with their drawings.</summary>
    public const string Words = RecipeFiles.Words;

    /// <summary>Every folder with recipes that must build as they stand.</summary>
    public static IReadOnlyList<string> RecipeFolders => RecipeFiles.Folders;

    public static string RecipeSchema { get; } = JsonSchemaWriter.Write(RecipeWord.Shape, takesNames: true);

    public static string ShopSchema { get; } = JsonSchemaWriter.Write(ShopFile.Shape);

    public static string RecipePage { get; } =
        ReferencePage.Write(
            RecipeWord.Shape,
            "The recipe, word by word",
            "A recipe is a text file ending in `.dryfit.yaml` that says what is particular about a piece; what the trade does by habit comes from the [shop file](shop.md). This page is written from the same source as the checker and the editors' schema (`templates/schema/recipe.schema.json`).",
            [.. FilesIn(Words, "*.dryfit.yaml").Select(PieceName)],
            ReferenceChapters.Lengths,
            ReferenceChapters.Formulas,
            NamesChapter.Text,
            BoardsChapter.Text,
            StuffChapter.Text
        );

    public static string WordSchema { get; } = JsonSchemaWriter.Write(OwnWord.Shape, takesNames: true);

    public static string WordPage { get; } =
        ReferencePage.WriteBeside(
            OwnWord.Shape,
            RecipeWord.Shape,
            "recipe.md",
            "Words of your own",
            "A maker's own word is a text file ending in `.dryfit-word.yaml` beside the [recipe](recipe.md) that uses it. [Lengths](recipe.md#lengths) and [formulas](recipe.md#formulas) are written as in recipes. `templates/schema/own-word.schema.json` is its schema for editors.",
            OwnWordsChapter.Text
        );

    public static string ShopPage { get; } =
        ReferencePage.Write(
            ShopFile.Shape,
            "The shop file, rule by rule",
            "A shop file holds the shop's own habits and facts, shared by all [recipes](recipe.md). Every rule that is left out keeps its default, and without a shop file all of them do. [Lengths](recipe.md#lengths) are written as in recipes.",
            []
        );

    /// <summary>Compares a file of the repository with what it should hold, or writes it where that is asked for.</summary>
    public static void Hold(string path, string content)
    {
        var file = Path.Combine(RecipeFiles.Root, path);
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, content, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
        Assert.True(File.Exists(file), $"{path} is missing; run these tests once with {Switch}=1.");
        Assert.True(
            string.Equals(content, File.ReadAllText(file).ReplaceLineEndings("\n"), StringComparison.Ordinal),
            $"{path} is older than the shapes; run these tests once with {Switch}=1."
        );
    }

    /// <summary>The file's name without its ending: <c>doors--glazed</c>.</summary>
    public static string PieceName(string file) => Path.GetFileName(file)[..^".dryfit.yaml".Length];

    public static IEnumerable<string> FilesIn(string folder, string pattern) => RecipeFiles.In(folder, pattern);

    /// <summary>The tree of the one file of this name in some folders of the repository.</summary>
    public static Mapping Read(string name, params IReadOnlyList<string> folders)
    {
        var file = Assert.Single(folders.SelectMany(folder => FilesIn(folder, name)));
        var read = RecipeReader.Read(name, File.ReadAllBytes(file));
        Assert.Empty(read.Errors);
        return Assert.IsType<Mapping>(read.Value);
    }

    /// <summary>The files beside a recipe of one of the folders.</summary>
    public static INeighbourFiles Beside(string recipe, params IReadOnlyList<string> folders) =>
        RecipeFiles.Beside(Assert.Single(folders.SelectMany(folder => FilesIn(folder, recipe))));
}
