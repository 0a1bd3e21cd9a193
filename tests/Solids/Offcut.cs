namespace Dryfit.Solids.Tests;

/// <summary>What a cut takes, as a solid of its own: a block less what lies outside each side of the cut's outline.</summary>
internal static class Offcut
{
    /// <summary>Null for a cut whose outline is hollow or that has no thickness.</summary>
    public static Placed? Of(Cut cut) =>
        cut switch
        {
            BoxCut box => box.Min.X < box.Max.X && box.Min.Y < box.Max.Y && box.Min.Z < box.Max.Z
                ? new(SolidBuilder.Build(box.Max - box.Min, []), Frame.Identity with { Origin = box.Min })
                : null,
            BoreCut bore => Of(bore.Frame, [.. Corners(bore)], bore.Depth),
            PrismCut prism => Of(prism.Frame, [.. prism.Outline], prism.Height),
            _ => null,
        };

    private static IEnumerable<Vec2> Corners(BoreCut bore) =>
        Enumerable
            .Range(0, bore.Segments)
            .Select(i => Math.SinCos(2 * Math.PI * i / bore.Segments))
            .Select(turn => new Vec2(bore.Radius * turn.Cos, bore.Radius * turn.Sin));

    private static Placed? Of(Frame frame, Vec2[] outline, double height)
    {
        var (left, bottom) = (outline.Min(p => p.X), outline.Min(p => p.Y));
        var size = new Vec3(outline.Max(p => p.X) - left, outline.Max(p => p.Y) - bottom, height);
        var around = new List<Cut>();
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
            if (outline.Any(p => ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X)) < -1e-9))
            {
                return null;
            }

            around.Add(Beyond(new(a.X - left, a.Y - bottom), new(b.X - left, b.Y - bottom), height));
        }

        return new(SolidBuilder.Build(size, around), frame with { Origin = frame.ToWorld(new(left, bottom, 0)) });
    }

    // A block on the right of the way from a to b, far longer than any cut here.
    private static PrismCut Beyond(Vec2 a, Vec2 b, double height)
    {
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        var scale = 200 / Math.Sqrt((x * x) + (y * y));
        var (dx, dy) = (x * scale, y * scale);
        var (from, to) = (new Vec2(a.X - dx, a.Y - dy), new Vec2(b.X + dx, b.Y + dy));
        return new(Frame.Identity, [to, from, new(from.X + dy, from.Y - dx), new(to.X + dy, to.Y - dx)], height);
    }
}
