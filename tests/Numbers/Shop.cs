using System.Text;
using Dryfit.Casework;
using Dryfit.Inspection;
using Dryfit.Recipe;

namespace Dryfit.Numbers.Tests;

/// <summary>A piece, and a list held against it.</summary>
internal static class Shop
{
    /// <summary>
    /// A face frame of 1 1/2 stiles round an opening of 24: an inset framed pair with gaps of 1/16, so that a door is
    /// (24 - 3 x 1/16) / 2 = 11 29/32 wide; stiles of 2, tongues of 3/8: rails are 11 29/32 - 4 + 3/4 = 8 21/32 long.
    /// </summary>
    public const string Inches = """
        piece: Framed cupboard
        units: in
        materials:
          body: hard maple 3/4
          panels: { sheet: birch plywood, called: 1/4, actual: 7/32 }
          backs: { sheet: birch plywood, called: 1/4, actual: 7/32 }
        carcases:
          low:
            size: [27, 30, 16]
            face frame: { stiles: 1 1/2, rails: 1 1/2 }
            front: { doors: { kind: framed, leaves: pair, hang: inset, gap: 1/16, pair gap: 1/16, stiles: 2, rails: 2 } }
        """;

    /// <summary>Frameless, 800 wide: inside 764, doors (764 + 2 x 16.5 - 3) / 2 = 397 wide.</summary>
    public const string Millimetres = """
        piece: Hall cupboard
        units: mm
        materials: { body: birch plywood 18, backs: { sheet: birch plywood, called: 6, actual: 6.5 } }
        carcases:
          hall:
            size: [800, 900, 350]
            front: { doors: slab pair }
        """;

    public static Held Hold(string recipe, string list)
    {
        var now = Build(recipe, []) ?? throw new InvalidOperationException("The recipe cannot be built.");
        var read = HandListReader.Read("list.csv", Encoding.UTF8.GetBytes(list), now.Piece.Format.Unit);
        Assert.Empty(read.Errors);
        return NumbersCheck.Hold(read.Value!, now, numbers => Build(recipe, numbers));
    }

    public static Built? Build(string recipe, IReadOnlyList<CutNumbers> numbers)
    {
        var tree = RecipeReader.Read("recipe.yaml", Encoding.UTF8.GetBytes(recipe));
        Assert.Empty(tree.Errors);
        var piece = Design.Build(tree.Value!, null, DesignOptions.Plain with { AsListed = numbers });
        return piece.Ok ? new(piece.Value!, Inspector.Inspect(piece.Value!)) : null;
    }
}
