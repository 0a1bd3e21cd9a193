using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shaping;

/// <summary>A shape of the maker's own: points from the face to the edge, with the rounds and hollows between them.</summary>
internal static class OwnShape
{
    /// <summary>One point of the shape.</summary>
    /// <param name="Radius">Of the side that leads to the point: above zero a round, below zero a hollow, zero straight.</param>
    internal readonly record struct Step(Length In, Length Down, Length Radius, SourcePlace Place);

    /// <summary>Closes the points over the edge, refusing what no cutter run along the edge could make.</summary>
    public static EdgeShape Of(IReadOnlyList<Step> steps, string called, SourcePlace place)
    {
        if (steps[0].Down != Length.Zero || steps[^1].In != Length.Zero)
            throw Refuse(
                "A shape goes from the face to the edge.",
                place,
                "a first point that is 0 down from the face, and a last one that is 0 in from the edge"
            );
        var outline = new List<OutlineCorner> { (Length.Zero, Length.Zero) };
        for (var n = 0; n < steps.Count; n++)
        {
            var corner = new OutlineCorner(steps[n].In, steps[n].Down);
            if (n + 1 < steps.Count && steps[n + 1].Radius != Length.Zero)
                corner = corner with { Arc = ArcTo(corner, steps[n + 1]) };
            if (corner != outline[^1])
                outline.Add(corner);
        }
        var sides = outline.Skip(1).Zip(outline.Skip(2)).ToList();
        if (outline.Count < 3 || CutOutlines.AreaMm2(outline) <= 0)
            throw Refuse("The shape takes nothing away.", place, "points in the wood, from the face to the edge");
        var (fromAbove, fromTheEdge) = (sides.TrueForAll(RunsOut), sides.TrueForAll(RunsDown));
        if (!fromAbove && !fromTheEdge)
            throw Refuse(
                "The shape is undercut: no cutter gets behind it, neither from the face nor from the edge.",
                place,
                "points that come nearer to the edge one by one, or go further down one by one"
            );
        return new EdgeShape(CutKind.Moulding, called, outline);
    }

    /// <summary>The round or hollow between two points: of the two there are, the shorter one.</summary>
    private static OutlineArc ArcTo(OutlineCorner from, Step to)
    {
        var (a, b) = (to.In - from.A, to.Down - from.B);
        var chord = (a.Millimetres * a.Millimetres) + (b.Millimetres * b.Millimetres);
        var radius = to.Radius.Millimetres;
        if (chord.Sign == 0 || radius * radius * 4 < chord)
            throw Refuse(
                "The points are further apart than twice the radius between them.",
                to.Place,
                "a larger radius, or points nearer to each other"
            );
        // How far the centre lies off the middle of the chord, as a share of the chord.
        var (share, _) = Roots.Of((radius * radius / chord) - new Rational(1, 4), Roots.NumberStep);
        // A round has its centre in the wood, a hollow has it outside.
        var isRound = to.Radius > Length.Zero;
        var side = isRound ? share : -share;
        return new OutlineArc(
            ((from.A + to.In) / 2) + (b * side),
            ((from.B + to.Down) / 2) - (a * side),
            Clockwise: isRound
        );
    }

    /// <summary>Whether a side never goes back in from the edge: a cutter from above the face reaches all of it.</summary>
    private static bool RunsOut((OutlineCorner From, OutlineCorner To) side) =>
        Heads(side).All(heading => heading.In <= Slack);

    private static bool RunsDown((OutlineCorner From, OutlineCorner To) side) =>
        Heads(side).All(heading => heading.Down >= -Slack);

    private const double Slack = 1e-6;

    /// <summary>Where a side heads: at its start and end, and where its round heads straight in, out, up or down between.</summary>
    private static IEnumerable<(double In, double Down)> Heads((OutlineCorner From, OutlineCorner To) side)
    {
        var (from, to) = side;
        if (from.Arc is not { } arc)
        {
            yield return ((to.A - from.A).ToMillimetres(), (to.B - from.B).ToMillimetres());
            yield break;
        }
        var start = Math.Atan2((from.B - arc.B).ToMillimetres(), (from.A - arc.A).ToMillimetres());
        var turn = CutOutlines.AngleOf(from, to, arc) * (arc.Clockwise ? -1 : 1);
        const int Looks = 32;
        for (var n = 0; n <= Looks; n++)
        {
            var at = start + (turn * n / Looks);
            var way = Math.Sign(turn);
            yield return (-Math.Sin(at) * way, Math.Cos(at) * way);
        }
    }

    private static CannotBuildException Refuse(string message, SourcePlace place, string wanted) =>
        new(new InputError(message, place, wanted));
}
