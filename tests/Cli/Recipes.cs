namespace Dryfit.Cli.Tests;

/// <summary>Recipes to run the program on.</summary>
internal static class Recipes
{
    /// <summary>A frameless cupboard with a pair of doors: nothing is wrong with it.</summary>
    public const string Cupboard = """
        piece: Hall cupboard
        units: mm
        parameters:
          width: { default: 800, from: 600, to: 1000, step: 10, note: outside }
        materials:
          body: birch plywood 18
          backs: birch plywood 6
        carcases:
          cupboard:
            size: [width, 900, 350]
            shelves: { adjustable: 2 }
            front: { doors: slab pair }

        """;

    /// <summary>The same with a left door that was cut 30 mm too narrow.</summary>
    public const string NarrowDoor = Cupboard + "as cut:\n  left door: { width: 366 }\n";
}
