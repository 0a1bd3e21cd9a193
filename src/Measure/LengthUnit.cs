namespace Dryfit.Measure;

/// <summary>The unit a maker works in: it reads bare numbers and writes every size.</summary>
public enum LengthUnit
{
    Millimetre,
    Inch,
}
