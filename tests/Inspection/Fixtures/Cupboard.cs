using Dryfit.Casework;

namespace Dryfit.Inspection.Tests;

/// <summary>
/// A face frame with an opening of 400 by 600 mm and a framed door of 396 by 596 mm in it, 2 mm all round: stiles and
/// rails of 60 by 20 mm, grooves and tenons of 10 by 6 mm, a panel with 2 mm of room at each edge. Hinged at the left, on
/// pins 1 mm inside the opening, to 95 degrees.
/// </summary>
internal sealed class Cupboard
{
    public decimal DoorLeft { get; init; } = 2;

    public decimal DoorBottom { get; init; } = 2;

    public decimal DoorWidth { get; init; } = 396;

    public decimal DoorHeight { get; init; } = 596;

    public decimal DoorY { get; init; }

    public decimal Tenon { get; init; } = 10;

    /// <summary>How far the top rail's shoulder stays off the right stile.</summary>
    public decimal ShoulderOpen { get; init; }

    public decimal PanelWidth { get; init; } = 292;

    public decimal PanelHeight { get; init; } = 492;

    /// <summary>How far the panel lies to the right of the middle.</summary>
    public decimal PanelOff { get; init; }

    public decimal PanelThickness { get; init; } = 6;

    public static Bench Sound() => new Cupboard().OnBench();

    public Bench OnBench()
    {
        var bench = new Bench();
        bench.Group("carcase", GroupKind.Carcase);
        bench.Group("frame", GroupKind.FaceFrame, "carcase");
        bench.Group("door", GroupKind.Door, "carcase");
        Frame(bench);
        Door(bench);
        bench.Fit("hinge", "door-left-stile", "left-frame-stile");
        bench.Add(
            new Opening(
                "opening",
                "opening",
                Bench.Box(0, 0, 0, 400, 300, 600),
                new(["left-frame-stile"], ["right-frame-stile"], ["bottom-frame-rail"], ["top-frame-rail"]),
                null,
                new("bench.dryfit.yaml", 40, 1, 1)
            )
        );
        var gap = Bench.Mm(2);
        bench.Add(
            new Front(
                "door",
                ["door-left-stile", "door-right-stile", "door-bottom-rail", "door-top-rail", "door-panel"],
                "opening",
                Hang.Inset,
                FrontMotion.TurnsOnLeftEdge,
                default,
                new(gap, gap, gap, gap),
                [],
                null
            )
            {
                Swing = new(95, "butt hinge", new(Bench.Mm(1), Bench.Mm(DoorY), gap), default),
            }
        );
        return bench;
    }

    private static void Frame(Bench bench)
    {
        bench.Add("left-frame-stile", Role.FrameStile, "frame", Bench.Box(-40, 0, -40, 0, 20, 640));
        bench.Add("right-frame-stile", Role.FrameStile, "frame", Bench.Box(400, 0, -40, 440, 20, 640));
        bench.Add("bottom-frame-rail", Role.FrameRail, "frame", Bench.Box(0, 0, -40, 400, 20, 0));
        bench.Add("top-frame-rail", Role.FrameRail, "frame", Bench.Box(0, 0, 600, 400, 20, 640));
        foreach (var rail in (ReadOnlySpan<string>)["bottom-frame-rail", "top-frame-rail"])
        {
            bench.Join(JointKind.PocketScrewed, "left-frame-stile", rail, Direction.Left);
            bench.Join(JointKind.PocketScrewed, "right-frame-stile", rail, Direction.Right);
        }
    }

    private void Door(Bench bench)
    {
        var (x0, x1) = (DoorLeft, DoorLeft + DoorWidth);
        var (z0, z1) = (DoorBottom, DoorBottom + DoorHeight);
        var (y0, y1) = (DoorY, DoorY + 20);
        var (g0, g1) = (DoorY + 7, DoorY + 13);
        bench.Add(
            "door-left-stile",
            Role.DoorStile,
            "door",
            Bench.Box(x0, y0, z0, x0 + 60, y1, z1),
            Bench.Box(x0 + 50, g0, z0, x0 + 60, g1, z1)
        );
        bench.Add(
            "door-right-stile",
            Role.DoorStile,
            "door",
            Bench.Box(x1 - 60, y0, z0, x1, y1, z1),
            Bench.Box(x1 - 60, g0, z0, x1 - 50, g1, z1)
        );
        Rail(bench, "door-bottom-rail", x0 + 60, x1 - 60, z0, z0 + 60, (z0 + 50, z0 + 60));
        Rail(bench, "door-top-rail", x0 + 60, x1 - 60 - ShoulderOpen, z1 - 60, z1, (z1 - 60, z1 - 50));
        var (px, pz) = (((x0 + x1) / 2) + PanelOff, (z0 + z1) / 2);
        bench.Add(
            "door-panel",
            Role.DoorPanel,
            "door",
            Bench.Box(
                px - (PanelWidth / 2),
                g0,
                pz - (PanelHeight / 2),
                px + (PanelWidth / 2),
                g0 + PanelThickness,
                pz + (PanelHeight / 2)
            )
        );
        bench.Change("door-panel", board => board.Upright());
        bench.Change("door-left-stile", board => board.Upright());
        bench.Change("door-right-stile", board => board.Upright());
        foreach (var rail in (ReadOnlySpan<string>)["door-bottom-rail", "door-top-rail"])
        {
            bench.Join(JointKind.StubTenon, "door-left-stile", rail, Direction.Left, 10);
            bench.Join(JointKind.StubTenon, "door-right-stile", rail, Direction.Right, 10);
        }
        bench.Join(JointKind.Loose, "door-left-stile", "door-panel", Direction.Left, 8, 2);
        bench.Join(JointKind.Loose, "door-right-stile", "door-panel", Direction.Right, 8, 2);
        bench.Join(JointKind.Loose, "door-bottom-rail", "door-panel", Direction.Down, 8, 2);
        bench.Join(JointKind.Loose, "door-top-rail", "door-panel", Direction.Up, 8, 2);
    }

    private void Rail(
        Bench bench,
        string id,
        decimal left,
        decimal right,
        decimal z0,
        decimal z1,
        (decimal, decimal) groove
    )
    {
        var (y0, y1) = (DoorY, DoorY + 20);
        var (g0, g1) = (DoorY + 7, DoorY + 13);
        bench.Add(
            id,
            Role.DoorRail,
            "door",
            Bench.Box(left - Tenon, y0, z0, right + Tenon, y1, z1),
            Bench.Box(left - Tenon, y0, z0, left, g0, z1),
            Bench.Box(left - Tenon, g1, z0, left, y1, z1),
            Bench.Box(right, y0, z0, right + Tenon, g0, z1),
            Bench.Box(right, g1, z0, right + Tenon, y1, z1),
            Bench.Box(left - Tenon, g0, groove.Item1, right + Tenon, g1, groove.Item2)
        );
    }
}
