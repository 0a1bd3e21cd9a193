using System.Text;
using Dryfit.Casework;
using Dryfit.Recipe;

namespace Dryfit.Outputs.Tests.Pieces;

/// <summary>Carcases at an angle in plan, from a recipe.</summary>
internal static class Angles
{
    /// <summary>A straight carcase with a door, and right of it one turned, with a drawer over a framed door.</summary>
    /// <param name="turned">As the recipe says it: <c>left: 30</c>.</param>
    public static Piece Corner(string turned)
    {
        var recipe = RecipeReader.Read(
            "corner.dryfit.yaml",
            Encoding.UTF8.GetBytes(
                $$"""
                piece: Corner
                units: mm
                materials: { body: birch plywood 18, backs: birch plywood 6.5 }
                carcases:
                  one: { size: [600, 900, 500], face frame: { stiles: 40 }, front: { doors: slab } }
                  two:
                    right of: one
                    size: [500, 900, 500]
                    turned: { {{turned}} }
                    face frame: { stiles: 40 }
                    front: { rows: [ { height: 150, drawer }, { doors: framed } ] }
                """
            )
        );
        Assert.Empty(recipe.Errors);
        var piece = Design.Build(recipe.Value!, null, DesignOptions.Plain);
        Assert.Empty(piece.Errors);
        return piece.Value!;
    }
}
