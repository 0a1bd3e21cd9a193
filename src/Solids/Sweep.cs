using Dryfit.Solids.Measuring;

namespace Dryfit.Solids;

/// <summary>Measures a part on its way past another.</summary>
public static class Sweep
{
    /// <summary>
    /// The smallest gap between a moving part and one that stands, over the whole motion: found to within
    /// <paramref name="within"/> (grid units) of the true least one, and never less than that. 0 where they touch or overlap
    /// on the way; null where they never come nearer than <paramref name="cap"/>.
    /// </summary>
    /// <remarks>A part of the way on which no point moves further than what is to spare needs no closer look; the rest is
    /// halved until it does (branch and bound).</remarks>
    public static SweptGap? LeastGap(Placed moving, Motion motion, Placed standing, double cap, double within)
    {
        ArgumentNullException.ThrowIfNull(moving);
        ArgumentNullException.ThrowIfNull(motion);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(within);
        var reach = motion.Reach(moving.Solid.Bounds.Carried(moving.Frame));
        var parts = new PriorityQueue<(double From, double To), double>();
        SweptGap? best = null;
        Look(0);
        Look(1);
        parts.Enqueue((0, 1), 0);
        while (parts.TryDequeue(out var part, out _))
        {
            // Any place of this part is within half its length of its middle.
            var middle = (part.From + part.To) / 2;
            var slack = reach * (part.To - part.From) / 2;
            var limit = best?.Distance ?? cap;
            var gap = Look(middle, limit + slack);
            limit = best?.Distance ?? cap;
            if (gap - slack > limit - within || slack < within)
            {
                continue;
            }

            parts.Enqueue((part.From, middle), gap - slack);
            parts.Enqueue((middle, part.To), gap - slack);
        }

        return best;

        double Look(double share, double upTo = double.NaN)
        {
            var placed = moving with { Frame = motion.At(moving.Frame, share) };
            var limit = double.IsNaN(upTo) ? cap : upTo;
            if (Pair.Gap(placed, standing, limit) is not { } gap)
            {
                return double.PositiveInfinity;
            }

            if (gap.Distance <= cap && (best is null || gap.Distance < best.Distance))
            {
                best = new(gap.Distance, share, gap.OnA, gap.OnB);
            }

            return gap.Distance;
        }
    }
}

/// <summary>The least gap over a motion: how far, after what share (0 to 1) of the way, and between which points.</summary>
public sealed record SweptGap(double Distance, double Share, Vec3 OnMoving, Vec3 OnStanding);
