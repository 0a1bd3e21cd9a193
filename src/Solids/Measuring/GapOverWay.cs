namespace Dryfit.Solids.Measuring;

/// <summary>The least and the greatest gap over a motion, by branch and bound: at half the length of a stretch from its middle
/// no gap differs from the one there by more than what the part moves in between.</summary>
internal sealed class GapOverWay
{
    private readonly Placed moving;
    private readonly Motion motion;
    private readonly Placed standing;
    private readonly double cap;
    private readonly double within;
    private readonly double reach;
    private SweptGap? best;

    public GapOverWay(Placed moving, Motion motion, Placed standing, double cap, double within)
    {
        ArgumentNullException.ThrowIfNull(moving);
        ArgumentNullException.ThrowIfNull(motion);
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(within);
        (this.moving, this.motion, this.standing, this.cap, this.within) = (moving, motion, standing, cap, within);
        reach = motion.Reach(moving.Solid.Bounds.Carried(moving.Frame));
    }

    public SweptGap? Least()
    {
        var parts = new PriorityQueue<(double From, double To), double>();
        Keep(Look(0, cap), 0, isNearer: true);
        Keep(Look(1, cap), 1, isNearer: true);
        parts.Enqueue((0, 1), 0);
        while (parts.TryDequeue(out var part, out _))
        {
            var middle = (part.From + part.To) / 2;
            var slack = reach * (part.To - part.From) / 2;
            var gap = Look(middle, (best?.Distance ?? cap) + slack);
            Keep(gap, middle, isNearer: true);
            var limit = best?.Distance ?? cap;
            var bound = (gap?.Distance ?? double.PositiveInfinity) - slack;
            if (bound <= limit - within && slack >= within)
            {
                parts.Enqueue((part.From, middle), bound);
                parts.Enqueue((middle, part.To), bound);
            }
        }

        return best;
    }

    public SweptGap? Greatest()
    {
        var parts = new PriorityQueue<(double From, double To), double>();
        if (!Keep(Look(0, cap), 0, isNearer: false) || !Keep(Look(1, cap), 1, isNearer: false))
        {
            return null;
        }

        parts.Enqueue((0, 1), 0);
        while (parts.TryDequeue(out var part, out _))
        {
            var middle = (part.From + part.To) / 2;
            var slack = reach * (part.To - part.From) / 2;
            var gap = Look(middle, cap);
            if (!Keep(gap, middle, isNearer: false))
            {
                return null;
            }

            var bound = gap!.Distance + slack;
            if (bound >= best!.Distance + within && slack >= within)
            {
                parts.Enqueue((part.From, middle), -bound);
                parts.Enqueue((middle, part.To), -bound);
            }
        }

        return best;
    }

    private Gap? Look(double share, double upTo) =>
        Pair.Gap(moving with { Frame = motion.At(moving.Frame, share) }, standing, upTo);

    // False where there is no gap to keep.
    private bool Keep(Gap? gap, double share, bool isNearer)
    {
        if (gap is null || gap.Distance > cap)
        {
            return false;
        }

        if (best is null || (isNearer ? gap.Distance < best.Distance : gap.Distance > best.Distance))
        {
            best = new(gap.Distance, share, gap.OnA, gap.OnB);
        }

        return true;
    }
}
