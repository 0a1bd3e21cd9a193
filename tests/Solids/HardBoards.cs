using CsCheck;

namespace Dryfit.Solids.Tests;

/// <summary>
/// Kinds of random boards for the second opinion. Exact turns are quarter turns: everything flush or coincident is so exactly.
/// Under inexact ones it is so but for rounding, in the planes as given.
/// </summary>
internal static class HardBoards
{
    /// <summary>Upright cuts all of whose faces lie in few planes along each axis: the board's own, two within and one beyond on
    /// either side. Bores reach from one to another, or touch it.</summary>
    public static Gen<(Vec3 Size, Cut[] Cuts)> Flush { get; } =
        Gen.Select(
            RandomBoards.Sizes,
            Gen.Select(Gen.Int[1, 5], Gen.Int[1, 5], Gen.Int[1, 5]),
            Gen.Select(Gen.Int[0, 4], Gen.Int[0, 5].Array[6]).Array[1, 5],
            (size, inner, cuts) => (size, (Cut[])[.. cuts.Select(cut => FlushCut(cut.Item1, cut.Item2, size, inner))])
        );

    /// <summary>Cuts that share one turned frame, so that their faces coincide or touch there, and upright ones.</summary>
    public static Gen<(Vec3 Size, Cut[] Cuts)> Coincident { get; } =
        Gen.Select(
            RandomBoards.Sizes,
            Frames,
            Gen.Select(RandomBoards.AnyCuts, Shifts, Gen.Int[0, 3]).Array[2, 5],
            (size, frame, cuts) => (size, (Cut[])[.. cuts.Select(cut => InFrame(cut, frame))])
        );

    /// <summary>Every cut turned by an angle of its own.</summary>
    public static Gen<(Vec3 Size, Cut[] Cuts)> Turned { get; } =
        Gen.Select(
            RandomBoards.Sizes,
            Gen.Select(RandomBoards.AnyCuts, Frames, (cut, frame) => Moved(cut, frame)).Array[1, 5],
            (size, cuts) => (size, cuts)
        );

    /// <summary>Upright boards turned as a whole, by quarter turns or by any angles: what is left of a larger block when all
    /// around the turned blank is cut off, and then the cuts turned with it.</summary>
    public static Gen<(Vec3 Size, Cut[] Cuts)> Whole { get; } =
        Gen.Select(
            RandomBoards.Upright,
            Gen.OneOf(RandomBoards.UprightFrames, Frames),
            (board, frame) => Surrounded(board.Size, board.Cuts, frame)
        );

    /// <summary>A board in the middle of a larger block, turned as a frame is: cuts around the blank, then its own.</summary>
    public static (Vec3 Size, Cut[] Cuts) Surrounded(Vec3 size, Cut[] cuts, Frame frame)
    {
        var at = frame with { Origin = (Block * 0.5) - Along(size * 0.5, frame) };
        var thick = cuts.Where(cut => cut is not BoxCut box || IsThick(box));
        return (Block, [.. Around(size).Concat(thick).Select(cut => Carried(cut, at))]);
    }

    private static Cut FlushCut(int kind, int[] picks, Vec3 size, (int X, int Y, int Z) inner)
    {
        var low = new Vec3(At(picks[0], size.X, inner.X), At(picks[1], size.Y, inner.Y), At(picks[2], size.Z, inner.Z));
        var high = new Vec3(
            At(picks[3], size.X, inner.X),
            At(picks[4], size.Y, inner.Y),
            At(picks[5], size.Z, inner.Z)
        );
        var way = new Vec3(Math.Abs(high.X - low.X), Math.Abs(high.Y - low.Y), Math.Abs(high.Z - low.Z));
        var corner = new Vec3(Math.Min(low.X, high.X), Math.Min(low.Y, high.Y), Math.Min(low.Z, high.Z));

        // A bore about a crossing of planes touches or reaches another one; along the shortest way it is not too large.
        return kind switch
        {
            0 when way.X > 0 && way.X <= 20 && way.Z > 0 => new BoreCut(
                Frame.Identity with
                {
                    Origin = low with { Z = corner.Z },
                },
                way.X,
                way.Z,
                8
            ),
            1 when way.Y > 0 && way.Y <= 20 && way.X > 0 => new BoreCut(
                new(low with { X = corner.X }, new(0, 1, 0), new(0, 0, 1), new(1, 0, 0)),
                way.Y,
                way.X,
                12
            ),
            2 when way.X > 0 && way.Y > 0 && way.Z > 0 => new PrismCut(
                Frame.Identity with
                {
                    Origin = corner,
                },
                [new(0, 0), new(way.X, 0), new(0, way.Y)],
                way.Z
            ),
            _ => new BoxCut(corner, corner + way),
        };
    }

