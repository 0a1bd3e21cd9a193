using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping.Run;

/// <summary>
/// The short way for boards whose cuts run along them from end to end (mouldings, rabbets, grooves, bevels), with ends that may
/// be cut off square or at a slant: one section, and two ends. It gives the same solid as the general way.
/// </summary>
internal sealed class RunShaper(BoardWriter writer) : IFlats
{
    private readonly RunSection section = new();
    private readonly List<AxialPrism> walls = [];
    private readonly Store<Vec3> corners = new();
    private readonly Store<int> loop = new();
    private Vec3 size;
    private double margin;
    private int axis;
    private RunEnd low;
    private RunEnd high;

    /// <summary>Null where the board is not of this kind, or not clearly so.</summary>
    /// <param name="blank">The size of the blank.</param>
    /// <param name="cuts">All cuts, of which <paramref name="rest"/> are not lone bores.</param>
    /// <param name="rest">Which cuts to go by.</param>
    /// <param name="bores">The others.</param>
    /// <param name="clearance">A length far above all rounding.</param>
    public Solid? Shape(Vec3 blank, IReadOnlyList<Cut> cuts, List<int> rest, Store<LoneBore> bores, double clearance)
    {
        size = blank;
        margin = clearance;
        for (axis = 0; axis < 3; axis++)
        {
            if (Sort(cuts, rest) && Take())
            {
                return Write(cuts, bores);
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public int FlatAt(int across, bool isUp, Vec3 point)
    {
        if (across == axis)
        {
            return section.Corners.Count + (isUp ? 1 : 0);
        }

        var isFirst = across == (axis + 1) % 3;
        var side = isFirst ? (isUp ? 1 : 3) : (isUp ? 2 : 0);
        var value = point.At(3 - axis - across);
        for (var i = 0; i < section.Corners.Count; i++)
        {
            if (section.Corners[i].Wall >= 0 || section.Corners[i].Edge != side)
            {
                continue;
            }

            var (a, b) = (section.Corners[i].Place, section.Corners[After(i)].Place);
            var (from, to) = isFirst ? (a.Y, b.Y) : (a.X, b.X);
            if (Math.Min(from, to) <= value && value <= Math.Max(from, to))
            {
                return i;
            }
        }

        throw new InvalidOperationException("The mouth of a bore is in no face.");
    }

    private int After(int corner) => corner + 1 == section.Corners.Count ? 0 : corner + 1;

    // Cuts that run from end to end, and at most one that takes each end.
    private bool Sort(IReadOnlyList<Cut> cuts, List<int> rest)
    {
        walls.Clear();
        (low, high) = (RunEnd.Blank(axis, 0), RunEnd.Blank(axis, size.At(axis)));
        foreach (var i in rest)
        {
            // Where a tilted cut is, is only known to within rounding.
            var along = AxialPrism.Read(cuts[i], i, axis);
            if (!Reaches(cuts[i].Around().Grown(along is null ? margin : 0)))
            {
                continue;
            }

            if (along is null)
            {
                return false;
            }

            if (along.Axis == axis && along.Low <= 0 && along.High >= size.At(axis))
            {
                walls.Add(along);
                continue;
            }

            if (
                AxialPrism.Read(cuts[i], i, (axis + 1) % 3) is not { } across
                || !RunEnd.TryTake(across, size, axis, out var isHigh, out var end)
                || (isHigh ? high : low).Cut >= 0
            )
            {
                return false;
            }

            if (isHigh)
            {
                high = end;
            }
            else
            {
                low = end;
            }
        }

        return true;
    }

    private bool Reaches(in Bounds around) =>
        around.MinX < size.X
        && around.MaxX > 0
        && around.MinY < size.Y
        && around.MaxY > 0
        && around.MinZ < size.Z
        && around.MaxZ > 0;

    private bool Take()
    {
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        if (!section.Take(size.At(u), size.At(v), walls, margin))
        {
            return false;
        }

        // Ends that come near each other may cross; they are flat, so that the corners of the blank tell.
        for (var i = 0; i < 4; i++)
        {
            var corner = new Vec2((i & 1) * size.At(u), (i >> 1) * size.At(v));
            if (!(PlaceOf(in high, corner) - PlaceOf(in low, corner) > margin))
            {
                return false;
            }
        }

        return true;
    }

    private double PlaceOf(in RunEnd end, Vec2 corner) => end.At(end.Slope == (axis + 1) % 3 ? corner.X : corner.Y);

    private Solid Write(IReadOnlyList<Cut> cuts, Store<LoneBore> bores)
    {
        var count = section.Corners.Count;
        corners.Clear();
        WriteCorners(in low);
        WriteCorners(in high);
        writer.Start(corners.Span, bores, count + 2, this);
        var mass = new MassSum(corners[0]);
        for (var i = 0; i < count; i++)
        {
            WriteWall(i, ref mass);
        }

        WriteEnd(in low, isHigh: false, ref mass);
        WriteEnd(in high, isHigh: true, ref mass);
        return writer.Finish(size, cuts, mass, pieces: 1);
    }

    private void WriteCorners(in RunEnd end)
    {
        foreach (ref var corner in section.Corners.Span)
        {
            var (x, y, along) = (corner.Place.X, corner.Place.Y, PlaceOf(in end, corner.Place));
            corners.Add(
                axis switch
                {
                    0 => new(along, x, y),
                    1 => new(y, along, x),
                    _ => new(x, y, along),
                }
            );
        }
    }

    private void WriteWall(int i, ref MassSum mass)
    {
        var (count, j) = (section.Corners.Count, After(i));
        ref var corner = ref section.Corners[i];
        var (from, to) = (corner.Place, section.Corners[j].Place);
        Span<int> around = [i, j, count + j, count + i];
        Vec3 normal;
        if (corner.Wall < 0)
        {
            var across = (axis + ((corner.Edge & 1) == 0 ? 2 : 1)) % 3;
            var isUp = corner.Edge is 1 or 2;
            normal = Across(across) * (isUp ? 1 : -1);
            if (writer.HasMouths(i))
            {
                writer.StartFlat(across, isUp);
                writer.AddLoop(around);
                writer.Part(i);
            }
            else
            {
                AddQuadrangle(around);
            }

            writer.AddFace(-1, normal);
        }
        else
        {
            // Outside is to the right of the way.
            var (x, y) = (to.Y - from.Y, from.X - to.X);
            var length = Math.Sqrt((x * x) + (y * y));
            normal = (Across((axis + 1) % 3) * (x / length)) + (Across((axis + 2) % 3) * (y / length));
            var wall = walls[corner.Wall];
            var side = wall.SideOf(corner.Edge);
            AddQuadrangle(around);
            writer.AddFace(wall.Cut, normal, side, wall.SurfaceOf(side));
        }

        mass.Add(around, writer.Vertices, normal);
    }

    private static Vec3 Across(int along) => new(along == 0 ? 1 : 0, along == 1 ? 1 : 0, along == 2 ? 1 : 0);

    // By the shorter diagonal: two sides are parallel, so that both are within.
    private void AddQuadrangle(ReadOnlySpan<int> around)
    {
        var (a, b, c, d) = (around[0], around[1], around[2], around[3]);
        var isFirst = SquaredLength(corners[c] - corners[a]) <= SquaredLength(corners[d] - corners[b]);
        var six = writer.Triangles.Extend(6);
        (six[0], six[1], six[2]) = (a, b, isFirst ? c : d);
        (six[3], six[4], six[5]) = isFirst ? (a, c, d) : (b, c, d);
    }

    private static double SquaredLength(Vec3 way) => Vec3.Dot(way, way);

    // Both ends are parted alike, as seen along the board.
    private void WriteEnd(in RunEnd end, bool isHigh, ref MassSum mass)
    {
        var count = section.Corners.Count;
        loop.Clear();
        for (var i = 0; i < count; i++)
        {
            loop.Add(isHigh ? count + i : count - 1 - i);
        }

        writer.StartFlat(axis, isHigh);
        writer.AddLoop(loop.Span);
        writer.Part(count + (isHigh ? 1 : 0));
        var normal = end.Normal(axis, isHigh);
        writer.AddFace(end.Cut, normal, end.Side);
        mass.Add(loop.Span, writer.Vertices, normal);
    }
}
