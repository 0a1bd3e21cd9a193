namespace Dryfit.Solids.Exact;

/// <summary>Exact turns in a plane.</summary>
internal static class Orientation
{
    // Rounding of the expression below, from Shewchuk, "Adaptive precision floating-point arithmetic and fast robust
    // geometric predicates" (1997): (3 + 16 u) u with u = 2^-53.
    private const double Bound = 3.3306690738754716e-16;

    /// <summary>1 where a, b, c turn left, -1 where they turn right, 0 where they lie on one line. Never wrong.</summary>
    public static int Turn(double ax, double ay, double bx, double by, double cx, double cy)
    {
        var left = (ax - cx) * (by - cy);
        var right = (ay - cy) * (bx - cx);
        var det = left - right;
        return Math.Abs(det) > Bound * (Math.Abs(left) + Math.Abs(right)) ? Math.Sign(det)
            : left == 0 && right == 0 && NoUnderflow(ax - cx, by - cy, ay - cy, bx - cx) ? 0
            : TurnExactly(ax, ay, bx, by, cx, cy);
    }

    // A product is zero for want of a factor, not for being too small; differences of doubles are zero only when equal.
    private static bool NoUnderflow(double a, double b, double c, double d) => (a == 0 || b == 0) && (c == 0 || d == 0);

    private static int TurnExactly(double ax, double ay, double bx, double by, double cx, double cy)
    {
        if (
            Difference(ax, cx, out var acx)
                & Difference(by, cy, out var bcy)
                & Difference(ay, cy, out var acy)
                & Difference(bx, cx, out var bcx)
            && Math.Abs(acx * bcy) is > 1e-200 and < 1e200
        )
        {
            var left = acx * bcy;
            var right = acy * bcx;
            if (left != right)
            {
                return left > right ? 1 : -1;
            }

            return Math.Sign(Math.FusedMultiplyAdd(acx, bcy, -left) - Math.FusedMultiplyAdd(acy, bcx, -right));
        }

        Dyadic x = cx;
        Dyadic y = cy;
        return ((((Dyadic)ax - x) * ((Dyadic)by - y)) - (((Dyadic)ay - y) * ((Dyadic)bx - x))).Sign;
    }

    // True where the difference of the two doubles is itself a double (Knuth's two-sum has no tail).
    private static bool Difference(double a, double b, out double difference)
    {
        difference = a - b;
        var virtualB = a - difference;
        var virtualA = difference + virtualB;
        return virtualB - b == 0 && a - virtualA == 0;
    }
}
