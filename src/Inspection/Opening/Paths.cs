using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>What a moving body first runs into: after what share of the way, and where.</summary>
internal sealed record Met(Body Own, Body Other, double Share, Vec3 At);

/// <summary>Follows bodies that move as one past others that stand.</summary>
internal static class Paths
{
    /// <summary>The first that bodies meet as they turn; what comes no deeper than <paramref name="within"/> is not met.</summary>
    /// <param name="axis">The axis of the frame along which that of the turn lies.</param>
    /// <param name="others">What stands near the box around the way of a body.</param>
    public static Met? Turning(
        IReadOnlyList<Body> bodies,
        Turn turn,
        Axis axis,
        Func<Box, IEnumerable<Body>> others,
        double within
    )
    {
        var candidates = new List<(Body Own, Body Other, double From)>();
        foreach (var body in bodies)
        {
            foreach (var other in others(Sweep.Room(body.Placed, turn)))
            {
                if (BoxTurn.First(body.Box, turn, axis, other.Box, within) is { } from)
                    candidates.Add((body, other, from));
            }
        }
        Met? first = null;
        // The soonest first, so that the rest need not be followed as far.
        foreach (var (own, other, from) in candidates.OrderBy(candidate => candidate.From))
        {
            var until = first?.Share ?? 1;
            if (from >= until)
                break;
            var rest = turn with { Angle = turn.Angle * (until - from) };
            var start = own.After(turn, from).Placed;
            if (Sweep.FirstMeeting(start, rest, [other.Placed], within) is not { } meeting)
                continue;
            var share = from + (meeting.Share * (until - from));
            if (first is null || share < first.Share)
                first = new(own, other, share, meeting.At);
        }
        return first;
    }

    /// <summary>The first that bodies meet as they slide; what they only slide along, or graze no deeper than
    /// <paramref name="within"/>, is not met.</summary>
    public static Met? Sliding(
        IReadOnlyList<Body> bodies,
        Slide slide,
        Func<Box, IEnumerable<Body>> others,
        double within
    )
    {
        Met? first = null;
        foreach (var body in bodies)
        {
            foreach (var other in others(Sweep.Room(body.Placed, slide)))
            {
                if (
                    Sweep.FirstMeeting(body.Placed, slide, [other.Placed], within) is { } meeting
                    && (first is null || meeting.Share < first.Share)
                    && IsInTheWay(body, slide, meeting.Share, other, within)
                )
                    first = new(body, other, meeting.Share, meeting.At);
            }
        }
        return first;
    }

    /// <summary>Whether a body that goes on a little after it met another comes to stand in it, however else it gives way.</summary>
    private static bool IsInTheWay(Body body, Slide slide, double share, Body other, double within)
    {
        var length = Math.Sqrt(Vec3.Dot(slide.Way, slide.Way));
        var further = body.After(slide, Math.Min(1, share + (4 * within / length))).Placed;
        return Pair.Overlap(further, other.Placed) is { } overlap && overlap.Depth > within;
    }
}
