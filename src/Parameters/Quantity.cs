using Dryfit.Measure;

namespace Dryfit.Parameters;

/// <summary>
/// An exact number with its dimension: a plain number (0), a length (1), an area (2) or a volume (3), in millimetres to
/// that power.
/// </summary>
public readonly record struct Quantity(Rational Magnitude, int Dimension)
{
    public static Quantity Of(Length length) => new(length.Millimetres, 1);

    public static Quantity Of(Rational number) => new(number, 0);

    public bool IsLength => Dimension == 1;

    public bool IsNumber => Dimension == 0;

    public Quantity Times(Rational factor) => this with { Magnitude = Magnitude * factor };

    /// <summary>For people reading code and logs.</summary>
    public override string ToString() =>
        Dimension switch
        {
            0 => Magnitude.ToString(),
            1 => $"{Magnitude} mm",
            _ => $"{Magnitude} mm^{Dimension}",
        };
}
