using Dryfit.Casework;

namespace Dryfit.Inspection.Tests;

/// <summary>
/// A carcase of 20 mm boards, 400 mm wide, 200 mm high and 300 mm deep inside, with one inset drawer: a box with 13 mm
/// of room at each side for its slides of 250 mm, behind a front of 396 by 196 mm.
/// </summary>
internal sealed class Chest
{
    public decimal BoxLeft { get; init; } = 13;

    public decimal BoxRight { get; init; } = 387;

    public decimal BoxBottom { get; init; } = 20;

    public decimal BoxTop { get; init; } = 180;

    public decimal BoxBack { get; init; } = 270;

    public decimal FrontY { get; init; }

    public static Bench Sound() => new Chest().OnBench();

    public Bench OnBench()
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Group("drawer", GroupKind.Drawer, "carcase");
        Carcase(bench);
        Drawer(bench);
        bench.Add(
            new Opening(
                "opening",
                "opening",
                Bench.Box(0, 0, 0, 400, 300, 200),
                new(["left-side"], ["right-side"], ["bottom"], ["top"]),
                null,
                new("bench.dryfit.yaml", 40, 1, 1)
            )
        );
        var gap = Bench.Mm(2);
        bench.Add(
            new Front(
                "drawer",
                ["drawer-front"],
                "opening",
                Hang.Inset,
                FrontMotion.SlidesOut,
                default,
                new(gap, gap, gap, gap),
                [],
                new(
                    ["box-left", "box-right", "box-front", "box-back", "box-bottom"],
                    (Bench.Mm(12.7m), Bench.Mm(13.5m)),
                    Bench.Mm(12),
                    Bench.Mm(12),
                    Bench.Mm(10),
                    Bench.Mm(250),
                    ("left-side", "right-side")
                )
                {
                    Travel = Bench.Mm(250),
                }
            )
        );
        return bench;
    }

    private static void Carcase(Bench bench)
    {
        bench.Add("left-side", Role.Side, "carcase", Bench.Box(-20, 0, -20, 0, 306, 220));
        bench.Add("right-side", Role.Side, "carcase", Bench.Box(400, 0, -20, 420, 306, 220));
        bench.Add("bottom", Role.Bottom, "carcase", Bench.Box(0, 0, -20, 400, 300, 0));
        bench.Add("top", Role.Top, "carcase", Bench.Box(0, 0, 200, 400, 300, 220));
        bench.Add("back", Role.Back, "carcase", Bench.Box(0, 300, -20, 400, 306, 220));
        foreach (var board in (ReadOnlySpan<string>)["bottom", "top"])
        {
            bench.Join(JointKind.Screwed, "left-side", board, Direction.Left);
            bench.Join(JointKind.Screwed, "right-side", board, Direction.Right);
            bench.Join(JointKind.Screwed, board, "back", Direction.Front);
        }
    }

    private void Drawer(Bench bench)
    {
        bench.Add("drawer-front", Role.DrawerFront, "drawer", Bench.Box(2, FrontY, 2, 398, FrontY + 20, 198));
        var (x0, x1, z0, z1, y0, y1) = (BoxLeft, BoxRight, BoxBottom, BoxTop, FrontY + 20, BoxBack);
        bench.Add("box-left", Role.DrawerSide, "drawer", Bench.Box(x0, y0, z0, x0 + 12, y1, z1));
        bench.Add("box-right", Role.DrawerSide, "drawer", Bench.Box(x1 - 12, y0, z0, x1, y1, z1));
        bench.Add("box-front", Role.DrawerBoxFront, "drawer", Bench.Box(x0 + 12, y0, z0, x1 - 12, y0 + 12, z1));
        bench.Add("box-back", Role.DrawerBack, "drawer", Bench.Box(x0 + 12, y1 - 12, z0, x1 - 12, y1, z1));
        bench.Add("box-bottom", Role.DrawerBottom, "drawer", Bench.Box(x0 + 12, y0 + 12, z0, x1 - 12, y1 - 12, z0 + 6));
        foreach (var end in (ReadOnlySpan<string>)["box-front", "box-back", "box-bottom"])
        {
            bench.Join(JointKind.Butt, "box-left", end, Direction.Left);
            bench.Join(JointKind.Butt, "box-right", end, Direction.Right);
        }
        bench.Join(JointKind.Screwed, "box-front", "drawer-front", Direction.Back);
        bench.Fit("slide", "box-left", "left-side");
        bench.Fit("slide", "box-right", "right-side");
    }
}
