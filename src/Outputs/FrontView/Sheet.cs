using System.Globalization;
using Dryfit.Measure;

namespace Dryfit.Outputs.FrontView;

/// <summary>A sheet of paper, lying or standing.</summary>
/// <param name="Name">As a stationer calls it.</param>
internal sealed record Sheet(string Name, double WidthMm, double HeightMm)
{
    private static readonly Sheet[] Metric =
    [
        new("A4", 297, 210), // ISO 216
        new("A4", 210, 297),
        new("A3", 420, 297),
    ];

    private static readonly Sheet[] Inches =
    [
        new("Letter", 279.4, 215.9), // ANSI/ASME Y14.1: A and B
        new("Letter", 215.9, 279.4),
        new("Tabloid", 431.8, 279.4),
    ];

    /// <summary>The sheets of a maker's country by his unit, the handiest first.</summary>
    public static IReadOnlyList<Sheet> For(LengthUnit unit) => unit == LengthUnit.Inch ? Inches : Metric;
}

/// <summary>A drawing scale: so many millimetres of the piece to one of paper.</summary>
/// <param name="Divisor">5 for 1:5.</param>
/// <param name="Name">As it is written on the sheet.</param>
internal sealed record DrawingScale(double Divisor, string Name)
{
    /// <summary>A sheet that reaches this scale is large enough; a larger one would only be in the way.</summary>
    public static double Handy(LengthUnit unit) => unit == LengthUnit.Inch ? 12 : 10;

    /// <summary>The standard scales, the largest picture first: ISO 5455, or inches to the foot.</summary>
    public static IEnumerable<DrawingScale> For(LengthUnit unit) =>
        unit == LengthUnit.Inch ? InchesToTheFoot.Concat(Reductions(100, [1, 2, 5])) : Reductions(1, [1, 2, 5]);

    /// <summary>The same with steps between (1:15, 1:25), for a picture on a page that nobody lays a rule on.</summary>
    public static IEnumerable<DrawingScale> ForFigure(LengthUnit unit) =>
        unit == LengthUnit.Inch ? For(unit) : Reductions(1, [1, 1.5, 2, 2.5, 5]);

    private static readonly DrawingScale[] InchesToTheFoot =
    [
        new(1, "full size"),
        new(2, "6\" = 1'-0\" (1:2)"),
        new(4, "3\" = 1'-0\" (1:4)"),
        new(8, "1 1/2\" = 1'-0\" (1:8)"),
        new(12, "1\" = 1'-0\" (1:12)"),
        new(16, "3/4\" = 1'-0\" (1:16)"),
        new(24, "1/2\" = 1'-0\" (1:24)"),
        new(32, "3/8\" = 1'-0\" (1:32)"),
        new(48, "1/4\" = 1'-0\" (1:48)"),
        new(96, "1/8\" = 1'-0\" (1:96)"),
    ];

    /// <summary>Steps of every power of ten without end, so that a piece of any size fits some sheet.</summary>
    private static IEnumerable<DrawingScale> Reductions(double from, double[] steps)
    {
        for (var decade = from; decade < 1e15; decade *= 10)
        {
            foreach (var step in steps)
                yield return new(decade * step, string.Create(CultureInfo.InvariantCulture, $"1:{decade * step}"));
        }
    }
}
