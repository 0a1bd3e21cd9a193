using Dryfit.Casework;

namespace Dryfit.Inspection.Tests;

/// <summary>
/// A frameless carcase, 600 mm wide and 700 mm high outside, of 18 mm boards, with a pair of slab doors before it and a
/// fixed front over them: all stay 1.5 mm inside the carcase and 3 mm from each other.
/// </summary>
internal sealed class Run
{
    public decimal LeftDoorLeft { get; init; } = 1.5m;

    public decimal LeftDoorRight { get; init; } = 298.5m;

    public decimal DoorTop { get; init; } = 500;

    /// <summary>Whether the front over the doors is named as their neighbour.</summary>
    public bool NamesNeighbours { get; init; } = true;

    public static Bench Sound() => new Run().OnBench();

    public Bench OnBench()
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Group("left-door", GroupKind.Door, "carcase");
        bench.Group("right-door", GroupKind.Door, "carcase");
        bench.Group("drawer", GroupKind.Drawer, "carcase");
        bench.Add("left-side", Role.Side, "carcase", Bench.Box(0, 0, 0, 18, 560, 700));
        bench.Add("right-side", Role.Side, "carcase", Bench.Box(582, 0, 0, 600, 560, 700));
        bench.Add("bottom", Role.Bottom, "carcase", Bench.Box(18, 0, 0, 582, 560, 18));
        bench.Add("top", Role.Top, "carcase", Bench.Box(18, 0, 682, 582, 560, 700));
        foreach (var board in (ReadOnlySpan<string>)["bottom", "top"])
        {
            bench.Join(JointKind.Dowel, "left-side", board, Direction.Left);
            bench.Join(JointKind.Dowel, "right-side", board, Direction.Right);
        }
        bench.Add(
            "left-slab",
            Role.DoorSlab,
            "left-door",
            Bench.Box(LeftDoorLeft, -20, 1.5m, LeftDoorRight, -2, DoorTop)
        );
        bench.Add("right-slab", Role.DoorSlab, "right-door", Bench.Box(301.5m, -20, 1.5m, 598.5m, -2, 500));
        bench.Add("drawer-slab", Role.DrawerFront, "drawer", Bench.Box(1.5m, -20, 503, 598.5m, -2, 698.5m));
        bench.Fit("hinge", "left-slab", "left-side");
        bench.Fit("hinge", "right-slab", "right-side");
        bench.Fit("clip", "drawer-slab", "left-side");
        Fronts(bench);
        return bench;
    }

    private void Fronts(Bench bench)
    {
        var place = new Findings.SourcePlace("bench.dryfit.yaml", 40, 1, 1);
        bench.Add(
            new Opening(
                "doors",
                "doors",
                Bench.Box(18, 0, 18, 582, 560, 500),
                new(["left-side"], ["right-side"], ["bottom"], []),
                null,
                place
            )
        );
        bench.Add(
            new Opening(
                "drawers",
                "drawers",
                Bench.Box(18, 0, 503, 582, 560, 682),
                new(["left-side"], ["right-side"], [], ["top"]),
                null,
                place
            )
        );
        var (lap, gap) = (Bench.Mm(16.5m), Bench.Mm(3));
        var over = NamesNeighbours ? [new FrontNeighbour("drawer", Direction.Up, gap)] : Array.Empty<FrontNeighbour>();
        var under = NamesNeighbours
            ?
            [
                new FrontNeighbour("left-door", Direction.Down, gap),
                new FrontNeighbour("right-door", Direction.Down, gap),
            ]
            : Array.Empty<FrontNeighbour>();
        bench.Add(
            new Front(
                "left-door",
                ["left-slab"],
                "doors",
                Hang.Overlay,
                FrontMotion.TurnsOnLeftEdge,
                default,
                new(lap, null, lap, null),
                [new("right-door", Direction.Right, gap), .. over],
                null
            )
            {
                Swing = new(110, "cup hinge", new(Bench.Mm(1.5m), Bench.Mm(-20), lap), Bench.Mm(3)),
            }
        );
        bench.Add(
            new Front(
                "right-door",
                ["right-slab"],
                "doors",
                Hang.Overlay,
                FrontMotion.TurnsOnRightEdge,
                default,
                new(null, lap, lap, null),
                [new("left-door", Direction.Left, gap), .. over],
                null
            )
            {
                Swing = new(110, "cup hinge", new(Bench.Mm(598.5m), Bench.Mm(-20), lap), Bench.Mm(3)),
            }
        );
        bench.Add(
            new Front(
                "drawer",
                ["drawer-slab"],
                "drawers",
                Hang.Overlay,
                FrontMotion.SlidesOut,
                default,
                new(lap, lap, null, lap),
                under,
                null
            )
        );
    }
}
