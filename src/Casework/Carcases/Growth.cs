using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>How the openings of a graduated bank grow: each by a ratio, or each by a step.</summary>
/// <param name="Ratio">How many times as large each is as the one before; null where it goes by a step.</param>
/// <param name="Step">How much larger each is; null where it goes by a ratio.</param>
internal sealed record Growth(Figure? Ratio, Figure? Step)
{
    /// <summary>Beyond this, and ten, is a slip of the pen.</summary>
    private static readonly Rational Least = new(1, 10);

    public static Growth Read(Fields fields)
    {
        var (ratio, step) = (fields.NumberOrNull("ratio"), fields.LengthOrNull("step"));
        if (ratio is null == step is null)
            throw new CannotBuildException(
                new InputError(
                    step is null
                        ? "How the openings grow is missing."
                        : "They grow by a ratio or by a step, not by both.",
                    fields.PlaceOf(step is null ? "graduated" : "step"),
                    "ratio: 1.2, or step: 1"
                )
            );
        if (ratio is not null && (ratio.Number < Least || ratio.Number > 10))
            throw new CannotBuildException(
                new InputError("A ratio lies between a tenth and ten.", fields.PlaceOf("ratio"), "a ratio such as 1.2")
            );
        return new Growth(ratio, step);
    }

    /// <summary>
    /// Shares a size: by a ratio each is marked to a sixteenth or a whole millimetre and the last takes what is left; by a
    /// step the sizes are exact.
    /// </summary>
    public IReadOnlyList<Figure> Share(PieceBuilder piece, Figure left, int count, string what, SourcePlace place)
    {
        var sizes = Step is null ? ByRatio(piece, left, count) : ByStep(left, count);
        if (sizes.Any(size => size.Length <= Length.Zero))
            throw new CannotBuildException(
                new InputError(
                    $"{count} openings that grow so have no room in {LengthFormat.Inches.WriteWithUnit(left.Length)} ({LengthFormat.Millimetres.WriteWithUnit(left.Length)}).",
                    place,
                    "fewer of them, or a lesser growth"
                )
            );
        return [.. sizes.Select(size => size.As($"opening {what}"))];
    }

    private List<Figure> ByStep(Figure left, int count)
    {
        var first = ((left - (Step! * new Rational(count * (count - 1), 2))) / count).As("the smallest");
        return [.. Enumerable.Range(0, count).Select(n => n == 0 ? first : first + (Step! * n))];
    }

    private List<Figure> ByRatio(PieceBuilder piece, Figure left, int count)
    {
        var step = piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        var shares = new List<Rational>();
        var share = Rational.One;
        for (var n = 0; n < count; n++)
        {
            shares.Add(share);
            share *= Ratio!.Number;
        }
        var all = shares.Aggregate(Rational.Zero, (sum, one) => sum + one);
        var sizes = new List<Figure>();
        var rest = left;
        for (var n = 0; n < count - 1; n++)
        {
            var size = (left * (shares[n] / all)).RoundTo(step);
            sizes.Add(size);
            rest -= size;
        }
        sizes.Add(rest);
        return sizes;
    }
}
