using System.Text;
using Dryfit.Findings;

namespace Dryfit.Recipe.Tests;

/// <summary>Texts to trees, as the tests want them.</summary>
internal static class Reading
{
    public static Result<Mapping> Read(string text) =>
        RecipeReader.Read("shelf.dryfit.yaml", Encoding.UTF8.GetBytes(text));

    public static Mapping Tree(string text)
    {
        var result = Read(text);
        Assert.Empty(result.Errors);
        return result.Value!;
    }

    /// <summary>Errors as "line:column message", as short as they can be compared.</summary>
    public static IReadOnlyList<string> Told(IReadOnlyList<InputError> errors) =>
        [
            .. errors.Select(e =>
                $"{e.Place!.Line}:{e.Place.Column}-{e.Place.Length} {e.Message}{(e.Suggestion is null ? "" : $" [{e.Suggestion}]")}"
            ),
        ];

    public static IReadOnlyList<string> Told(string text) => Told(Read(text).Errors);
}
