namespace Dryfit.Solids.Measuring;

/// <summary>Where a moving part first runs into another: a slide by the way it has along its direction, a turn by going on as
/// far as its gap allows, again and again (conservative advancement).</summary>
internal static class MeetingFinder
{
    public static Meeting? First(Placed moving, Motion motion, IReadOnlyList<Placed> others, double within)
    {
        Meeting? first = null;
        for (var i = 0; i < others.Count; i++)
        {
            // What comes later than the first so far need not be looked for.
            var until = first?.Share ?? 1;
            var found = motion is Slide slide
                ? OnSlide(moving, slide, others[i], until)
                : OnWay(moving, motion, others[i], until, within);
            if (found is { } meeting && (first is null || meeting.Share < first.Share))
            {
                first = new(i, meeting.Share, meeting.At);
            }
        }

        return first;
    }

    private static (double Share, Vec3 At)? OnSlide(Placed moving, Slide slide, Placed other, double until)
    {
        var length = Math.Sqrt(Vec3.Dot(slide.Way, slide.Way));
        if (length == 0)
        {
            return Pair.Overlap(moving, other) is { } overlap ? (0, Middle(overlap)) : null;
        }

        return Pair.GapAlong(moving, other, slide.Way * (1 / length), until * length) is { } gap
            ? (gap.Distance / length, gap.OnB)
            : null;
    }

    private static (double Share, Vec3 At)? OnWay(
        Placed moving,
        Motion motion,
        Placed other,
        double until,
        double within
    )
    {
        var reach = motion.Reach(moving.Solid.Bounds.Carried(moving.Frame));
        var step = within / 2;
        for (var share = 0.0; ; )
        {
            var placed = moving with { Frame = motion.At(moving.Frame, share) };
            if (Pair.Gap(placed, other, (reach * (until - share)) + step) is not { } gap)
            {
                return null;
            }

            if (gap.Distance <= step && Pair.Overlap(placed, other) is { } overlap && overlap.Depth > within)
            {
                return (share, Middle(overlap));
            }

            if (share >= until || reach == 0)
            {
                return null;
            }

            share = Math.Min(until, share + (Math.Max(gap.Distance, step) / reach));
        }
    }

    private static Vec3 Middle(Overlap overlap) => (overlap.Bounds.Min + overlap.Bounds.Max) * 0.5;
}
