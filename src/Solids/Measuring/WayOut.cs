namespace Dryfit.Solids.Measuring;

/// <summary>
/// The shortest way along an axis of either board on which two solids that overlap come apart. Along a way a has to go at least
/// as far as the longest line within what they share: it is moved that far and asked again, the way that is shortest so far
/// first.
/// </summary>
internal sealed class WayOut
{
    private const int MostSteps = 64;

    private readonly Placed a;
    private readonly Placed b;
    private readonly double dust;

    private WayOut(Placed a, Placed b, double volume)
    {
        (this.a, this.b) = (a, b);

        // What is left of an overlap by rounding alone is none.
        dust = volume * 1e-9;
    }

    /// <summary>For boards along the axes that share cells.</summary>
    public static (double Depth, Vec3 Way) Least(Placed a, Placed b, CellList cells) =>
        new WayOut(a, b, cells.Volume).Least(way => StepOf(in cells, way));

    /// <summary>For boards that share a solid.</summary>
    public static (double Depth, Vec3 Way) Least(Placed a, Placed b, Solid common) =>
        new WayOut(a, b, common.Volume).Least(way => LumpLength.Along(common, way));

    private (double Depth, Vec3 Way) Least(Func<Vec3, LumpLength> firstStep)
    {
        var ways = Ways();

        // Of ways that are as short, first those that are seen to be out at a glance.
        var queue = new PriorityQueue<(int Way, bool IsExact), (double Depth, bool IsLookedAt, int Way)>();
        for (var i = 0; i < ways.Count; i++)
        {
            var step = firstStep(ways[i]);
            queue.Enqueue((i, step.IsExact), (step.Length, false, i));
        }

        for (var steps = 0; ; steps++)
        {
            queue.TryDequeue(out var next, out var at);
            var way = ways[next.Way];
            var moved = Moved(way, at.Depth);
            if (steps == MostSteps)
            {
                return (Shortened(way, PastEnd(way)), way);
            }

            if (IsOutAtAGlance(moved))
            {
                return (next.IsExact ? at.Depth : Shortened(way, at.Depth), way);
            }

            if (!at.IsLookedAt)
            {
                queue.Enqueue(next, (at.Depth, true, next.Way));
                continue;
            }

            var step = Step(moved, way);
            if (step.Length == 0)
            {
                return (next.IsExact ? at.Depth : Shortened(way, at.Depth), way);
            }

            queue.Enqueue((next.Way, next.IsExact && step.IsExact), (at.Depth + step.Length, false, next.Way));
        }
    }

    // The axes of both boards, each there and back, each once.
    private List<Vec3> Ways()
    {
        var ways = new List<Vec3>();
        foreach (
            var direction in (ReadOnlySpan<Vec3>)[a.Frame.U, a.Frame.V, a.Frame.W, b.Frame.U, b.Frame.V, b.Frame.W]
        )
        {
            if (!ways.Exists(way => Math.Abs(Vec3.Dot(way, direction)) > 1 - 1e-12))
            {
                ways.Add(direction);
                ways.Add(direction * -1);
            }
        }

        return ways;
    }

    private bool IsOutAtAGlance(Placed moved)
    {
        var cells = default(CellList);
        return SharedVolume.AreFar(moved, b) || (SquareRoom.TryPart(moved, b, ref cells) && cells.Count == 0);
    }

    // How far it has to go at least to leave what it still shares; 0 where that is nothing.
    private LumpLength Step(Placed moved, Vec3 way)
    {
        var cells = default(CellList);
        if (SquareRoom.TryPart(moved, b, ref cells))
        {
            return cells.Volume > dust ? StepOf(in cells, way) : default;
        }

        return SharedVolume.Shaped(moved, b) is { } common && common.Volume > dust
            ? LumpLength.Along(common, way)
            : default;
    }

    private static LumpLength StepOf(in CellList cells, Vec3 way) =>
        new(
            cells.LongestAlong(
                Math.Abs(way.X) == 1 ? 0
                : Math.Abs(way.Y) == 1 ? 1
                : 2
            ),
            IsExact: true
        );

    // Back again until they meet: a lump at a slant is longer than the longest line in it.
    private double Shortened(Vec3 way, double depth) =>
        depth - (WayAlong.Measure(Moved(way, depth), b, way * -1, depth)?.Distance ?? 0);

    private Placed Moved(Vec3 way, double by) =>
        a with
        {
            Frame = a.Frame with { Origin = a.Frame.Origin + (way * by) },
        };

    // How far it has to go until it is past all of b.
    private double PastEnd(Vec3 way)
    {
        var (start, end) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var vertex in a.Solid.Vertices)
        {
            start = Math.Min(start, Vec3.Dot(a.Frame.ToWorld(vertex), way));
        }

        foreach (var vertex in b.Solid.Vertices)
        {
            end = Math.Max(end, Vec3.Dot(b.Frame.ToWorld(vertex), way));
        }

        return end - start;
    }
}
