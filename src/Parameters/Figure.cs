using Dryfit.Measure;

namespace Dryfit.Parameters;

/// <summary>
/// A quantity that knows where it came from. Sums of figures keep their terms, so that <c>why</c> can print the sum a
/// maker would have written: <c>var width = (opening - gap - gap).As("door width")</c>.
/// </summary>
public sealed record Figure(Quantity Quantity, Reason Reason)
{
    /// <summary>The length this figure is.</summary>
    /// <exception cref="InvalidOperationException">It is no length: a fault of ours, formulas are checked when bound.</exception>
    public Length Length =>
        Quantity.IsLength
            ? Length.FromMillimetres(Quantity.Magnitude)
            : throw new InvalidOperationException("The figure is not a length.");

    /// <summary>The plain number this figure is.</summary>
    /// <exception cref="InvalidOperationException">It is no plain number.</exception>
    public Rational Number =>
        Quantity.IsNumber
            ? Quantity.Magnitude
            : throw new InvalidOperationException("The figure is not a plain number.");

    /// <summary>A length with a name and an origin: a shop rule, a measured size, a line of the recipe.</summary>
    public static Figure Given(string name, Length length, Origin origin) =>
        new(Quantity.Of(length), new GivenReason(name, origin));

    /// <summary>A plain number with a name and an origin.</summary>
    public static Figure Given(string name, Rational number, Origin origin) =>
        new(Quantity.Of(number), new GivenReason(name, origin));

    public static Figure operator +(Figure a, Figure b) =>
        new(new(a.Quantity.Magnitude + b.Quantity.Magnitude, SameDimension(a, b)), new SumReason(a, b, Negated: false));

    public static Figure operator -(Figure a, Figure b) =>
        new(new(a.Quantity.Magnitude - b.Quantity.Magnitude, SameDimension(a, b)), new SumReason(a, b, Negated: true));

    /// <summary>A multiple; once a figure is the figure itself.</summary>
    public static Figure operator *(Figure a, Rational factor) =>
        factor == Rational.One
            ? a
            : new(a.Quantity with { Magnitude = a.Quantity.Magnitude * factor }, new TimesReason(a, factor));

    public static Figure operator *(Rational factor, Figure a) => a * factor;

    public static Figure operator *(Figure a, int factor) => a * (Rational)factor;

    public static Figure operator *(int factor, Figure a) => a * (Rational)factor;

    public static Figure operator /(Figure a, Rational divisor) =>
        new(a.Quantity with { Magnitude = a.Quantity.Magnitude / divisor }, new DividedReason(a, divisor));

    public static Figure operator /(Figure a, int divisor) => a / (Rational)divisor;

    /// <summary>The smaller of two, remembering both.</summary>
    public static Figure Min(Figure a, Figure b) =>
        new(
            new(Rational.Min(a.Quantity.Magnitude, b.Quantity.Magnitude), SameDimension(a, b)),
            new ChosenReason("the smaller of", [a, b])
        );

    /// <summary>The larger of two, remembering both.</summary>
    public static Figure Max(Figure a, Figure b) =>
        new(
            new(Rational.Max(a.Quantity.Magnitude, b.Quantity.Magnitude), SameDimension(a, b)),
            new ChosenReason("the larger of", [a, b])
        );

    /// <summary>Rounded to the nearest multiple of a step, and remembered as rounded.</summary>
    public Figure RoundTo(Length step) => new(Quantity.Of(Length.RoundTo(step)), new RoundedReason(this, step));

    /// <summary>The largest multiple of a step that is not above it.</summary>
    public Figure FloorTo(Length step) =>
        new(Quantity.Of(Length.FloorTo(step)), new RoundedReason(this, step, RoundingWay.Down));

    /// <summary>The smallest multiple of a step that is not below it.</summary>
    public Figure CeilingTo(Length step) =>
        new(Quantity.Of(Length.CeilingTo(step)), new RoundedReason(this, step, RoundingWay.Up));

    /// <summary>Rounded to a multiple of a step, which way is asked for.</summary>
    public Figure RoundTo(Length step, RoundingWay way) =>
        way switch
        {
            RoundingWay.Down => FloorTo(step),
            RoundingWay.Up => CeilingTo(step),
            _ => RoundTo(step),
        };

    /// <summary>A plain number rounded to a multiple of a step.</summary>
    public Figure RoundTo(Rational step, RoundingWay way)
    {
        var steps = Number / step;
        var whole = way switch
        {
            RoundingWay.Down => steps.Floor(),
            RoundingWay.Up => steps.Ceiling(),
            _ => steps.Round(),
        };
        return new(Quantity.Of(step * whole), new RoundedNumberReason(this, step, way));
    }

    /// <summary>The same quantity under a name: the heading of its own sum.</summary>
    public Figure As(string name) => new(Quantity, new NamedReason(name, this));

    /// <summary>For people reading code and logs: the value without its reasons, which may be many.</summary>
    public override string ToString() => $"{Quantity} ({Reason.GetType().Name})";

    private static int SameDimension(Figure a, Figure b) =>
        a.Quantity.Dimension == b.Quantity.Dimension
            ? a.Quantity.Dimension
            : throw new InvalidOperationException("Figures of different dimension do not add.");
}
