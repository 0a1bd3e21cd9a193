using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>A groove or rabbet along one edge of a member, from end to end: what stiles and rails get for their panel.</summary>
internal static class EdgeGroove
{
    /// <summary>Cuts along the member's own edge, wherever that really is.</summary>
    /// <param name="edge">The edge, as a direction of the piece.</param>
    /// <param name="depth">How deep from that edge.</param>
    /// <param name="fromFace">From the front face of the member to the cut.</param>
    /// <param name="width">How wide; null: through to the back, a rabbet.</param>
    /// <param name="along">The stretch along the member; null: from end to end.</param>
    /// <param name="shows">Where its front face looks.</param>
    public static void Cut(
        PartDraft member,
        Direction edge,
        Length depth,
        Length fromFace,
        Length? width,
        (Axis Axis, Length From, Length To)? along = null,
        Direction shows = Direction.Front
    )
    {
        var start = member.Extent.Side(shows) - (fromFace * shows.Sign());
        var room = member
            .Extent.With(edge.Opposite(), member.Extent.Side(edge) - (depth * edge.Sign()))
            .With(shows, start);
        if (width is { } wide)
            room = room.With(shows.Opposite(), start - (wide * shows.Sign()));
        if (along is { } stretch)
            room = new Extent(room.Min.With(stretch.Axis, stretch.From), room.Max.With(stretch.Axis, stretch.To));
        if (Length.Min(room.Depth, Length.Min(room.Width, room.Height)) <= Length.Zero)
            return; // A member the maker cut thinner than its lip has nothing there to take away.
        member.CutAway(width is null ? CutKind.Rabbet : CutKind.Groove, room);
    }
}
