using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// Triangulates a face by one sweep across it. What lies behind the sweep line between two boundaries is done but for a chain of
/// corners that bulges forwards; each new corner cuts off all of the chain that it sees. A corner that starts a hole parts a
/// region at the foremost corner of its chain, one that ends a hole joins two (the monotone partition of Garey, Johnson,
/// Preparata and Tarjan, 1978, and their triangulation of the parts, done in one go).
/// </summary>
internal sealed class FaceSweep(FacePoints points)
{
    private readonly Store<int> order = new();
    private readonly Store<int> next = new();
    private readonly Store<int> previous = new();
    private readonly Store<int> rank = new();
    private readonly Store<int> regionBelow = new();
    private readonly Store<int> regionAbove = new();
    private readonly Store<Region> regions = new();
    private readonly Store<int> active = new();
    private readonly Store<Link> links = new();
    private int[] keysOrder = [];
    private double[] keys = [];
    private Store<int> triangles = new();

    /// <summary>Fills in the triangles. Order and turns being exact, it does so for every face whose sides do not cross, also where
    /// they touch: every corner there has its own part of the face.</summary>
    /// <exception cref="InvalidOperationException">Sides of the face cross.</exception>
    public void Run(ReadOnlySpan<int> starts, Store<int> into)
    {
        triangles = into;
        triangles.Clear();
        regions.Clear();
        active.Clear();
        links.Clear();
        Join(starts);
        Sort();
        for (var i = 0; i < order.Count; i++)
        {
            if (!Visit(order[i]))
            {
                throw new InvalidOperationException("A face of the solid crosses itself.");
            }
        }

        if (triangles.Count != 3 * (points.Count + (2 * (starts.Length - 1)) - 2))
        {
            throw new InvalidOperationException("A face of the solid is not filled.");
        }
    }

    private void Join(ReadOnlySpan<int> starts)
    {
        var count = points.Count;
        next.Resize(count, 0);
        previous.Resize(count, 0);
        for (var l = 0; l < starts.Length; l++)
        {
            var (start, end) = (starts[l], l + 1 < starts.Length ? starts[l + 1] : count);
            for (var i = start; i < end; i++)
            {
                next[i] = i + 1 < end ? i + 1 : start;
                previous[i] = i > start ? i - 1 : end - 1;
            }
        }

        regionBelow.Resize(count, 0);
        regionAbove.Resize(count, 0);
        regionBelow.Span.Fill(-1);
        regionAbove.Span.Fill(-1);
    }

    // Along x, then y; turns are what they are whichever way the sweep goes.
    private void Sort()
    {
        var count = points.Count;
        if (keys.Length < count)
        {
            keys = new double[2 * count];
            keysOrder = new int[2 * count];
        }

        for (var i = 0; i < count; i++)
        {
            keys[i] = points.X(i);
            keysOrder[i] = i;
        }

        Array.Sort(keys, keysOrder, 0, count);
        SortLevel(count);

        // What is out of order by its rounding: little, by insertion.
        for (var i = 1; i < count; i++)
        {
            var moving = keysOrder[i];
            var at = i;
            while (at > 0 && IsAfter(keysOrder[at - 1], moving))
            {
                keysOrder[at] = keysOrder[at - 1];
                at--;
            }

            keysOrder[at] = moving;
        }

        order.Clear();
        rank.Resize(count, 0);
        for (var i = 0; i < count; i++)
        {
            order.Add(keysOrder[i]);
            rank[keysOrder[i]] = i;
        }
    }

    // Corners in a line across the sweep, as those of bores in a row are, by their other coordinate.
    private void SortLevel(int count)
    {
        for (var first = 0; first < count; )
        {
            var last = first + 1;
            while (last < count && keys[last] == keys[first])
            {
                last++;
            }

            if (last - first > 2)
            {
                for (var i = first; i < last; i++)
                {
                    keys[i] = points.Y(keysOrder[i]);
                }

                Array.Sort(keys, keysOrder, first, last - first);
            }

            first = last;
        }
    }

    private bool IsAfter(int a, int b)
    {
        var apart = points.Compare(a, b);
        return apart > 0 || (apart == 0 && a > b);
    }

    private bool Visit(int v)
    {
        var isBeforePrevious = rank[v] < rank[previous[v]];
        var isBeforeNext = rank[v] < rank[next[v]];
        if (isBeforePrevious && isBeforeNext)
        {
            return points.Turn(previous[v], v, next[v]) > 0 ? Start(v) : Split(v);
        }

        if (!isBeforePrevious && !isBeforeNext)
        {
            return points.Turn(previous[v], v, next[v]) > 0 ? End(v) : Merge(v);
        }

        if (isBeforeNext)
        {
            // The boundary runs forwards: material above it.
            var region = regionBelow[v];
            if (region < 0)
            {
                return false;
            }

            regions[region].Low = ReduceLow(v, regions[region].Low);
            Expect(region);
            return true;
        }

        var under = regionAbove[v];
        if (under < 0)
        {
            return false;
        }

        regions[under].High = ReduceHigh(v, regions[under].High);
        Expect(under);
        return true;
    }

