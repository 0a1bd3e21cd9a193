using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>The bodies of one construction with their faces: blanks that are kept and cuts that are taken away.</summary>
internal sealed class BodyTable(PlaneTable planes)
{
    private readonly List<Bounds> keptBounds = [];

    public Store<Body> Bodies { get; } = new();

    public Store<BodyFace> Faces { get; } = new();

    /// <summary>The corners of all bodies, a run each, rounded.</summary>
    public Store<Vec3> Corners { get; } = new();

    /// <summary>What all blanks share: nothing outside matters.</summary>
    public Bounds Room { get; private set; }

    private double Margin => planes.Scale * 1e-11;

    public void Clear()
    {
        Bodies.Clear();
        Faces.Clear();
        Corners.Clear();
        keptBounds.Clear();
    }

    /// <summary>Adds a blank from 0 to size, in its place.</summary>
    public void AddBlank(Vec3 size, in Frame? place)
    {
        AddBox(default, size, -1, isKept: true, in place);
        var bounds = Bodies[Bodies.Count - 1].Bounds;
        Room = keptBounds.Count == 0 ? bounds : Room.Common(in bounds);
        keptBounds.Add(bounds);
    }

    /// <summary>Adds a cut; one that does not come near the blanks is left out.</summary>
    public void AddCut(Cut cut, int index, in Frame? place)
    {
        switch (cut)
        {
            case BoxCut box:
                if (box.Min.X < box.Max.X && box.Min.Y < box.Max.Y && box.Min.Z < box.Max.Z)
                {
                    AddBox(box.Min, box.Max, index, isKept: false, in place);
                }

                break;
            case PrismCut prism:
                AddPrism(prism.Frame, prism.Outline, prism.Height, index, isKept: false, in place);
                break;
            case BoreCut bore:
                AddPrism(bore.Frame, bore.Corners(), bore.Depth, index, isKept: false, in place);
                break;
            default:
                throw new ArgumentException($"No such kind of cut: {cut}.", nameof(cut));
        }
    }

    private void AddBox(Vec3 min, Vec3 max, int cut, bool isKept, in Frame? place)
    {
        Span<Vec2> corners = [new(min.X, min.Y), new(max.X, min.Y), new(max.X, max.Y), new(min.X, max.Y)];
        AddUpright(Frame.Identity, [.. corners], min.Z, max.Z, cut, isKept, in place);
    }

    private void AddPrism(
        in Frame frame,
        IReadOnlyList<Vec2> outline,
        double height,
        int cut,
        bool isKept,
        in Frame? place
    )
    {
        if (height > 0)
        {
            AddUpright(in frame, [.. outline], 0, height, cut, isKept, in place);
        }
    }

    // Prisms along an axis are given in that axis' own frame, so that equal planes of different cuts are seen as such;
    // directions that only swap and turn axes keep coordinates exact.
    private void AddUpright(
        in Frame given,
        List<Vec2> outline,
        double low,
        double high,
        int cut,
        bool isKept,
        in Frame? place
    )
    {
        var frame = given;
        var isPlaced = place is not null;
        if (place is { } at && IsAxial(at))
        {
            frame = new(at.ToWorld(frame.Origin), Turned(at, frame.U), Turned(at, frame.V), Turned(at, frame.W));
            isPlaced = false;
        }

        int index;
        if (!isPlaced && IsAxial(in frame))
        {
            index = AxisOf(frame.W);
            for (var i = 0; i < outline.Count; i++)
            {
                var p = frame.ToWorld(new(outline[i].X, outline[i].Y, 0));
                outline[i] = new(Coordinate(p, (index + 1) % 3), Coordinate(p, (index + 2) % 3));
            }

            var (a, b) = (
                Coordinate(frame.ToWorld(new(0, 0, low)), index),
                Coordinate(frame.ToWorld(new(0, 0, high)), index)
            );
            (low, high) = (Math.Min(a, b), Math.Max(a, b));
            if (low == high)
            {
                return;
            }
        }
        else
        {
            index = planes.AddFrame(in frame, isPlaced ? place : null);
        }

        var corners = Outline.Tidy(outline);
        if (corners.Count == 0 || !ComesNear(index, corners, low, high, isKept))
        {
            return;
        }

        foreach (var piece in Outline.Pieces(corners))
        {
            AddPiece(index, piece, low, high, cut, isKept);
        }
    }

