using Dryfit.Measure;

namespace Dryfit.Parameters.Formulas;

/// <summary>
/// What a part of a formula gave. A number without a unit is <paramref name="Bare"/> until it meets something: beside a
/// length it is a length in the recipe's unit, as a factor it stays a plain number.
/// </summary>
internal readonly record struct Worked(Figure Figure, bool Bare)
{
    public int Dimension => Figure.Quantity.Dimension;

    public Rational Magnitude => Figure.Quantity.Magnitude;

    /// <summary>The same as a length, where it was a number without a unit.</summary>
    public Worked AsLength(LengthUnit unit) =>
        Bare ? new(Figure with { Quantity = Quantity.Of(Length.From(Magnitude, unit)) }, Bare: false) : this;

    /// <summary>"a length", "an area", "a plain number".</summary>
    public string Kind => KindOf(Dimension);

    public static string KindOf(int dimension) =>
        dimension switch
        {
            0 => "a plain number",
            1 => "a length",
            2 => "an area",
            3 => "a volume",
            < 0 => "a number divided by a length",
            _ => "no size there is",
        };
}