    private bool Start(int v)
    {
        var link = links.Add(new(v, -1, -1));
        var region = regions.Add(new() { Low = link, High = link });
        active.Add(region);
        Expect(region);
        return true;
    }

    private bool End(int v)
    {
        var region = regionBelow[v];
        if (region < 0 || regionAbove[v] != region)
        {
            return false;
        }

        var low = ReduceLow(v, regions[region].Low);
        var isDone = links[low].Up >= 0 && links[links[low].Up].Up < 0;
        Leave(region);
        return isDone;
    }

    private bool Split(int v)
    {
        var region = Around(v);
        if (region < 0)
        {
            return false;
        }

        // From the foremost corner of the chain, which the new one sees.
        var (low, high) = (regions[region].Low, regions[region].High);
        var foremost = low;
        for (var i = low; i >= 0; i = links[i].Up)
        {
            if (rank[links[i].Corner] > rank[links[foremost].Corner])
            {
                foremost = i;
            }
        }

        var copy = links.Add(links[foremost] with { Down = -1 });
        if (links[copy].Up >= 0)
        {
            links[links[copy].Up].Down = copy;
        }

        links[foremost].Up = -1;
        var upper = regions.Add(new() { Low = copy, High = foremost == high ? copy : high });
        regions[region].High = foremost;
        active.Add(upper);
        regions[region].High = ReduceHigh(v, regions[region].High);
        regions[upper].Low = ReduceLow(v, regions[upper].Low);
        Expect(region);
        Expect(upper);
        return true;
    }

    private bool Merge(int v)
    {
        // The hole's lower side ends the region under it, its upper side the region over it.
        var (upper, lower) = (regionBelow[v], regionAbove[v]);
        if (upper < 0 || lower < 0 || upper == lower)
        {
            return false;
        }

        var high = ReduceHigh(v, regions[lower].High);
        var low = ReduceLow(v, regions[upper].Low);
        links[high].Up = links[low].Up;
        if (links[low].Up >= 0)
        {
            links[links[low].Up].Down = high;
        }

        regions[lower].High = regions[upper].High == low ? high : regions[upper].High;
        Leave(upper);
        Expect(lower);
        return true;
    }

    // Cuts off with a new lower corner what it sees of the chain; gives the link of the new corner.
    private int ReduceLow(int v, int low)
    {
        var at = low;
        while (links[at].Up >= 0)
        {
            var up = links[at].Up;
            if (points.Turn(v, links[up].Corner, links[at].Corner) <= 0)
            {
                break;
            }

            Add(v, links[up].Corner, links[at].Corner);
            at = up;
        }

        var link = links.Add(new(v, -1, at));
        links[at].Down = link;
        return link;
    }

    private int ReduceHigh(int v, int high)
    {
        var at = high;
        while (links[at].Down >= 0)
        {
            var down = links[at].Down;
            if (points.Turn(v, links[at].Corner, links[down].Corner) <= 0)
            {
                break;
            }

            Add(v, links[at].Corner, links[down].Corner);
            at = down;
        }

        var link = links.Add(new(v, at, -1));
        links[at].Up = link;
        return link;
    }

    private void Add(int a, int b, int c)
    {
        triangles.Add(a);
        triangles.Add(b);
        triangles.Add(c);
    }

    // The next corners of a region's lower and upper boundary will find it by these.
    private void Expect(int region)
    {
        regionBelow[next[links[regions[region].Low].Corner]] = region;
        regionAbove[previous[links[regions[region].High].Corner]] = region;
    }

    private void Leave(int region)
    {
        for (var i = 0; i < active.Count; i++)
        {
            if (active[i] == region)
            {
                active[i] = active[active.Count - 1];
                active.CutBack(active.Count - 1);
                return;
            }
        }
    }

    // The region with a corner between its two boundaries.
    private int Around(int v)
    {
        foreach (var region in active.Span)
        {
            var low = links[regions[region].Low].Corner;
            var high = links[regions[region].High].Corner;
            if (points.Turn(low, next[low], v) > 0 && points.Turn(previous[high], high, v) > 0)
            {
                return region;
            }
        }

        return -1;
    }

    private struct Region
    {
        public int Low;
        public int High;
    }

    private record struct Link(int Corner, int Down, int Up);
}
