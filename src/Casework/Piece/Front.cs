using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>How a front sits in or on its opening.</summary>
public enum Hang
{
    /// <summary>Inside the opening, flush with the frame.</summary>
    Inset,

    /// <summary>In front of the carcase, lapping over the edges of its opening.</summary>
    Overlay,
}

/// <summary>How a front moves.</summary>
public enum FrontMotion
{
    TurnsOnLeftEdge,
    TurnsOnRightEdge,

    /// <summary>A flap that lifts up.</summary>
    TurnsOnTopEdge,

    /// <summary>A drop front.</summary>
    TurnsOnBottomEdge,
    SlidesOut,

    /// <summary>A false front: it stays where it is.</summary>
    Fixed,

    /// <summary>A leaf in tracks that opens to the left, before or behind its neighbour.</summary>
    SlidesLeft,
    SlidesRight,
}

/// <summary>Small questions about motions.</summary>
public static class FrontMotions
{
    /// <summary>Whether it slides in tracks, sideways.</summary>
    public static bool IsSideways(this FrontMotion motion) =>
        motion is FrontMotion.SlidesLeft or FrontMotion.SlidesRight;

    /// <summary>The edge it turns on; null where it slides.</summary>
    public static Direction? TurnsOn(this FrontMotion motion) =>
        motion switch
        {
            FrontMotion.TurnsOnLeftEdge => Direction.Left,
            FrontMotion.TurnsOnRightEdge => Direction.Right,
            FrontMotion.TurnsOnTopEdge => Direction.Up,
            FrontMotion.TurnsOnBottomEdge => Direction.Down,
            _ => null,
        };
}

/// <summary>A door or a drawer in its opening.</summary>
/// <param name="Group">Id of its group: all of its parts move with it.</param>
/// <param name="Face">Ids of the parts that are seen from the front and keep the gaps.</param>
/// <param name="Opening">Id of the opening it closes, alone or as one of a pair.</param>
/// <param name="Hang">Inset or overlaid.</param>
/// <param name="Motion">How it opens.</param>
/// <param name="Pivot">A point on the axis it turns on (upright, or level for flaps), or of its front face where it slides; in
/// the frame of its group.</param>
/// <param name="Wanted">The gaps wanted around an inset front, or the overlays of one in front, by side.</param>
/// <param name="Neighbours">Fronts that stand next to this one with no frame or carcase part between: the other door of a
/// pair, the drawers above and below in a frameless stack.</param>
/// <param name="Drawer">What a drawer needs besides; null for doors.</param>
public sealed record Front(
    string Group,
    IReadOnlyList<string> Face,
    string Opening,
    Hang Hang,
    FrontMotion Motion,
    Point Pivot,
    WantedSides Wanted,
    IReadOnlyList<FrontNeighbour> Neighbours,
    DrawerFit? Drawer
)
{
    /// <summary>How far it turns, and about what; null where it slides, or where nobody knows what it hangs on.</summary>
    public Swing? Swing { get; init; }

    /// <summary>What was measured of the door as it came out of the clamps; null where nothing was.</summary>
    public DoorAsFound? AsFound { get; init; }
}

/// <summary>A door as measured.</summary>
/// <param name="Warp">How far the upper corner of its lock edge stands off the plane of the three other corners, above zero
/// towards the room; null where that was not measured.</param>
/// <param name="Diagonals">From the bottom left to the top right, and from the bottom right to the top left; null where they
/// were not measured.</param>
/// <param name="Source">The line of the recipe.</param>
public sealed record DoorAsFound(Length? Warp, (Length Rising, Length Falling)? Diagonals, SourcePlace Source);

/// <summary>How far a door or flap is meant to turn on its hinges.</summary>
/// <param name="Degrees">The angle to which it is meant to open.</param>
/// <param name="Hinge">What it hangs on, as it is asked for.</param>
/// <param name="Pin">A point of the axis it is followed about, in the frame of its group.</param>
/// <param name="Wander">How far its hinge may carry it from where a turn about that axis would; zero for a true pin.</param>
public sealed record Swing(int Degrees, string Hinge, Point Pin, Length Wander);

/// <summary>What is wanted on each side of a front; null where its neighbour on that side is another front.</summary>
public sealed record WantedSides(Length? Left, Length? Right, Length? Bottom, Length? Top);

/// <summary>A front next to this one, and the gap wanted between the two.</summary>
/// <param name="Group">Id of its group.</param>
/// <param name="Side">On which side of this one it is.</param>
/// <param name="Gap">The gap wanted.</param>
/// <param name="IsRebated">Whether the two lap over each other there, so that the gap is one of their faces alone.</param>
public sealed record FrontNeighbour(string Group, Direction Side, Length Gap, bool IsRebated = false);

/// <summary>A drawer box, its slides and the space it runs in.</summary>
/// <param name="Box">Ids of the parts of the box (without an applied front).</param>
/// <param name="SideClearance">The least and the most room on each side that its slides allow.</param>
/// <param name="AboveAtLeast">The least room over the box.</param>
/// <param name="BelowAtLeast">The least room under the box.</param>
/// <param name="BehindAtLeast">The least room between box and back.</param>
/// <param name="SlideLength">Length of the slides.</param>
/// <param name="RunsBetween">Ids of the parts the slides are fixed to: left, right.</param>
public sealed record DrawerFit(
    IReadOnlyList<string> Box,
    (Length AtLeast, Length AtMost) SideClearance,
    Length AboveAtLeast,
    Length BelowAtLeast,
    Length BehindAtLeast,
    Length SlideLength,
    (string Left, string Right) RunsBetween
)
{
    /// <summary>Whether its slides lie under it and go by the inside of the box: how thick the sides are makes no difference to them.</summary>
    public bool GoesByInside { get; init; }

    /// <summary>How far it comes out; null where that is not known.</summary>
    public Length? Travel { get; init; }
}
