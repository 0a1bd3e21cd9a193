using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Reference.Tests.Pieces;
using NUnit.Framework;

namespace Dryfit.Reference.Tests.Fronts;

/// <summary>
/// The plainest cupboard that has an opening of a wanted size: a face frame with stiles and rails of 1 1/2 in around it.
/// The opening is measured before anything is made of it.
/// </summary>
internal static class FaceFramedBox
{
    /// <param name="width">Clear width of the opening in inches.</param>
    /// <param name="height">Clear height of the opening in inches.</param>
    /// <param name="front">What fills it, as the recipe says it.</param>
    /// <param name="shop">Lines of a shop file in inches, or nothing.</param>
    public static Piece With(double width, double height, string front, string? shop = null)
    {
        var recipe = string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            piece: Worked example
            units: in
            materials: { body: maple 3/4, panels: birch plywood 1/4 }
            carcases:
              box:
                size: [{{width + 3}}, {{height + 3}}, 20]
                face frame: { stiles: 1 1/2, rails: 1 1/2 }
                front: { {{front}} }
            """
        );
        var piece = BuiltPiece.From(recipe, shop is null ? null : $"shop: Worked example\nunits: in\n{shop}\n");
        var clear = piece.Openings.Single().Clear;
        Assert.That(clear.Width.Inches.ToDouble(), Is.EqualTo(width).Within(1e-12), "width of the opening");
        Assert.That(clear.Height.Inches.ToDouble(), Is.EqualTo(height).Within(1e-12), "height of the opening");
        return piece;
    }

    public static double Inches(Length length) => length.Inches.ToDouble();
}
