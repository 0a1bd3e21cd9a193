using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>The step to which joints are marked out: 1/64 in, or a tenth of a millimetre.</summary>
internal static class MarkingOut
{
    public static Length StepOf(PieceBuilder piece) =>
        piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 64) : Length.FromMillimetres(new Rational(1, 10));

    /// <summary>Where the parts of a stretch end that is divided evenly, each marked to the step.</summary>
    public static IReadOnlyList<Length> Evenly(PieceBuilder piece, Length from, Length to, int parts)
    {
        var step = StepOf(piece);
        var ends = new List<Length> { from };
        for (var n = 1; n < parts; n++)
            ends.Add(from + ((to - from) * new Rational(n, parts)).RoundTo(step));
        ends.Add(to);
        return ends;
    }
}
