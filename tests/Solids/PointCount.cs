namespace Dryfit.Solids.Tests;

/// <summary>The volume of a board by counting points of a fine lattice that no cut holds: crude, but it knows no geometry that
/// could be wrong. It settles who is right where two kernels differ.</summary>
internal static class PointCount
{
    private const int Steps = 300;

    public static double Volume(Vec3 size, IReadOnlyList<Cut> cuts)
    {
        var count = 0;
        for (var i = 0; i < Steps; i++)
        {
            for (var j = 0; j < Steps; j++)
            {
                for (var k = 0; k < Steps; k++)
                {
                    var p =
                        new Vec3((i + 0.4871) * size.X, (j + 0.5237) * size.Y, (k + 0.5113) * size.Z) * (1.0 / Steps);
                    count += cuts.Any(cut => Holds(cut, p)) ? 0 : 1;
                }
            }
        }

        return size.X * size.Y * size.Z * count / (Steps * Steps * Steps);
    }

    private static bool Holds(Cut cut, Vec3 p) =>
        cut switch
        {
            BoxCut box => box.Min.X < p.X
                && p.X < box.Max.X
                && box.Min.Y < p.Y
                && p.Y < box.Max.Y
                && box.Min.Z < p.Z
                && p.Z < box.Max.Z,
            BoreCut bore => Holds(
                bore.Frame,
                [
                    .. Enumerable
                        .Range(0, bore.Segments)
                        .Select(i => Math.SinCos(2 * Math.PI * i / bore.Segments))
                        .Select(turn => new Vec2(bore.Radius * turn.Cos, bore.Radius * turn.Sin)),
                ],
                bore.Depth,
                p
            ),
            PrismCut prism => Holds(prism.Frame, prism.Outline, prism.Height, p),
            _ => false,
        };

    private static bool Holds(Frame frame, Profile outline, double height, Vec3 p)
    {
        var d = p - frame.Origin;
        var (x, y, z) = (Vec3.Dot(d, frame.U), Vec3.Dot(d, frame.V), Vec3.Dot(d, frame.W));
        var isInside = false;
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
            if (a.Y > y != b.Y > y && x < a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)))
            {
                isInside = !isInside;
            }
        }

        return isInside && z > 0 && z < height;
    }
}
