using System.Text;
using Dryfit.Casework;
using Dryfit.Recipe;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Pieces;

/// <summary>Takes a recipe the whole way: text, tree, formulas, parts and their solids.</summary>
internal static class BuiltPiece
{
    /// <param name="recipe">The text of a recipe.</param>
    /// <param name="shop">The text of a shop file; null for the built-in habits.</param>
    public static Piece From(string recipe, string? shop = null)
    {
        var built = Design.Build(
            Read("example.dryfit.yaml", recipe),
            shop is null ? null : Read("shop.yaml", shop),
            DesignOptions.Plain
        );
        Assert.That(built.Errors.Select(error => $"{error.Place}: {error.Message}"), Is.Empty);
        return built.Value!;
    }

    private static Mapping Read(string name, string text)
    {
        var read = RecipeReader.Read(name, Encoding.UTF8.GetBytes(text));
        Assert.That(read.Errors.Select(error => $"{error.Place}: {error.Message}"), Is.Empty);
        return read.Value!;
    }
}
