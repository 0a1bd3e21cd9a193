using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// Whether a box that turns about an axis along X or Z can come to stand in another box: in the plane across the axis a
/// rectangle that turns against one that stands. It never says no where the two do meet, and costs next to nothing, so that
/// only what may meet is measured on its solids.
/// </summary>
internal static class BoxTurn
{
    /// <summary>The share of the turn up to which the two share no more than <paramref name="within"/> for certain; null where
    /// that is so to the end.</summary>
    /// <param name="within">Above 0, in the unit of the boxes.</param>
    public static double? First(Box moving, Turn turn, Axis axis, Box standing, double within)
    {
        if (Shared(moving, standing, axis) <= within)
            return null;
        var (rect, other) = (Rect.Of(moving, turn, axis), Rect.Of(standing, turn, axis));
        var reach = rect.Reach();
        var angle = Math.Abs(turn.Angle);
        var sign = Math.Sign(turn.Angle);
        // Nothing is gained by steps that move no point further than a quarter of what may be shared.
        var least = within / 4;
        for (var at = 0.0; at <= angle; )
        {
            var spare = rect.Turned(sign * at).Apart(other) + within;
            if (spare < least)
                return at / angle;
            at += spare / reach;
        }
        return null;
    }

    private static double Shared(Box a, Box b, Axis axis)
    {
        var way = axis.Measured();
        return Math.Min(a.Max.On(way), b.Max.On(way)) - Math.Max(a.Min.On(way), b.Min.On(way));
    }

    /// <summary>A rectangle by its middle, the way of its first side, and half its sides; the axis is at 0.</summary>
    private readonly record struct Rect(double X, double Y, double Cos, double Sin, double HalfX, double HalfY)
    {
        // Across Z: X and Y; across X: Y and Z. Both are turned the same way about their axis.
        public static Rect Of(Box box, Turn turn, Axis axis)
        {
            var (first, second) = axis == Axis.Z ? (Vec3Axis.X, Vec3Axis.Y) : (Vec3Axis.Y, Vec3Axis.Z);
            var (x0, x1) = (box.Min.On(first), box.Max.On(first));
            var (y0, y1) = (box.Min.On(second), box.Max.On(second));
            return new(
                ((x0 + x1) / 2) - turn.AxisPoint.On(first),
                ((y0 + y1) / 2) - turn.AxisPoint.On(second),
                1,
                0,
                (x1 - x0) / 2,
                (y1 - y0) / 2
            );
        }

        /// <summary>How far its furthest corner is from the axis.</summary>
        public double Reach() => Math.Sqrt(Square(Math.Abs(X) + HalfX) + Square(Math.Abs(Y) + HalfY));

        public Rect Turned(double angle)
        {
            var (sin, cos) = Math.SinCos(angle);
            return this with { X = (X * cos) - (Y * sin), Y = (X * sin) + (Y * cos), Cos = cos, Sin = sin };
        }

        /// <summary>How far they are apart at least; below zero by how far one must move to be out of the other.</summary>
        /// <remarks>Of two rectangles the way out is across a side of either.</remarks>
        public double Apart(Rect other)
        {
            var (x, y) = (other.X - X, other.Y - Y);
            var (cos, sin) = (Math.Abs(Cos), Math.Abs(Sin));
            var apart = Math.Abs(x) - other.HalfX - (HalfX * cos) - (HalfY * sin);
            apart = Math.Max(apart, Math.Abs(y) - other.HalfY - (HalfX * sin) - (HalfY * cos));
            apart = Math.Max(
                apart,
                Math.Abs((x * Cos) + (y * Sin)) - HalfX - (other.HalfX * cos) - (other.HalfY * sin)
            );
            return Math.Max(apart, Math.Abs((y * Cos) - (x * Sin)) - HalfY - (other.HalfX * sin) - (other.HalfY * cos));
        }

        private static double Square(double x) => x * x;
    }
}
