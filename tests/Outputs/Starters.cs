using System.Collections.Concurrent;
using Dryfit.Casework;
using Dryfit.Recipe;

namespace Dryfit.Outputs.Tests;

/// <summary>The starter recipes as finished pieces, each built once.</summary>
internal static class Starters
{
    private static readonly ConcurrentDictionary<string, Lazy<Piece>> Built = new(StringComparer.Ordinal);

    public static TheoryData<string> Names { get; } =
    [
        .. Directory
            .GetFiles(Path.Combine(AppContext.BaseDirectory, "starters"), "*.dryfit.yaml")
            .Select(path => Path.GetFileName(path).Split('.')[0])
            .Order(StringComparer.Ordinal),
    ];

    public static Piece Get(string name) => Built.GetOrAdd(name, n => new(() => Build(n))).Value;

    public static Piece Build(string name)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "starters", $"{name}.dryfit.yaml");
        var recipe = RecipeReader.Read(file, File.ReadAllBytes(file));
        Assert.Empty(recipe.Errors);
        var piece = Design.Build(recipe.Value!, null, DesignOptions.Plain);
        Assert.Empty(piece.Errors);
        return piece.Value!;
    }
}
