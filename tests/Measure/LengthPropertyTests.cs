using CsCheck;

namespace Dryfit.Measure.Tests;

public sealed class LengthPropertyTests
{
    private static readonly Length OneHundredTwentyEighth = Length.FromInches(0, 1, 128);
    private static readonly Length OneTenth = Length.FromMillimetres(new Rational(1, 10));

    private static readonly int[] Parts = [1, 2, 8, 10, 32, 64, 100, 3];

    private static readonly LengthFormat To128Ths = new(LengthUnit.Inch, OneHundredTwentyEighth);

    private static readonly Gen<Length> InchLength = Gen.Int[-100_000, 100_000].Select(k => OneHundredTwentyEighth * k);
    private static readonly Gen<Length> MetricLength = Gen.Int[-99_999, 99_999].Select(k => OneTenth * k);
    private static readonly Gen<Length> Any = Gen.Select(InchLength, MetricLength, Gen.Int[1, 30])
        .Select((inch, metric, parts) => (inch + metric) / parts);

    private static readonly Gen<LengthFormat> Format = Gen.Select(
            Gen.Bool.Select(inch => inch ? LengthUnit.Inch : LengthUnit.Millimetre),
            Gen.Int[1, 5],
            Gen.Int[0, Parts.Length - 1].Select(i => Parts[i])
        )
        .Select((unit, n, d) => new LengthFormat(unit, Length.From(new Rational(n, d), unit)));

    [Fact]
    public void Printing_then_reading_inches_to_128ths_changes_nothing() =>
        InchLength.Sample(length => Read(To128Ths.Write(length), LengthUnit.Inch) == length);

    [Fact]
    public void Printing_then_reading_millimetres_to_tenths_changes_nothing() =>
        MetricLength.Sample(length => Read(LengthFormat.Millimetres.Write(length), LengthUnit.Millimetre) == length);

    [Fact]
    public void What_is_shown_with_its_unit_reads_the_same_whatever_the_unit_of_bare_numbers() =>
        Gen.Select(Format, Any)
            .Sample(
                (format, length) =>
                {
                    var shown = format.Shown(length);
                    var text = format.WriteWithUnit(shown);
                    return !format.Hides(shown)
                        && Read(text, LengthUnit.Inch) == shown
                        && Read(text, LengthUnit.Millimetre) == shown
                        && format.WriteWithUnit(Read(text, LengthUnit.Inch)) == text;
                }
            );

    [Fact]
    public void Something_is_written_behind_exactly_where_rounding_hides_something() =>
        Gen.Select(Format, Any)
            .Sample(
                (format, length) =>
                {
                    var written = format.Write(length);
                    return written.StartsWith(format.Write(format.Shown(length)), StringComparison.Ordinal)
                        && format.Hides(length)
                            == (
                                written.Contains(" + ", StringComparison.Ordinal)
                                || written.Contains(" - ", StringComparison.Ordinal)
                            );
                }
            );

    [Fact]
    public void Sums_of_inches_and_millimetres_in_any_order_are_exact() =>
        Gen.Select(Gen.Int[-9999, 9999].Array[0, 20], Gen.Int[-9999, 9999].Array[0, 20])
            .Sample(
                (inches, tenths) =>
                {
                    var sum = Length.Zero;
                    foreach (var k in inches)
                        sum += OneHundredTwentyEighth * k;
                    foreach (var k in tenths)
                        sum += OneTenth * k;
                    // 1/128 in is 127/640 mm and 0.1 mm is 64/640 mm.
                    return sum.Millimetres * 640 == (inches.Sum() * 127) + (tenths.Sum() * 64);
                }
            );

    [Fact]
    public void A_divided_opening_adds_up_again() =>
        Gen.Select(Any, Gen.Int[1, 30])
            .Sample(
                (length, parts) =>
                    Enumerable.Repeat(length / parts, parts).Aggregate(Length.Zero, (a, b) => a + b) == length
            );

    [Fact]
    public void Rounding_is_monotone_and_never_further_off_than_half_a_step() =>
        Gen.Select(Format, Any, Any)
            .Sample(
                (format, a, b) =>
                    (a > b || format.Shown(a) <= format.Shown(b))
                    && Length.Abs(format.Shown(a) - a) * 2 <= format.Step
                    && a.FloorTo(format.Step) <= a
                    && a.CeilingTo(format.Step) >= a
                    && a.CeilingTo(format.Step) - a.FloorTo(format.Step) <= format.Step
            );

    [Fact]
    public void Whatever_the_text_reading_gives_a_length_or_a_failure_within_it() =>
        Gen.OneOf(Gen.String, Gen.String["0123456789 ./-'\"½inmcft⁄,e"])
            .Sample(text =>
            {
                var result = LengthText.Parse(text, LengthUnit.Inch);
                var failure = result.Failure;
                return result.Ok
                    ? Length.Abs(result.Length) <= LengthText.Longest
                    : failure!.Position >= 0 && failure.Position <= text.Length && failure.Extent >= 1;
            });

    [Fact]
    public void A_number_read_inside_a_text_reads_the_same_alone() =>
        Gen.String["0123456789 ./-'\"½inmcft⁄,e"]
            .Sample(text =>
            {
                var number = LengthText.ReadPrefix(text, 0, out var end, out var failure);
                return number is null
                    ? failure is not null && end == 0
                    : failure is null
                        && LengthText.ReadPrefix(text.AsSpan(0, end), 0, out var same, out _) == number
                        && same == end;
            });

    private static Length Read(string text, LengthUnit unit) => LengthText.Parse(text, unit).Length;
}