    // The board's faces, two planes within it and one beyond on either side.
    private static double At(int pick, double size, int inner) =>
        pick switch
        {
            0 => -5,
            1 => 0,
            2 => Math.Min(5 * inner, size / 2),
            3 => Math.Max(size - (5 * inner), size / 2),
            4 => size,
            _ => size + 5,
        };

    private static Vec3 Block => new(110, 105, 100);

    private static Gen<double> Angles =>
        Gen.OneOf(
            Gen.Int[0, 7].Select(i => new[] { 0, 10, 15, 22.5, 30, 45, 60, 36.86989764584402 }[i]),
            Gen.Double[0, 90]
        );

    private static Gen<Frame> Frames =>
        Gen.Select(
            RandomBoards.UprightFrames,
            Angles,
            Angles,
            (frame, first, second) =>
            {
                var (sinA, cosA) = Math.SinCos(first * Math.PI / 180);
                var (sinB, cosB) = Math.SinCos(second * Math.PI / 180);
                var (u, v) = ((frame.U * cosA) + (frame.V * sinA), (frame.V * cosA) - (frame.U * sinA));
                return new Frame(frame.Origin, u, (v * cosB) + (frame.W * sinB), (frame.W * cosB) - (v * sinB));
            }
        );

    private static Gen<Vec2> Shifts => Gen.Select(Gen.Int[-4, 4], Gen.Int[-4, 4], (x, y) => new Vec2(5 * x, 5 * y));

    // Three of four go into the frame, moved within it by their outline, so that equal planes are equal as given.
    private static Cut InFrame((Cut Cut, Vec2 Shift, int Kind) sample, Frame frame)
    {
        var (cut, shift, kind) = sample;
        if (kind == 0 || cut is BoreCut)
        {
            return kind == 0 ? cut : Moved(cut, frame);
        }

        var prism = (PrismCut)Moved(cut, frame);
        return prism with
        {
            Outline = [.. prism.Outline.Select(corner => new Vec2(corner.X + shift.X, corner.Y + shift.Y))],
        };
    }

    // Six blocks that leave a blank between them.
    private static IEnumerable<Cut> Around(Vec3 size)
    {
        var (low, high) = (new Vec3(-200, -200, -200), new Vec3(200, 200, 200));
        yield return new BoxCut(low, high with { X = 0 });
        yield return new BoxCut(low with { X = size.X }, high);
        yield return new BoxCut(low, high with { Y = 0 });
        yield return new BoxCut(low with { Y = size.Y }, high);
        yield return new BoxCut(low, high with { Z = 0 });
        yield return new BoxCut(low with { Z = size.Z }, high);
    }

    private static bool IsThick(BoxCut box) => box.Min.X < box.Max.X && box.Min.Y < box.Max.Y && box.Min.Z < box.Max.Z;

    private static Cut Carried(Cut cut, Frame by) =>
        cut switch
        {
            BoreCut bore => bore with { Frame = Carried(bore.Frame, by) },
            PrismCut prism => prism with { Frame = Carried(prism.Frame, by) },
            BoxCut box => new PrismCut(
                by with
                {
                    Origin = by.ToWorld(box.Min),
                },
                [
                    new(0, 0),
                    new(box.Max.X - box.Min.X, 0),
                    new(box.Max.X - box.Min.X, box.Max.Y - box.Min.Y),
                    new(0, box.Max.Y - box.Min.Y),
                ],
                box.Max.Z - box.Min.Z
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(cut)),
        };

    private static Frame Carried(Frame frame, Frame by) =>
        new(by.ToWorld(frame.Origin), Along(frame.U, by), Along(frame.V, by), Along(frame.W, by));

    private static Vec3 Along(Vec3 d, Frame by) => (by.U * d.X) + (by.V * d.Y) + (by.W * d.Z);

    private static Cut Moved(Cut cut, Frame frame) =>
        cut switch
        {
            BoreCut bore => bore with { Frame = frame },
            PrismCut prism => prism with { Frame = frame },
            _ => new PrismCut(frame, [new(0, 0), new(20, 0), new(20, 10), new(0, 10)], 20),
        };
}
