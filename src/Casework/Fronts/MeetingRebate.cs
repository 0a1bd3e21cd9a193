using Dryfit.Casework.Building;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The rebate where the doors of a pair meet: the leaf that closes first runs on behind the other, with its front cut away;
/// the other laps over it with its back cut away. From the front both are equally wide, with a gap between.
/// </summary>
/// <param name="Width">How far they lap.</param>
/// <param name="Room">Between the two cheeks, front to back.</param>
/// <param name="First">The leaf that closes first: left or right.</param>
internal sealed record MeetingRebate(Figure Width, Figure Room, Direction First)
{
    public static MeetingRebate? Read(PieceBuilder piece, Fields? said, Opens opens, bool isPair)
    {
        if (said is null || !said.Has("meeting"))
            return null;
        var place = said.PlaceOf("meeting");
        if (!isPair || opens == Opens.Sliding)
            throw NoRoom.Of("Only the doors of a pair that turn meet in a rebate.", place, "`leaves: pair`");
        var keys = said.Map("meeting");
        if (keys is null && said.Text("meeting") == "plain")
            return null;
        return new(
            keys?.LengthOrNull("rebate") ?? piece.Shop.Length(DoorRules.MeetingRebate, "rebate"),
            piece.Shop.Length(DoorRules.MeetingRoom, "room in the rebate"),
            keys?.Text("closes first") == "right" ? Direction.Right : Direction.Left
        );
    }

    /// <summary>Whether a leaf is the one that closes first.</summary>
    public bool IsFirst(Leaf leaf) => leaf.Hinged == First;

    /// <summary>Cuts the meeting edge of a leaf.</summary>
    public void Cut(Leaf leaf, DoorUnit unit)
    {
        var edge = leaf.Hinged.Opposite();
        var strip = unit.Extent.With(edge.Opposite(), unit.Extent.Side(edge) - (Width.Length * edge.Sign()));
        var deep = (unit.Extent.Depth + Room.Length) / 2;
        if (deep >= unit.Extent.Depth)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} is too thin for a rebate: half of it and the room leave nothing.",
                leaf.Source,
                "thicker doors"
            );
        EdgeStrip.Cut(
            unit.Face,
            IsFirst(leaf)
                ? strip.With(Direction.Back, strip.Min.Y + deep)
                : strip.With(Direction.Front, strip.Max.Y - deep)
        );
    }

    /// <summary>The bolts that hold the leaf that closes first, at its top and bottom.</summary>
    public void Bolt(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        if (!IsFirst(leaf))
            return;
        var edge = leaf.Hinged.Opposite();
        var at = new Point(unit.Extent.Side(edge), unit.Extent.Max.Y, unit.Extent.Max.Z);
        var member = unit.Face.First(part => part.Extent.Side(edge) == unit.Extent.Side(edge));
        PartDraft?[] ties = [member, site.Above, site.Below];
        piece.Fit("bolt for the door that closes first", at, 2, [.. ties.OfType<PartDraft>()]);
    }
}

/// <summary>A strip taken off a whole door, whatever members it crosses.</summary>
internal static class EdgeStrip
{
    public static void Cut(IEnumerable<PartDraft> parts, Extent strip)
    {
        foreach (var part in parts)
        {
            if (Extent.Shared(part.Extent, strip) is { } room)
                part.CutAway(CutKind.Rabbet, room);
        }
    }
}
