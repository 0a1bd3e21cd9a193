using CsCheck;

namespace Dryfit.Solids.Tests;

/// <summary>
/// Random boards whose cuts are flush, coincident, tangent and overlapping on purpose: all lengths are from a coarse grid.
/// Upright cuts stand along the axes; tilted ones are turned about one or two of them.
/// </summary>
internal static class RandomBoards
{
    private static readonly Vec3[] Axes =
    [
        new(1, 0, 0),
        new(0, 1, 0),
        new(0, 0, 1),
        new(-1, 0, 0),
        new(0, -1, 0),
        new(0, 0, -1),
    ];

    internal static readonly Vec2[][] Outlines =
    [
        [new(0, 0), new(20, 0), new(0, 20)],
        [new(0, 0), new(30, 0), new(30, 10), new(10, 10), new(10, 30), new(0, 30)],
        [new(-10, -10), new(10, -10), new(10, 10), new(0, 0), new(-10, 10)],
        [new(0, 0), new(10, -10), new(20, 0), new(10, 10)],
        [
            new(0, 0),
            new(40, 0),
            new(40, 20),
            new(30, 20),
            new(30, 10),
            new(20, 20),
            new(10, 10),
            new(10, 20),
            new(0, 20),
        ],
    ];

    public static Gen<Vec3> Sizes { get; } =
        Gen.Select(Gen.Int[2, 8], Gen.Int[2, 6], Gen.Int[1, 3], (x, y, z) => new Vec3(10 * x, 10 * y, 10 * z));

    public static Gen<Frame> UprightFrames { get; } =
        Gen.Select(
            Points,
            Gen.Int[0, 5],
            Gen.Int[0, 3],
            (origin, first, second) =>
            {
                var u = Axes[first];
                var v = Axes[(first + 1 + (second % 2) + (second / 2 * 3)) % 6];
                return new Frame(origin, u, v, Vec3.Cross(u, v));
            }
        );

    public static Gen<Frame> TiltedFrames { get; } =
        Gen.Select(
            UprightFrames,
            OneOf(15.0, 30, 45, 60, 36.86989764584402, 7.3),
            OneOf(0.0, 0, 20, 45),
            (frame, first, second) => Turned(Turned(frame, first, false), second, true)
        );

    public static Gen<Cut> UprightCuts { get; } = CutsIn(UprightFrames);

    public static Gen<Cut> AnyCuts { get; } = Gen.OneOf(CutsIn(UprightFrames), CutsIn(TiltedFrames));

    public static Gen<(Vec3 Size, Cut[] Cuts)> Upright { get; } = Gen.Select(Sizes, UprightCuts.Array[0, 6]);

    public static Gen<(Vec3 Size, Cut[] Cuts)> Square { get; } =
        Gen.Select(Sizes, Gen.Select(Points, Points, (a, b) => (Cut)new BoxCut(Least(a, b), Most(a, b))).Array[0, 8]);

    public static Gen<(Vec3 Size, Cut[] Cuts)> Any { get; } = Gen.Select(Sizes, AnyCuts.Array[1, 5]);

    private static Gen<Vec3> Points =>
        Gen.Select(Gen.Int[-2, 16], Gen.Int[-2, 12], Gen.Int[-2, 6], (x, y, z) => new Vec3(5 * x, 5 * y, 5 * z));

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<Cut> CutsIn(Gen<Frame> frames) =>
        Gen.OneOf(
            Gen.Select(Points, Points, (a, b) => (Cut)new BoxCut(Least(a, b), Most(a, b))),
            Gen.Select(
                frames,
                OneOf(5.0, 7.5, 10),
                OneOf(5.0, 10, 20, 60),
                OneOf(3, 4, 6, 8, 12),
                (frame, radius, depth, segments) => (Cut)new BoreCut(frame, radius, depth, segments)
            ),
            Gen.Select(
                frames,
                Gen.Int[0, Outlines.Length - 1],
                OneOf(5.0, 10, 20, 60),
                (frame, outline, height) => (Cut)new PrismCut(frame, Outlines[outline], height)
            )
        );

    private static Frame Turned(Frame frame, double degrees, bool aboutV)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return aboutV
            ? new(frame.Origin, (frame.U * cos) - (frame.W * sin), frame.V, (frame.U * sin) + (frame.W * cos))
            : new(frame.Origin, frame.U, (frame.V * cos) + (frame.W * sin), (frame.W * cos) - (frame.V * sin));
    }

    private static Vec3 Least(Vec3 a, Vec3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Vec3 Most(Vec3 a, Vec3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}
