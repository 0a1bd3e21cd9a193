using System.Text;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Inspection.Tests;

/// <summary>Reads, builds and inspects a whole recipe.</summary>
internal static class Whole
{
    public static Report Recipe(string text, params Setting[] settings)
    {
        var recipe = RecipeReader.Read("piece.dryfit.yaml", Encoding.UTF8.GetBytes(text));
        Assert.Empty(recipe.Errors);
        var piece = Design.Build(recipe.Value!, null, new DesignOptions(settings, null));
        Assert.Empty(piece.Errors);
        return Inspector.Inspect(piece.Value!);
    }
}
