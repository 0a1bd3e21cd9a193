using System.Text;
using System.Text.Json;
using CsCheck;
using Dryfit.Recipe;
using Json.Schema;

namespace Dryfit.Parameters.Tests;

public sealed class SchemaTests
{
    private static readonly string Written = JsonSchemaWriter.Write(SampleShapes.Root);
    private static readonly JsonSchema Schema = JsonSchema.FromText(Written);

    [Fact]
    public void The_schema_is_draft_07_and_valid_by_its_own_meta_schema()
    {
        using var document = JsonDocument.Parse(Written);

        Assert.Equal(
            "http://json-schema.org/draft-07/schema#",
            document.RootElement.GetProperty("$schema").GetString()
        );
        Assert.True(MetaSchemas.Draft7.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Every_word_and_key_has_its_explanation_default_and_example()
    {
        using var document = JsonDocument.Parse(Written);
        var region = document.RootElement.GetProperty("definitions").GetProperty("region");

        Assert.Contains(
            "Example:\n{ width: 11, open }",
            region.GetProperty("description").GetString()!,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Left out: 1.",
            region.GetProperty("properties").GetProperty("share").GetProperty("description").GetString()!,
            StringComparison.Ordinal
        );
        Assert.False(region.GetProperty("additionalProperties").GetBoolean());
    }

    [Fact]
    public void A_recipe_that_fits_is_accepted_and_a_misspelt_one_is_not()
    {
        const string recipe =
            "piece: Hall shelf\nunits: in\nsize: [54, 23 1/4\", 7]\nshelves: 3\nback:\ngrades: 1\nbody: 3\nfront: { doors: hinged left framed, overlay: { left: 1/2 }, rows: [ { open }, { open: } ] }\n";

        Assert.True(Accepts(recipe));
        Assert.False(Accepts(recipe.Replace("shelves", "shelfs", StringComparison.Ordinal)));
        Assert.False(Accepts(recipe.Replace("hinged left", "hinged leftt", StringComparison.Ordinal)));
        Assert.False(Accepts(recipe.Replace("units: in", "units: im", StringComparison.Ordinal)));
        Assert.False(Accepts(recipe.Replace("piece: Hall shelf\n", "", StringComparison.Ordinal)));
        Assert.False(Accepts(recipe.Replace("shelves: 3", "shelves: 51", StringComparison.Ordinal)));
    }

    [Fact]
    public void Whatever_the_checker_accepts_the_schema_accepts()
    {
        var accepted = 0;
        RandomRecipes
            .Of(SampleShapes.Root)
            .Sample(
                text =>
                {
                    var (tree, errors) = Pipeline.Run(Encoding.UTF8.GetBytes(text), SampleShapes.Root);
                    if (errors.Count > 0)
                        return true;
                    Interlocked.Increment(ref accepted);
                    return Schema.Evaluate(YamlJson.Of(tree!)).IsValid;
                },
                iter: 1500,
                threads: 1
            );
        Assert.InRange(accepted, 50, 1500);
    }

    private static bool Accepts(string yaml) => Schema.Evaluate(YamlJson.Of(Recipes.Tree(yaml))).IsValid;
}
