using System.Text;
using Dryfit.Casework;
using Dryfit.Recipe;

namespace Dryfit.Outputs.Tests.Pieces;

/// <summary>Carcases at an angle in plan, from a recipe.</summary>
internal static class Angles
{
    /// <summary>A straight carcase with a door, and right of it one turned, with a drawer over a framed door.</summary>
    /// <param name="turned">As the recipe says it: <c>left: 30</c>.</param>
    public static Piece Corner(string turned) =>
        Built(
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
        );

    /// <summary>A box on another whose mitred corners have splines, turned by 30 degrees: its splines lean in a turned frame.</summary>
    public static Piece Splined() =>
        Built(
            """
            piece: Cubes
            units: mm
            materials: { body: oak 18, backs: birch plywood 6.5 }
            carcases:
              one: { size: [600, 400, 400], corners: splined mitre }
              two: { right of: one, turned: { left: 30 }, size: [500, 400, 400], corners: splined mitre }
            """
        );

    private static Piece Built(string text)
    {
        var recipe = RecipeReader.Read("angles.dryfit.yaml", Encoding.UTF8.GetBytes(text));
        Assert.Empty(recipe.Errors);
        var piece = Design.Build(recipe.Value!, null, DesignOptions.Plain);
        Assert.Empty(piece.Errors);
        return piece.Value!;
    }
}
