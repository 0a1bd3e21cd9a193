using System.Numerics;

namespace Dryfit.Solids.Exact;

/// <summary>A number mantissa * 2^exponent that is never rounded: every double is one, and so is every sum and product.</summary>
internal readonly struct Dyadic(BigInteger mantissa, int exponent)
{
    private readonly BigInteger mantissa = mantissa;
    private readonly int exponent = exponent;

    public int Sign => mantissa.Sign;

    public static implicit operator Dyadic(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var fraction = bits & 0xFFFFFFFFFFFFFL;
        var power = (int)((bits >> 52) & 0x7FF);
        if (power == 0)
        {
            power = 1;
        }
        else
        {
            fraction |= 1L << 52;
        }

        if (fraction == 0)
        {
            return default;
        }

        var zeros = BitOperations.TrailingZeroCount(fraction);
        fraction >>= zeros;
        return new(bits < 0 ? -fraction : fraction, power - 1075 + zeros);
    }

    public static Dyadic operator -(Dyadic a) => new(-a.mantissa, a.exponent);

    public static Dyadic operator *(Dyadic a, Dyadic b) => new(a.mantissa * b.mantissa, a.exponent + b.exponent);

    public static Dyadic operator +(Dyadic a, Dyadic b)
    {
        if (a.mantissa.IsZero)
        {
            return b;
        }

        if (b.mantissa.IsZero)
        {
            return a;
        }

        return a.exponent < b.exponent
            ? new(a.mantissa + (b.mantissa << (b.exponent - a.exponent)), a.exponent)
            : new((a.mantissa << (a.exponent - b.exponent)) + b.mantissa, b.exponent);
    }

    public static Dyadic operator -(Dyadic a, Dyadic b) => a + -b;

    /// <summary>The larger absolute value of the two.</summary>
    public static Dyadic Largest(Dyadic a, Dyadic b)
    {
        var (x, y) = (a.Sign < 0 ? -a : a, b.Sign < 0 ? -b : b);
        return (x - y).Sign < 0 ? y : x;
    }

    /// <summary>The quotient as a double, right to about one unit in its last place.</summary>
    public static double Divide(Dyadic a, Dyadic b)
    {
        if (a.mantissa.IsZero)
        {
            return 0;
        }

        // Bring the quotient to some 64 significant bits before the one rounding.
        var shift = 64 + (int)b.mantissa.GetBitLength() - (int)a.mantissa.GetBitLength();
        var quotient = shift >= 0 ? (a.mantissa << shift) / b.mantissa : a.mantissa / (b.mantissa << -shift);
        return Math.ScaleB((double)quotient, a.exponent - b.exponent - shift);
    }
}
