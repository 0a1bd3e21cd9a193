using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping.Run;

/// <summary>A corner of what is left of a section, and what the edge from it to the next corner comes from.</summary>
/// <param name="Place">In the next two axes in turn.</param>
/// <param name="Wall">The cut that made the edge, as a place in the list of cuts; -1 for the blank.</param>
/// <param name="Edge">The corner of that cut's outline where its own edge starts; for the blank its side: 0 at the least second
/// coordinate, then around.</param>
internal readonly record struct RunCorner(Vec2 Place, int Wall, int Edge);

/// <summary>
/// The section of a board whose cuts run along it: a rectangle with a bite taken for each cut. Only bites that are clear of each
/// other, and that start and end in the outline of the blank by a margin far above all rounding, are taken this way.
/// </summary>
internal sealed class RunSection
{
    private readonly Store<Bite> bites = new();
    private readonly Store<RunCorner> bitten = new();
    private readonly Store<Bounds> taken = new();
    private double width;
    private double height;
    private double margin;

    /// <summary>The corners that are left, counter-clockwise.</summary>
    public Store<RunCorner> Corners { get; } = new();

    /// <summary>False where a cut is not a plain bite.</summary>
    public bool Take(double sectionWidth, double sectionHeight, List<AxialPrism> cuts, double leastClearance)
    {
        (width, height, margin) = (sectionWidth, sectionHeight, leastClearance);
        bites.Clear();
        bitten.Clear();
        taken.Clear();
        Corners.Clear();
        for (var i = 0; i < cuts.Count; i++)
        {
            if (!Bites(cuts[i], i))
            {
                return false;
            }
        }

        if (bites.Count == 0)
        {
            for (var side = 0; side < 4; side++)
            {
                Corners.Add(new(CornerOf(side), -1, side));
            }

            return true;
        }

        return Walk();
    }

    private Vec2 CornerOf(int side) =>
        (side & 3) switch
        {
            0 => new(0, 0),
            1 => new(width, 0),
            2 => new(width, height),
            _ => new(0, height),
        };

    // Finds the one run of a cut's outline that lies within the rectangle.
    private bool Bites(AxialPrism cut, int wall)
    {
        var around = cut.Around();
        (around.MinZ, around.MaxZ) = (0, 0);
        foreach (ref var other in taken.Span)
        {
            if (around.Touches(in other))
            {
                return false;
            }
        }

        taken.Add(around);
        var corners = cut.Corners;
        var first = bitten.Count;
        var (count, isOpen) = (corners.Count, false);

        // From a corner that is not within, so that the run comes in one piece.
        var start = corners.FindIndex(corner => !IsWithin(corner));
        if (start < 0)
        {
            return false;
        }

        for (var i = 0; i < count; i++)
        {
            var edge = (start + i) % count;
            var (a, b) = (corners[edge], corners[(edge + 1) % count]);
            if (!TryClip(a, b, out var from, out var to, out var isIn))
            {
                return false;
            }

            if (!isIn)
            {
                continue;
            }

            if (!isOpen)
            {
                // A second run is more than a bite.
                if (bitten.Count > first)
                {
                    return false;
                }

                bitten.Add(new(from, wall, edge));
            }

            bitten.Add(new(to, wall, (edge + 1) % count));
            isOpen = IsWithin(b);
        }

        if (bitten.Count == first)
        {
            return false;
        }

        // One that ends where it started is a hole that touches a face from within.
        var (begin, end) = (bitten[first].Place, bitten[bitten.Count - 1].Place);
        bites.Add(new(first, bitten.Count - 1, PlaceOf(end)));
        return Math.Abs(begin.X - end.X) + Math.Abs(begin.Y - end.Y) > margin;
    }

    private bool IsWithin(Vec2 p) => p.X > 0 && p.X < width && p.Y > 0 && p.Y < height;

    // The part of an edge within the rectangle. False where it is not clear by the margin whether there is one.
    private bool TryClip(Vec2 a, Vec2 b, out Vec2 from, out Vec2 to, out bool isIn)
    {
        (from, to, isIn) = (a, b, false);
        if (
            (a.X <= 0 && b.X <= 0)
            || (a.X >= width && b.X >= width)
            || (a.Y <= 0 && b.Y <= 0)
            || (a.Y >= height && b.Y >= height)
        )
        {
            return true;
        }

        from = Clipped(a, b);
        to = Clipped(b, a);
        var middle = new Vec2((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        isIn = Depth(middle) > margin;
        if (isIn)
        {
            return IsSettled(from) && IsSettled(to) && Math.Abs(from.X - to.X) + Math.Abs(from.Y - to.Y) > 2 * margin;
        }

        // It passes the rectangle by, or it only grazes a corner of it.
        return Depth(middle) < -margin;
    }

    // Moved along the edge until it is in no coordinate outside; where one of them is reached it holds exactly.
    private Vec2 Clipped(Vec2 p, Vec2 other)
    {
        if (p.X < 0 || p.X > width)
        {
            var x = p.X < 0 ? 0 : width;
            p = new(x, p.Y == other.Y ? p.Y : p.Y + ((other.Y - p.Y) * ((x - p.X) / (other.X - p.X))));
        }

        if (p.Y < 0 || p.Y > height)
        {
            var y = p.Y < 0 ? 0 : height;
            p = new(p.X == other.X ? p.X : p.X + ((other.X - p.X) * ((y - p.Y) / (other.Y - p.Y))), y);
        }

        return p;
    }

    private double Depth(Vec2 p) => Math.Min(Math.Min(p.X, width - p.X), Math.Min(p.Y, height - p.Y));

    // Well within, or exactly on one side and not near a corner.
    private bool IsSettled(Vec2 p)
    {
        var across = Math.Min(p.X, width - p.X);
        var upwards = Math.Min(p.Y, height - p.Y);
        return (across > margin || across == 0) && (upwards > margin || upwards == 0) && across + upwards > margin;
    }

    // How far around the rectangle a point of its outline lies, in sides.
    private double PlaceOf(Vec2 p) =>
        p.Y == 0 ? p.X / width
        : p.X == width ? 1 + (p.Y / height)
        : p.Y == height ? 2 + ((width - p.X) / width)
        : 3 + ((height - p.Y) / height);

    // Back along each bite, then on around the rectangle to the next one.
    private bool Walk()
    {
        var done = 0;
        var bite = 0;
        do
        {
            for (var i = bites[bite].Last; i > bites[bite].First; i--)
            {
                Corners.Add(bitten[i] with { Edge = bitten[i - 1].Edge });
            }

            var at = bitten[bites[bite].First].Place;
            var place = PlaceOf(at);
            bite = Next(place, out var ahead);
            var side = (int)place;
            Corners.Add(new(at, -1, side));
            for (var corner = side + 1; corner < place + ahead; corner++)
            {
                Corners.Add(new(CornerOf(corner), -1, corner & 3));
            }

            done++;
        } while (bite != 0 && done <= bites.Count);

        return done == bites.Count;
    }

    private int Next(double place, out double ahead)
    {
        var best = -1;
        ahead = double.PositiveInfinity;
        for (var i = 0; i < bites.Count; i++)
        {
            var way = bites[i].End - place;
            way += way > 0 ? 0 : 4;
            if (way < ahead)
            {
                (best, ahead) = (i, way);
            }
        }

        return best;
    }

    /// <summary>A run of corners within the rectangle, against the clock around what is left, and where it ends.</summary>
    private readonly record struct Bite(int First, int Last, double End);
}
