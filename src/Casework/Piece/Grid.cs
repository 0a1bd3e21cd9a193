using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Casework;

/// <summary>
/// The grid of the piece's solids: every length of the piece is a whole number of its units (1/640 mm, or a whole part
/// of that where thirds and the like occur), so that solids are decided exactly on the recipe's own lengths.
/// </summary>
/// <param name="UnitsPerMm">How many grid units make a millimetre: 640 or a multiple.</param>
public sealed record Grid(long UnitsPerMm)
{
    /// <summary>The length in grid units; the nearest whole number where the grid had to be capped.</summary>
    public double ToUnits(Length length) => (double)(length.Millimetres * UnitsPerMm).Round();

    public Vec3 ToUnits(Point point) => new(ToUnits(point.X), ToUnits(point.Y), ToUnits(point.Z));

    public double ToMm(double units) => units / UnitsPerMm;

    /// <summary>Cubic grid units in cubic millimetres.</summary>
    public double ToCubicMm(double cubicUnits) => cubicUnits / UnitsPerMm / UnitsPerMm / UnitsPerMm;

    /// <summary>A measured distance as an exact length: distances along the axes are whole units, others are rounded to
    /// the nearest thousandth of a unit.</summary>
    public Length ToLength(double units)
    {
        var thousandths = (long)Math.Round(units * 1000, MidpointRounding.AwayFromZero);
        return Length.FromMillimetres(new Rational(thousandths, 1000 * (System.Numerics.BigInteger)UnitsPerMm));
    }
}
