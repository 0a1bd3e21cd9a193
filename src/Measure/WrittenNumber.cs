namespace Dryfit.Measure;

/// <summary>
/// A number read from a text, as written: exact, not negative, with the unit that stood behind it or none. Feet and
/// inches (<c>4' 7"</c>) read as inches.
/// </summary>
/// <param name="Magnitude">The number in <paramref name="Unit"/>s; zero or above.</param>
/// <param name="Unit">What stood behind the number.</param>
public readonly record struct WrittenNumber(Rational Magnitude, WrittenUnit Unit)
{
    /// <summary>Whether a unit was written; a number without one may be a plain count or a length.</summary>
    public bool HasUnit => Unit != WrittenUnit.None;

    /// <summary>The length meant, a number without a unit taken in <paramref name="bareUnit"/>; exact.</summary>
    public Length ToLength(LengthUnit bareUnit) =>
        Unit switch
        {
            WrittenUnit.Millimetre => Length.FromMillimetres(Magnitude),
            WrittenUnit.Centimetre => Length.FromMillimetres(Magnitude * 10),
            WrittenUnit.Metre => Length.FromMillimetres(Magnitude * 1000),
            WrittenUnit.Inch => Length.FromInches(Magnitude),
            WrittenUnit.Foot => Length.FromInches(Magnitude * 12),
            _ => Length.From(Magnitude, bareUnit),
        };
}

/// <summary>The unit written behind a number.</summary>
public enum WrittenUnit
{
    /// <summary>None: <c>590</c>, <c>3 1/2</c>.</summary>
    None,

    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
}
