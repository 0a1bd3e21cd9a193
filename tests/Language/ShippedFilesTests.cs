using System.Text;
using System.Text.Json;
using Dryfit.Casework;
using Dryfit.Inspection;
using Dryfit.Measure;
using Dryfit.Outputs.FrontView;
using Dryfit.Parameters.Tests;
using Dryfit.Recipe;
using Json.Schema;

namespace Dryfit.Language.Tests;

public sealed class ShippedFilesTests
{
    public static TheoryData<string> Starters { get; } = Files("templates/starters", "*.dryfit.yaml");

    [Fact]
    public void The_schemas_and_pages_that_ship_are_what_the_shapes_give()
    {
        Shipped.Hold("templates/schema/recipe.schema.json", Shipped.RecipeSchema);
        Shipped.Hold("templates/schema/shop.schema.json", Shipped.ShopSchema);
        Shipped.Hold("templates/schema/own-word.schema.json", Shipped.WordSchema);
        Shipped.Hold("templates/reference/recipe.md", Shipped.RecipePage);
        Shipped.Hold("templates/reference/own-words.md", Shipped.WordPage);
        Shipped.Hold("templates/reference/shop.md", Shipped.ShopPage);
        Shipped.Hold("templates/reference/findings.md", FindingsPage.Write());
        Shipped.Hold("templates/shop/inches.dryfit-shop.yaml", ShopFileText.Write(LengthUnit.Inch));
        Shipped.Hold("templates/shop/millimetres.dryfit-shop.yaml", ShopFileText.Write(LengthUnit.Millimetre));
    }

    [Fact]
    public void Every_small_piece_shows_a_word_and_its_drawing_is_up_to_date()
    {
        foreach (var file in Shipped.FilesIn(Shipped.Words, "*.dryfit.yaml"))
        {
            var name = Shipped.PieceName(file);
            Assert.Contains($"<a id=\"{name.Split("--")[0]}\"></a>", Shipped.RecipePage, StringComparison.Ordinal);
            var built = Design.Build(Shipped.Read(Path.GetFileName(file), Shipped.Words), null, DesignOptions.Plain);
            Assert.True(built.Errors.Count == 0, $"{name}: {string.Join(' ', built.Errors.Select(e => e.Message))}");
            var drawing = FrontSvg.Figure(built.Value!, Inspector.Inspect(built.Value!), 150, 100, out _, out _);
            Shipped.Hold($"{Shipped.Words}/{name}.svg", drawing);
        }
    }

    [Fact]
    public void Both_schemas_are_valid_draft_07()
    {
        foreach (var schema in (string[])[Shipped.RecipeSchema, Shipped.ShopSchema, Shipped.WordSchema])
        {
            using var document = JsonDocument.Parse(schema);
            Assert.True(MetaSchemas.Draft7.Evaluate(document.RootElement).IsValid);
        }
    }

    [Fact]
    public void Own_words_and_a_recipe_that_uses_them_are_accepted_by_their_schemas()
    {
        foreach (var file in Shipped.FilesIn("tests/Language/Fixtures/words", "*.yaml"))
            Accepts(Shipped.WordSchema, RecipeReader.Read(file, File.ReadAllBytes(file)).Value!);
        Accepts(Shipped.RecipeSchema, Shipped.Read("pantry.dryfit.yaml", "tests/Language/Fixtures"));
    }

    [Theory]
    [MemberData(nameof(Starters))]
    public void Every_starter_is_accepted_by_the_schema(string file)
    {
        var read = RecipeReader.Read(file, File.ReadAllBytes(file));
        Assert.Empty(read.Errors);
        Accepts(Shipped.RecipeSchema, read.Value!);
    }

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void The_starter_shop_file_with_all_its_comments_taken_away_fits_its_shape_and_schema(LengthUnit unit)
    {
        // A rule is commented once, what explains it twice: "#   gap: 2" and "#   # The gap ...".
        var text = string.Concat(
            ShopFileText
                .Write(unit)
                .Split('\n')
                .Skip(3)
                .Select(line => (line.StartsWith("# ", StringComparison.Ordinal) ? line[2..] : line) + "\n")
        );
        var read = RecipeReader.Read("shop.yaml", Encoding.UTF8.GetBytes(text));

        Assert.Empty(read.Errors);
        Assert.Empty(ShapeCheck.Check(read.Value!, ShopFile.Shape));
        Accepts(Shipped.ShopSchema, read.Value!);
    }

    private static void Accepts(string schema, Mapping tree)
    {
        var result = JsonSchema
            .FromText(schema)
            .Evaluate(YamlJson.Of(tree), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, JsonSerializer.Serialize(result));
    }

    private static TheoryData<string> Files(string folder, string pattern)
    {
        var data = new TheoryData<string>();
        foreach (var file in Shipped.FilesIn(folder, pattern))
            data.Add(file);
        return data;
    }
}
