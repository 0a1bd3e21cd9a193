using System.Text;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Tests.Kit;

/// <summary>Pieces from the text of a recipe, through the stage's own door.</summary>
internal static class Built
{
    /// <summary>A recipe that must build; its errors are what the test fails with.</summary>
    public static Piece From(string recipe, string? shop = null, params IReadOnlyList<Setting> settings)
    {
        var result = Try(recipe, shop, settings);
        Assert.True(result.Ok, string.Join('\n', result.Errors.Select(Said)));
        return result.Value!;
    }

    /// <summary>A recipe that must build with the files beside it.</summary>
    public static Piece From(string recipe, INeighbourFiles files)
    {
        var result = Try(recipe, files);
        Assert.True(result.Ok, string.Join('\n', result.Errors.Select(Said)));
        return result.Value!;
    }

    public static Result<Piece> Try(string recipe, INeighbourFiles files)
    {
        var tree = RecipeReader.Read("test.dryfit.yaml", Encoding.UTF8.GetBytes(recipe));
        Assert.Empty(tree.Errors);
        return Design.Build(tree.Value!, null, new DesignOptions([], Show: null) { Files = files });
    }

    /// <summary>A recipe that must not build, and what is said about it.</summary>
    public static IReadOnlyList<InputError> ErrorsOf(string recipe, string? shop = null)
    {
        var result = Try(recipe, shop);
        Assert.False(result.Ok, "It builds.");
        Assert.NotEmpty(result.Errors);
        return result.Errors;
    }

    /// <summary>What is wrong with a recipe that has one mistake: its line, its column and the sentence.</summary>
    public static string ErrorOf(string recipe, string? shop = null)
    {
        var errors = ErrorsOf(recipe, shop);
        Assert.True(errors.Count == 1, string.Join('\n', errors.Select(Said)));
        return Said(errors[0]);
    }

    public static Result<Piece> Try(string recipe, string? shop = null, params IReadOnlyList<Setting> settings)
    {
        var tree = RecipeReader.Read("test.dryfit.yaml", Encoding.UTF8.GetBytes(recipe));
        var rules = shop is null ? null : RecipeReader.Read("shop.yaml", Encoding.UTF8.GetBytes(shop));
        if (!tree.Ok || rules is { Ok: false })
            return new(null, [.. tree.Errors, .. rules?.Errors ?? []]);
        return Design.Build(tree.Value!, rules?.Value, new DesignOptions(settings, Show: null));
    }

    /// <summary>A starter recipe that ships with the tool.</summary>
    /// <param name="name">Its name without the ending.</param>
    public static string Starter(string name)
    {
        using var stream = typeof(Built).Assembly.GetManifestResourceStream($"{name}.dryfit.yaml")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    public static string Said(InputError error) =>
        error.Place is null ? error.Message : $"{error.Place.Line}:{error.Place.Column}: {error.Message}";

    /// <summary>The one part of a name.</summary>
    public static Part Part(this Piece piece, string name)
    {
        var found = piece.Parts.Where(p => string.Equals(p.Name, name, StringComparison.Ordinal)).ToList();
        Assert.True(
            found.Count == 1,
            $"{found.Count} parts are called '{name}'. There are: {string.Join(", ", piece.Parts.Select(p => p.Name))}"
        );
        return found[0];
    }

    public static IReadOnlyList<Part> PartsOf(this Piece piece, Role role) =>
        [.. piece.Parts.Where(p => p.Role == role)];

    /// <summary>What is left of a part, in cubic millimetres.</summary>
    public static double VolumeMm3(this Piece piece, Part part) => piece.Grid.ToCubicMm(part.Solid.Volume);
}
