using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// An opening that waits for its front: all that a door or drawer must know of the carcase around it.
/// </summary>
internal sealed record FrontSite
{
    /// <summary>The carcase whose front it is; units of the front become its groups.</summary>
    public required GroupDraft Carcase { get; init; }

    /// <summary>What goes before "door" or "drawer 1" in names: empty, or the bay ("left bay").</summary>
    public required string Prefix { get; init; }

    public required Opening Opening { get; init; }

    /// <summary>Clear width of the opening: reckoned, or as measured where the recipe says so (the smallest).</summary>
    public required Figure Width { get; init; }

    /// <summary>Clear height of the opening.</summary>
    public required Figure Height { get; init; }

    /// <summary>Whether fronts sit in the opening or lap over it, where the recipe does not say.</summary>
    public required Hang UsualHang { get; init; }

    /// <summary>
    /// How far an overlaid front laps over the part on each side of the clear opening; on a side in
    /// <see cref="OpenSides"/>, how far it stops short of the end of the opening: half the gap to the next front.
    /// </summary>
    public required SideFigures Reach { get; init; }

    /// <summary>The sides on which another front follows with no part between, as in a frameless stack.</summary>
    public required IReadOnlyList<Direction> OpenSides { get; init; }

    /// <summary>The Y of the front face of the frame, or of the front edge of a frameless carcase.</summary>
    public required Length FaceY { get; init; }

    /// <summary>The Y behind the face frame where the inside begins; <see cref="FaceY"/> where there is no frame.</summary>
    public required Length InsideFrontY { get; init; }

    /// <summary>The Y of the inside face of the back.</summary>
    public required Length InsideBackY { get; init; }

    /// <summary>Clear depth from <see cref="InsideFrontY"/> to <see cref="InsideBackY"/>.</summary>
    public required Figure InsideDepth { get; init; }

    /// <summary>The upright parts that bound the inside here: side or partition.</summary>
    public required PartDraft InsideLeft { get; init; }

    public required PartDraft InsideRight { get; init; }

    /// <summary>Parts that bound the opening left and right in the plane of the front, for hinges: frame or carcase.</summary>
    public required PartDraft HingeLeft { get; init; }

    public required PartDraft HingeRight { get; init; }

    /// <summary>Parts that bound the opening below and above in the plane of the front; null where only a gap divides.</summary>
    public PartDraft? Below { get; init; }

    public PartDraft? Above { get; init; }

    /// <summary>The flat part under the inside, wherever it lies, and the lowest over it.</summary>
    public PartDraft? Floor { get; init; }

    public PartDraft? Ceiling { get; init; }

    /// <summary>Whether the carcase hangs on a wall: its doors are reached for from below.</summary>
    public bool Hangs { get; init; }

    /// <summary>The middle of the whole front, left to right: doors turn away from it or towards it.</summary>
    public Length? MiddleX { get; init; }

    /// <summary>The recipe's material for fronts where the filling names none.</summary>
    public required Material Material { get; init; }

    /// <summary>Whether a face frame stands before the carcase, so that hinges go to the frame and not to a side.</summary>
    public bool IsFramed => HingeLeft != InsideLeft || HingeRight != InsideRight;

    /// <summary>The name of something in this opening within its carcase: "left bay door".</summary>
    public string NameOf(string local) => Prefix.Length == 0 ? local : $"{Prefix} {local}";
}

/// <summary>A figure for each side of an opening.</summary>
internal sealed record SideFigures(Figure Left, Figure Right, Figure Bottom, Figure Top);
