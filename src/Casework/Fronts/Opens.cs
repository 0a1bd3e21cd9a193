using Dryfit.Casework.Building;
using Dryfit.Findings;

namespace Dryfit.Casework.Fronts;

/// <summary>How a door opens.</summary>
internal enum Opens
{
    /// <summary>On its left or right edge.</summary>
    Turning,

    /// <summary>A flap hung at its top.</summary>
    LiftUp,

    /// <summary>A drop front, hung at its bottom.</summary>
    DropFront,

    /// <summary>Two leaves in tracks.</summary>
    Sliding,
}

/// <summary>Reads how a door opens and on which edge it turns.</summary>
internal static class OpensWord
{
    public static Opens Read(string? word) =>
        word switch
        {
            "lift-up" => Opens.LiftUp,
            "drop-front" => Opens.DropFront,
            "sliding" => Opens.Sliding,
            _ => Opens.Turning,
        };

    /// <summary>The edge a single door turns on.</summary>
    /// <param name="side">Left, right, outside or inside; null where nothing is said.</param>
    public static Direction Edge(FrontSite site, Opens opens, string? side)
    {
        if (opens == Opens.LiftUp)
            return Direction.Up;
        if (opens == Opens.DropFront)
            return Direction.Down;
        var clear = site.Opening.Clear;
        var isRightOfMiddle = site.MiddleX is { } middle && clear.Min.X + clear.Max.X > middle * 2;
        return side switch
        {
            "right" => Direction.Right,
            "outside" => isRightOfMiddle ? Direction.Right : Direction.Left,
            "inside" => isRightOfMiddle ? Direction.Left : Direction.Right,
            _ => Direction.Left,
        };
    }

    /// <summary>Refuses what contradicts the way a door opens.</summary>
    public static void Refuse(Opens opens, string? leaves, string? side, SourcePlace place)
    {
        if (opens == Opens.Sliding && leaves == "single")
            throw NoRoom.Of(
                "A single sliding door has nowhere to slide: the leaves pass one another.",
                place,
                "`leaves: pair`, or no number of leaves"
            );
        if (opens is Opens.LiftUp or Opens.DropFront && leaves == "pair")
            throw NoRoom.Of(
                "A flap is one leaf over the whole opening.",
                place,
                "a single leaf, or the opening divided into columns"
            );
        if (side is null)
            return;
        if (leaves == "pair")
            throw new CannotBuildException(
                new InputError(
                    "A pair of doors turns on both edges.",
                    place,
                    "a pair without `hinged`, or a single door"
                )
            );
        if (opens != Opens.Turning)
            throw NoRoom.Of(
                "Only a door that turns on its left or right edge is hinged there.",
                place,
                "no `hinged`, or a door that turns"
            );
    }
}