    private bool ComesNear(int frame, List<Vec2> corners, double low, double high, bool isKept)
    {
        var bounds = Bounds.Empty;
        foreach (var corner in corners)
        {
            bounds.Include(planes.ToWorld(frame, new(corner.X, corner.Y, low)));
            bounds.Include(planes.ToWorld(frame, new(corner.X, corner.Y, high)));
        }

        return isKept || bounds.Grown(Margin).Touches(Room);
    }

    private void AddPiece(int frame, List<PieceSide> piece, double low, double high, int cut, bool isKept)
    {
        var body = Bodies.Count;
        var first = Faces.Count;
        var all = Bounds.Empty;
        var firstCorner = Corners.Count;
        var bottom = Bounds.Empty;
        var top = Bounds.Empty;
        foreach (var wall in piece)
        {
            var plane = planes.AddWall(frame, wall.A.X, wall.A.Y, wall.B.X, wall.B.Y, out var outward);
            var (a, b) = (wall.From, wall.To);
            var (low0, high0) = (planes.ToWorld(frame, new(a.X, a.Y, low)), planes.ToWorld(frame, new(a.X, a.Y, high)));
            var side = Bounds.Empty;
            side.Include(low0);
            side.Include(high0);
            Corners.Add(low0);
            Corners.Add(high0);
            side.Include(planes.ToWorld(frame, new(b.X, b.Y, low)));
            side.Include(planes.ToWorld(frame, new(b.X, b.Y, high)));
            bottom.Include(low0);
            top.Include(high0);
            Faces.Add(
                new()
                {
                    Body = body,
                    Plane = plane,
                    Outward = outward,
                    IsSeam = wall.IsSeam,
                    Bounds = side.Grown(Margin),
                }
            );
            all = all.Union(in side);
        }

        AddCapFace(frame, body, low, -1, bottom.Grown(Margin));
        AddCapFace(frame, body, high, 1, top.Grown(Margin));
        Bodies.Add(
            new()
            {
                Cut = cut,
                IsKept = isKept,
                FirstFace = first,
                FaceCount = Faces.Count - first,
                FirstCorner = firstCorner,
                CornerCount = Corners.Count - firstCorner,
                Bounds = all.Grown(Margin),
            }
        );
    }

    private void AddCapFace(int frame, int body, double height, int outward, in Bounds bounds)
    {
        int plane;
        if (frame < 3)
        {
            plane = planes.AddAxis(frame, height);
        }
        else
        {
            plane = planes.AddCap(frame, height, out var sign);
            outward *= sign;
        }

        Faces.Add(
            new()
            {
                Body = body,
                Plane = plane,
                Outward = outward,
                Bounds = bounds,
            }
        );
    }

    /// <summary>Whether a frame only swaps and turns axes.</summary>
    public static bool IsAxial(in Frame frame) => AxisOf(frame.U) >= 0 && AxisOf(frame.V) >= 0 && AxisOf(frame.W) >= 0;

    // The axis a direction runs along exactly, or -1.
    private static int AxisOf(Vec3 d) =>
        (d.Y == 0 && d.Z == 0 && Math.Abs(d.X) == 1) ? 0
        : (d.X == 0 && d.Z == 0 && Math.Abs(d.Y) == 1) ? 1
        : (d.X == 0 && d.Y == 0 && Math.Abs(d.Z) == 1) ? 2
        : -1;

    private static Vec3 Turned(in Frame place, Vec3 d) => (place.U * d.X) + (place.V * d.Y) + (place.W * d.Z);

    private static double Coordinate(Vec3 p, int axis) =>
        axis switch
        {
            0 => p.X,
            1 => p.Y,
            _ => p.Z,
        };
}
