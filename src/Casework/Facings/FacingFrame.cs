using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Facings;

/// <summary>
/// A frame with panels, seen from its front: stiles over the full height, rails and muntins with stub tenons in the grooves
/// that run along all members, panels loose in them.
/// </summary>
internal sealed class FacingFrame(PieceBuilder piece, FacingPlan facing, GroupDraft group)
{
    private readonly Figure _depth = piece.Shop.Length(DoorRules.DoorGrooveDepth, "groove depth");
    private readonly Length _lip = piece.Shop.Length(DoorRules.DoorLip).Length;

    /// <summary>Cut to the panel: a facing has no back to be thin for.</summary>
    private readonly Length _groove = facing.Panel.Thickness.Length;

    public (PartDraft Left, PartDraft Right) Make(Point at, Figure width, Figure height)
    {
        var inside = (width - facing.Stile - facing.Stile).As("between the stiles");
        var clear = (height - facing.Rail - facing.Rail).As("between the rails");
        Refuse(inside, clear);
        var left = Upright("left stile", height, at);
        var right = Upright("right stile", height, at.Moved(Direction.Right, width.Length - facing.Stile.Length));
        var railAt = at.Moved(Direction.Right, facing.Stile.Length - _depth.Length);
        var bottom = Rail("bottom rail", inside, railAt);
        var top = Rail("top rail", inside, railAt.Moved(Direction.Up, height.Length - facing.Rail.Length));
        Groove(left, Direction.Right);
        Groove(right, Direction.Left);
        Groove(bottom, Direction.Up);
        Groove(top, Direction.Down);
        foreach (var rail in (PartDraft[])[bottom, top])
        {
            Tenon(rail, left, Direction.Left);
            Tenon(rail, right, Direction.Right);
            rail.ShoulderLength = (rail.Length - _depth - _depth).As("shoulder to shoulder");
        }
        Panels(at, inside, clear, (left, right, bottom, top));
        return (left, right);
    }

    private void Panels(
        Point at,
        Figure inside,
        Figure clear,
        (PartDraft Left, PartDraft Right, PartDraft Bottom, PartDraft Top) frame
    )
    {
        var count = facing.Muntins + 1;
        var field =
            count == 1 ? inside : ((inside - (facing.Stile * facing.Muntins)) / count).As("between the muntins");
        if (field.Length <= _depth.Length)
            throw Refused("The muntins leave no panels between them.", "fewer or narrower muntins");
        var from = at.X + facing.Stile.Length;
        var low = at.Z + facing.Rail.Length;
        var before = frame.Left;
        for (var n = 0; n < count; n++)
        {
            var isLast = n == count - 1;
            var next = isLast ? frame.Right : Muntin(n, from + field.Length, low);
            Panel(
                count == 1 ? "panel" : $"panel {n + 1}",
                from,
                low,
                field,
                clear,
                (before, next, frame.Bottom, frame.Top)
            );
            from += field.Length + facing.Stile.Length;
            before = next;
        }

        PartDraft Muntin(int n, Length x, Length z)
        {
            var muntin = Upright(
                facing.Muntins == 1 ? "muntin" : $"muntin {n + 1}",
                clear + _depth + _depth,
                new(x, at.Y, z - _depth.Length)
            );
            muntin.ShoulderLength = (muntin.Length - _depth - _depth).As("shoulder to shoulder");
            Groove(muntin, Direction.Left);
            Groove(muntin, Direction.Right);
            Tenon(muntin, frame.Bottom, Direction.Down);
            Tenon(muntin, frame.Top, Direction.Up);
            return muntin;
        }
    }

    private void Panel(
        string name,
        Length x,
        Length z,
        Figure width,
        Figure height,
        (PartDraft Left, PartDraft Right, PartDraft Below, PartDraft Above) around
    )
    {
        var isSheet = facing.Panel.Kind == MaterialKind.Sheet;
        var along = piece.Shop.Length(isSheet ? DoorRules.PanelPlaySheet : DoorRules.PanelPlayEnd, "play");
        var across = piece.Shop.Length(isSheet ? DoorRules.PanelPlaySheet : DoorRules.PanelPlaySide, "play");
        var (deepUp, deepAcross) = (_depth.Length - along.Length, _depth.Length - across.Length);
        if (Length.Min(deepUp, deepAcross) <= Length.Zero)
            throw Refused(
                "The panels of a facing would fall out: their play takes the whole depth of the groove.",
                "a deeper groove or less play in the shop file's rules for doors"
            );
        var panel = piece.Board(
            group,
            name,
            Role.FacingPanel,
            facing.Panel,
            Lie.Of(Direction.Up, Direction.Front),
            (height + _depth + _depth - along - along).As("panel length"),
            (width + _depth + _depth - across - across).As("panel width"),
            new(x - deepAcross, around.Left.Extent.Min.Y + _lip, z - deepUp)
        );
        piece.Join(JointKind.Loose, around.Left, panel, Direction.Left, deepAcross, across.Length, glued: false);
        piece.Join(JointKind.Loose, around.Right, panel, Direction.Right, deepAcross, across.Length, glued: false);
        piece.Join(JointKind.Loose, around.Below, panel, Direction.Down, deepUp, along.Length, glued: false);
        piece.Join(JointKind.Loose, around.Above, panel, Direction.Up, deepUp, along.Length, glued: false);
    }

    private PartDraft Upright(string name, Figure length, Point at) =>
        piece.Board(
            group,
            name,
            Role.FacingStile,
            facing.Material,
            Lie.Of(Direction.Up, Direction.Front),
            length.As("stile length"),
            facing.Stile,
            at
        );

    private PartDraft Rail(string name, Figure inside, Point at) =>
        piece.Board(
            group,
            name,
            Role.FacingRail,
            facing.Material,
            Lie.Of(Direction.Right, Direction.Front),
            (inside + _depth + _depth).As("rail length"),
            facing.Rail,
            at
        );

    private void Groove(PartDraft member, Direction edge) => EdgeGroove.Cut(member, edge, _depth.Length, _lip, _groove);

    private void Tenon(PartDraft member, PartDraft into, Direction way)
    {
        var from = member.Extent.Min.Y + _lip;
        StubTenon.At(piece, into, member, way, _depth.Length, Axis.Y, from, from + _groove);
    }

    private void Refuse(Figure inside, Figure clear)
    {
        if (Length.Min(inside.Length, clear.Length) <= Length.Zero)
            throw Refused("Stiles and rails of a facing leave nothing between them.", "narrower stiles and rails");
        if (_lip + _groove >= facing.Material.Thickness.Length)
            throw Refused(
                "Lip and panel take all of the thickness of the facing.",
                "a thicker material, or a thinner panel"
            );
        if (_depth.Length * 2 >= Length.Min(facing.Stile.Length, facing.Rail.Length))
            throw Refused("The grooves would cut through stiles and rails.", "wider stiles and rails");
    }

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, facing.Place, wanted));
}
