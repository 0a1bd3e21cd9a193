using System.Numerics;
using Dryfit.Measure;

namespace Dryfit.Parameters;

/// <summary>Square roots: exact where the root is a fraction, otherwise rounded once.</summary>
public static class Roots
{
    /// <summary>Lengths from roots are rounded to this: 1/640 mm, which every 1/128 in and 0.1 mm is a multiple of.</summary>
    public static Rational LengthStepMm { get; } = new(1, 640);

    /// <summary>Plain numbers from roots are rounded to this: a billionth, so that 100 m times it is still exact to 1/640 mm.</summary>
    public static Rational NumberStep { get; } = new(1, 1_000_000_000);

    /// <summary>The root of a number that is not negative, exact or to the nearest multiple of <paramref name="step"/>.</summary>
    public static (Rational Root, bool Exact) Of(Rational square, Rational step)
    {
        var (above, below) = (WholeRoot(square.Numerator), WholeRoot(square.Denominator));
        if (above * above == square.Numerator && below * below == square.Denominator)
            return (new Rational(above, below), true);
        // sqrt(q)/s = sqrt(q/s²); the nearest whole number n is the greatest with (n - 1/2)² <= q/s², or (2n - 1)² <= 4q/s².
        var scaled = (square * 4 / (step * step)).Floor();
        return (step * ((WholeRoot(scaled) + 1) / 2), false);
    }

    /// <summary>The greatest whole number whose square is not above <paramref name="n"/> (Newton's method on whole numbers).</summary>
    private static BigInteger WholeRoot(BigInteger n)
    {
        if (n.IsZero)
            return n;
        var root = BigInteger.One << (int)((n.GetBitLength() + 1) / 2);
        while (true)
        {
            var next = (root + (n / root)) >> 1;
            if (next >= root)
                return root;
            root = next;
        }
    }
}
