using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>All checks in the order in which they are told of, what they can find, and what is not checked yet.</summary>
public static class Catalogue
{
    private const string NotMade = "not made yet: look yourself";

    /// <summary>Every check there is. A new one is a file of its own and a line here.</summary>
    internal static IReadOnlyList<ICheck> Checks { get; } =
    [
        new FrontGaps(),
        new FrontOverlays(),
        new FrontNeighbours(),
        new FrontFlush(),
        new DoorWarp(),
        new SlidingDoors(),
        new Handles(),
        new DrawerRuns(),
        new DrawerStock(),
        new DoorSwing(),
        new DrawerTravel(),
        new LooseFit(),
        new CaptivePanes(),
        new ThicknessFit(),
        new JointMeets(),
        new EdgesInLine(),
        new CutOuts(),
        new Connected(),
        new MeetsRoom(),
        new AlikeBays(),
        new LinesRunOn(),
        new AlikeParts(),
        new RackLoads(),
        new PartWhole(),
        new PartTouchesItself(),
        new GapsCovered(),
        new CupBores(),
        new BoreWood(),
        new BoresMeet(),
        new HingeCounts(),
        new HingesInLine(),
        new HingeRoom(),
        new ShelfPins(),
        // Last: what stands in each other's place is most often the consequence of something above.
        new PartsOverlap(),
    ];

    /// <summary>Every kind of finding, in the order of the checks.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [.. Checks.SelectMany(check => check.Kinds), .. Accepted.Kinds];

    /// <summary>What a maker might think is checked, and is not.</summary>
    internal static IReadOnlyList<CheckRun> NotChecked { get; } =
    [
        CheckRun.Left("contact without a joint", NotMade),
        CheckRun.Left(
            "stock thicker or thinner than it is said to be, in grooves as wide as that: cut them to the stock in hand",
            "only drawer boxes and grooves of another width are held against it"
        ),
        CheckRun.Left("fronts that meet when two are open at once", NotMade),
        CheckRun.Left("fittings in the way of doors and drawers: hinge arms, stays, knuckles, slides", NotMade),
        CheckRun.Left("sliding leaves and old doors on their way", NotMade),
        CheckRun.Left("hinges on face frames against what stands behind the frame", NotMade),
        CheckRun.Left("screws: too long, too near to an edge, out of reach", NotMade),
        CheckRun.Left("shelves across corners on their pins", NotMade),
        CheckRun.Left("shelves that go in past frame, doors and hinges", NotMade),
        CheckRun.Left("backs, panels and glass that can go in and come out again", NotMade),
        CheckRun.Left(
            "a cut list written by hand against the model",
            "asked for by itself: check RECIPE --numbers FILE"
        ),
        CheckRun.Left("fastenings and raw edges that show", NotMade),
        CheckRun.Left("strength and sag of shelves, rails, legs and doors", NotMade),
        CheckRun.Left("tip-over and wall fixing: tall pieces and drawer pieces need a fixing by local rules", NotMade),
        CheckRun.Left("hanging on walls", NotMade),
        CheckRun.Left("racking", NotMade),
        CheckRun.Left("movement of solid wood with the seasons", NotMade),
        CheckRun.Left("limits of machines, and pieces too small to cut safely", NotMade),
        CheckRun.Left("whether the stock can be had", NotMade),
        CheckRun.Left("order of assembly and of finishing", NotMade),
        CheckRun.Left("the way in: doors, stairs, standing up under the ceiling", NotMade),
    ];
}
