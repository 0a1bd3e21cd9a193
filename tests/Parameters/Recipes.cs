using System.Text;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Recipe;

namespace Dryfit.Parameters.Tests;

/// <summary>Small recipes with parameters and sizes, bound as a whole.</summary>
internal static class Recipes
{
    public static RecordShape Root { get; } =
        new(
            "recipe",
            "A test recipe.",
            "sizes: { a: 1 }",
            () =>
                [
                    new Field("parameters", ParameterSection.Shape, "Names."),
                    new Field("sizes", new NamedShape(new LengthShape(LengthSign.Any), "size"), "Lengths."),
                    new Field("counts", new NamedShape(new CountShape(1, 20), "count"), "Counts."),
                    new Field("gaps", new NamedShape(new LengthShape(), "gap"), "Lengths of zero or more."),
                ]
        );

    public static Mapping Tree(string text)
    {
        var result = RecipeReader.Read("r.yaml", Encoding.UTF8.GetBytes(text));
        Assert.Empty(result.Errors);
        return result.Value!;
    }

    public static Scope Bind(string text, LengthUnit unit = LengthUnit.Inch, params IReadOnlyList<Setting> settings)
    {
        var tree = Tree(text);
        Assert.Empty(ShapeCheck.Check(tree, Root));
        var scope = new Scope(unit);
        ParameterSection.Bind(tree["parameters"] as Mapping, settings, scope);
        Binding.CheckFormulas(tree, Root, scope);
        var fields = new Fields(tree, scope);
        foreach (var size in fields.Named("sizes").Concat(fields.Named("gaps")))
            scope.Length((Scalar)size.Value, size.Key);
        foreach (var count in fields.Named("counts"))
            scope.Count((Scalar)count.Value);
        scope.WorkOutAll();
        return scope;
    }

    public static IReadOnlyList<string> Told(
        string text,
        LengthUnit unit = LengthUnit.Inch,
        params IReadOnlyList<Setting> settings
    ) => [.. Bind(text, unit, settings).Errors.Select(Told)];

    public static string Told(InputError e) =>
        $"{e.Place!.Line}:{e.Place.Column}-{e.Place.Length} {e.Message}{(e.Suggestion is null ? "" : $" [{e.Suggestion}]")}";

    public static Figure Size(string formula, string parameters = "{}", LengthUnit unit = LengthUnit.Inch)
    {
        var tree = Tree($"parameters: {parameters}\nsizes:\n  a: {formula}\n");
        var scope = new Scope(unit);
        ParameterSection.Bind(tree["parameters"] as Mapping, [], scope);
        Binding.CheckFormulas(tree, Root, scope);
        var figure = scope.Length((Scalar)((Mapping)tree["sizes"]!)["a"]!, "a");
        Assert.Empty(scope.Errors);
        return figure;
    }
}
