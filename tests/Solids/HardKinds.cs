namespace Dryfit.Solids.Tests;

/// <summary>What makes a board hard: how its cuts, seen as boxes along the axes, meet its faces and each other.</summary>
internal static class HardKinds
{
    public static IEnumerable<string> Of(Vec3 size, Cut[] cuts)
    {
        var boxes = cuts.Select(BoxOf).OfType<Box>().ToList();
        var blank = new Box(default, size);
        var near = boxes.Where(box => Meet(box, blank) >= 0).ToList();
        var solid = SolidBuilder.Build(size, cuts);
        (string Name, bool Holds)[] kinds =
        [
            ("flush with a face of the board", near.Any(box => Meet(box, blank) == 3 && HasFlush(box, blank))),
            ("as wide as the board", near.Any(box => Meet(box, blank) == 3 && IsWide(box, size))),
            ("touches the board in a face", near.Any(box => Meet(box, blank) == 2)),
            ("touches the board in an edge", near.Any(box => Meet(box, blank) == 1)),
            ("touches the board in a corner", near.Any(box => Meet(box, blank) == 0)),
            ("two cuts share a face", Pairs(near).Any(pair => Meet(pair.A, pair.B) == 2)),
            ("two cuts share an edge", Pairs(near).Any(pair => Meet(pair.A, pair.B) == 1)),
            ("two cuts share a corner", Pairs(near).Any(pair => Meet(pair.A, pair.B) == 0)),
            ("two cuts overlap with faces in one plane", Pairs(near).Any(pair => HasFlush(pair.A, pair.B))),
            ("bore tangent to another cut", IsTangent(cuts, boxes)),
            ("bore along an edge of the board", cuts.Any(cut => cut is BoreCut bore && IsOnEdge(bore, size))),
            ("nothing is left", solid.PieceCount == 0),
            ("nothing is taken", solid.Volume == size.X * size.Y * size.Z && cuts.Length > 0),
            ("falls in two", solid.PieceCount == 2),
            ("touches itself", solid.TouchesItself),
        ];
        return kinds.Where(kind => kind.Holds).Select(kind => kind.Name);
    }

    // The box around an upright cut.
    private static Box? BoxOf(Cut cut) =>
        cut switch
        {
            BoxCut box => box.Min.X < box.Max.X && box.Min.Y < box.Max.Y && box.Min.Z < box.Max.Z
                ? new(box.Min, box.Max)
                : null,
            BoreCut bore => Around(
                bore.Frame,
                [new(-bore.Radius, -bore.Radius), new(bore.Radius, bore.Radius)],
                bore.Depth
            ),
            PrismCut prism => Around(prism.Frame, [.. prism.Outline], prism.Height),
            _ => null,
        };

    private static Box? Around(Frame frame, Vec2[] outline, double height)
    {
        if (new[] { frame.U, frame.V, frame.W }.Any(d => Math.Abs(d.X) + Math.Abs(d.Y) + Math.Abs(d.Z) != 1))
        {
            return null;
        }

        var points = outline
            .SelectMany(p => new[] { new Vec3(p.X, p.Y, 0), new(p.X, p.Y, height) })
            .Select(frame.ToWorld)
            .ToList();
        return new(
            new(points.Min(p => p.X), points.Min(p => p.Y), points.Min(p => p.Z)),
            new(points.Max(p => p.X), points.Max(p => p.Y), points.Max(p => p.Z))
        );
    }

    private static IEnumerable<(double AMin, double AMax, double BMin, double BMax)> Axes(Box a, Box b) =>
        [
            (a.Min.X, a.Max.X, b.Min.X, b.Max.X),
            (a.Min.Y, a.Max.Y, b.Min.Y, b.Max.Y),
            (a.Min.Z, a.Max.Z, b.Min.Z, b.Max.Z),
        ];

    // In how many directions what two boxes share is thick; -1 where they are apart.
    private static int Meet(Box a, Box b)
    {
        var shared = Axes(a, b)
            .Select(axis => Math.Min(axis.AMax, axis.BMax) - Math.Max(axis.AMin, axis.BMin))
            .ToList();
        return shared.Any(length => length < 0) ? -1 : shared.Count(length => length > 0);
    }

    private static bool HasFlush(Box a, Box b) =>
        Meet(a, b) == 3 && Axes(a, b).Any(axis => axis.AMin == axis.BMin || axis.AMax == axis.BMax);

    private static bool IsWide(Box box, Vec3 size) =>
        Axes(box, new(default, size)).Any(axis => axis.AMin <= 0 && axis.AMax >= axis.BMax);

    private static IEnumerable<(Box A, Box B)> Pairs(List<Box> boxes) =>
        boxes.SelectMany((a, i) => boxes.Skip(i + 1).Select(b => (a, b)));

    // The first corner of a bore lies on U: its box touches what the round touches.
    private static bool IsTangent(Cut[] cuts, List<Box> boxes) =>
        cuts.OfType<BoreCut>().Any(bore => BoxOf(bore) is { } round && boxes.Any(box => Meet(round, box) == 2));

    private static bool IsOnEdge(BoreCut bore, Vec3 size)
    {
        var (o, w) = (bore.Frame.Origin, bore.Frame.W);
        (double At, double Along, double Length)[] axes = [(o.X, w.X, size.X), (o.Y, w.Y, size.Y), (o.Z, w.Z, size.Z)];
        return axes.Count(axis => axis.Along == 0 && (axis.At == 0 || axis.At == axis.Length)) == 2;
    }
}
