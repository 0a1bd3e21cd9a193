using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Casework;

/// <summary>
/// Looks at what stands in one turned frame from another. Within one frame nothing is rounded, nor are quarter turns; all
/// else is to the precision of a double. Null is the piece's own frame.
/// </summary>
public static class Turned
{
    /// <summary>A frame (of a board, say) given in the frame of one turn, as it is seen from that of another.</summary>
    /// <param name="own">In units of which <paramref name="unitsPerMm"/> make a millimetre.</param>
    /// <param name="of">The turn in whose frame it is given.</param>
    /// <param name="from">The turn in whose frame it is wanted.</param>
    public static Frame Seen(this Frame own, PlanTurn? of, PlanTurn? from, long unitsPerMm)
    {
        foreach (var step in Steps(of, from, unitsPerMm))
            own = new(step.Point(own.Origin), step.Way(own.U), step.Way(own.V), step.Way(own.W));
        return own;
    }

    /// <summary>A point given in the frame of one turn, as it is seen from that of another.</summary>
    public static Vec3 Seen(this Vec3 point, PlanTurn? of, PlanTurn? from, long unitsPerMm)
    {
        foreach (var step in Steps(of, from, unitsPerMm))
            point = step.Point(point);
        return point;
    }

    /// <summary>The angle in plan between two frames in degrees, from 0 up to 360: how far things of the one are turned in the other.</summary>
    public static Rational Degrees(PlanTurn? of, PlanTurn? from)
    {
        var sum = Rational.Zero;
        foreach (var turn in Chain(of).Where(turn => turn.About == Axis.Z))
            sum += turn.Degrees;
        foreach (var turn in Chain(from).Where(turn => turn.About == Axis.Z))
            sum -= turn.Degrees;
        return Whole(sum);
    }

    /// <summary>Turns to do one after the other: out of the frames of the one, then into those of the other.</summary>
    private static IEnumerable<Step> Steps(PlanTurn? of, PlanTurn? from, long unitsPerMm)
    {
        var (outwards, inwards) = (Chain(of), Chain(from));
        // The frames that both stand in make no difference.
        while (outwards.Count > 0 && inwards.Count > 0 && outwards[^1] == inwards[^1])
        {
            outwards.RemoveAt(outwards.Count - 1);
            inwards.RemoveAt(inwards.Count - 1);
        }
        foreach (var turn in outwards)
            yield return Step.Of(turn, turn.Degrees, unitsPerMm);
        for (var n = inwards.Count - 1; n >= 0; n--)
            yield return Step.Of(inwards[n], -inwards[n].Degrees, unitsPerMm);
    }

    /// <summary>A turn and those it stands in, the innermost first.</summary>
    private static List<PlanTurn> Chain(PlanTurn? turn)
    {
        var chain = new List<PlanTurn>();
        for (; turn is not null; turn = turn.Within)
            chain.Add(turn);
        return chain;
    }

    private static Rational Whole(Rational degrees) => degrees - ((Rational)(degrees / 360).Floor() * 360);

    /// <param name="Pivot">A point on the line; 0 along the line itself, so that nothing is rounded there.</param>
    private readonly record struct Step(Vec3 Pivot, Axis About, double Cos, double Sin)
    {
        public static Step Of(PlanTurn turn, Rational degrees, long unitsPerMm)
        {
            var whole = Whole(degrees);
            var quarters = whole / 90;
            var (sin, cos) = quarters.IsWhole
                ? ((int)quarters.Numerator) switch
                {
                    0 => (0, 1),
                    1 => (1, 0),
                    2 => (0, -1),
                    _ => (-1, 0),
                }
                : Math.SinCos(whole.ToDouble() * Math.PI / 180);
            return new(new(On(Axis.X), On(Axis.Y), On(Axis.Z)), turn.About, cos, sin);

            double On(Axis axis) => axis == turn.About ? 0 : (turn.Pivot[axis].Millimetres * unitsPerMm).ToDouble();
        }

        public Vec3 Point(Vec3 p) => Way(p - Pivot) + Pivot;

        public Vec3 Way(Vec3 v) =>
            About switch
            {
                Axis.X => new(v.X, (v.Y * Cos) - (v.Z * Sin), (v.Y * Sin) + (v.Z * Cos)),
                Axis.Y => new((v.Z * Sin) + (v.X * Cos), v.Y, (v.Z * Cos) - (v.X * Sin)),
                _ => new((v.X * Cos) - (v.Y * Sin), (v.X * Sin) + (v.Y * Cos), v.Z),
            };
    }
}
