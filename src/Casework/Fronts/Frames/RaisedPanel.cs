using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>
/// How a panel is raised: a bevel from its tongue up to a small step, the fillet, around the field. Tongue and bevel are cut
/// along each edge in one profile; the corners mitre by themselves where the profiles meet.
/// </summary>
/// <param name="Bevel">Width of the bevel, from the shoulder of the tongue to the field.</param>
/// <param name="Fillet">Height of the step.</param>
internal sealed record RaisedPanel(Figure Bevel, Figure Fillet)
{
    public static RaisedPanel? Read(PieceBuilder piece, Fields? said, string? spoken, DoorKind kind, SourcePlace place)
    {
        var keys = said?.Map("raised");
        if (spoken != "raised" && said?.Has("raised") != true)
            return null;
        if (kind != DoorKind.Framed)
            throw NoRoom.Of("Only the panel of a framed door can be raised.", place, "`kind: framed`, or not raised");
        return new(
            keys?.LengthOrNull("bevel") ?? piece.Shop.Length(DoorRules.RaiseBevel, "bevel"),
            keys?.LengthOrNull("fillet") ?? piece.Shop.Length(DoorRules.RaiseFillet, "fillet")
        );
    }

    /// <summary>Cuts tongue and bevel along all four edges of a panel's front.</summary>
    /// <param name="tongue">Length of the tongue.</param>
    /// <param name="deep">From the field to the front of the tongue.</param>
    /// <param name="right">Where its right edge is, as it is seen.</param>
    /// <param name="shows">Where its front looks.</param>
    public void Cut(
        PartDraft panel,
        Length tongue,
        Length deep,
        Direction right = Direction.Right,
        Direction shows = Direction.Front
    )
    {
        var inner = tongue + Bevel.Length;
        var outline = new List<OutlineCorner> { (Length.Zero, Length.Zero), (inner, Length.Zero) };
        if (Fillet.Length > Length.Zero)
            outline.Add((inner, Fillet.Length));
        outline.Add((tongue, deep));
        outline.Add((Length.Zero, deep));
        var shape = new EdgeShape(CutKind.Bevel, "panel bevel", outline);
        foreach (var edge in (ReadOnlySpan<Direction>)[right.Opposite(), right, Direction.Down, Direction.Up])
            ShapedEdge.Cut(panel, edge, shows, shape);
    }

    /// <summary>Refuses what leaves no field or no bevel.</summary>
    /// <param name="whose">What the frame is called.</param>
    /// <param name="infill">What the panel is made of.</param>
    public void Refuse(
        string whose,
        Material infill,
        SourcePlace place,
        Length length,
        Length width,
        Length tongue,
        Length deep
    )
    {
        var taken = (tongue + Bevel.Length) * 2;
        if (Length.Min(length, width) <= taken)
            throw NoRoom.Of(
                $"The panel of the {whose} is {NoRoom.Show(Length.Min(length, width))} wide: its bevels of {NoRoom.Show(Bevel.Length)} leave no field.",
                place,
                "a narrower `bevel:`, or a larger panel"
            );
        if (deep <= Fillet.Length)
            throw NoRoom.Of(
                $"The panel of the {whose} stands {NoRoom.Show(Length.Max(deep, Length.Zero))} before its tongue: that is no more than its fillet, and leaves nothing to bevel.",
                place,
                "a `panel:` of a material thicker than the groove is wide, by more than the fillet"
            );
        if (infill is { Kind: MaterialKind.Sheet, HasGrain: true })
            throw NoRoom.Of(
                $"The panel of the {whose} is {infill.Stuff}: a bevel would lay its plies bare.",
                place,
                "a `panel:` of solid timber, or of a sheet without plies"
            );
    }
}
