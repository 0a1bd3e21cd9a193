using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Sets a back: in rabbets of the sides, in grooves all round, or planted on the rear edges.</summary>
internal sealed class BackMaker(
    PieceBuilder piece,
    CarcasePlan plan,
    PartDraft left,
    PartDraft right,
    PartDraft bottom,
    IReadOnlyList<PartDraft> closing,
    BoxCorners corners,
    Figure insideWidth,
    Figure insideHeight,
    Figure sideLength,
    Length baseZ
)
{
    private readonly Figure _thickness = plan.Body.Thickness;

    public PartDraft Make(BackPlan back, Extent inside, Length topZ) =>
        back.Set switch
        {
            BackSet.Rabbeted => Rabbeted(back, inside),
            BackSet.Grooved => Grooved(back, inside, topZ),
            _ => Planted(back, inside),
        };

    private PartDraft Rabbeted(BackPlan back, Extent inside)
    {
        var lap = piece.Shop.Length(JointRules.RabbetWidth, "rabbet");
        // A flat panel that ends in a corner joint is rabbeted as the sides are; else the back covers its rear edge.
        var (below, above) = (LapOver(Direction.Down), LapOver(Direction.Up));
        var panel = Panel(
            back,
            insideWidth + lap + lap,
            insideHeight + below + above,
            new(inside.Min.X - lap.Length, inside.Max.Y, inside.Min.Z - below.Length)
        );
        foreach (var (side, into) in Sides())
            Housing.Let(
                piece,
                side,
                panel,
                CutKind.Rabbet,
                into,
                through: [.. Levels().Where(end => !corners.Has(end))]
            );
        foreach (
            var (flat, end) in (ReadOnlySpan<(PartDraft, Direction)>)
                [(bottom, Direction.Down), (closing[^1], Direction.Up)]
        )
        {
            if (corners.Has(end))
                Housing.Let(piece, flat, panel, CutKind.Rabbet, end);
            else
                ScrewTo(panel, [flat]);
        }
        return panel;

        Figure LapOver(Direction end) => corners.Has(end) ? lap : _thickness;
    }

    private PartDraft Grooved(BackPlan back, Extent inside, Length topZ)
    {
        var depth = piece.Shop.Length(JointRules.BackGrooveDepth, "groove");
        var play = piece.Shop.Length(JointRules.BackPlay, "play");
        var reach = depth - play;
        var toPanel = plan.ClosedBy == ClosedBy.Panel;
        // Under stretchers the back runs up behind the rear one, to the top of the sides.
        var height = toPanel ? insideHeight + reach + reach : insideHeight + _thickness + reach;
        var panel = Panel(
            back,
            insideWidth + reach + reach,
            height,
            new(inside.Min.X - reach.Length, inside.Max.Y, inside.Min.Z - reach.Length)
        );
        foreach (var (side, into) in Sides())
            Groove(
                side,
                panel,
                into,
                play,
                [.. Levels().Where(corners.Has)],
                [.. Levels().Where(end => !corners.Has(end))]
            );
        Level(bottom, Direction.Down);
        if (toPanel)
            Level(closing[0], Direction.Up);
        else
            ScrewTo(panel, [closing[^1]]);
        return panel;

        // Where it would come out through the corner joint a groove stops at the panel.
        void Level(PartDraft flat, Direction end)
        {
            Direction[] ends = [Direction.Left, Direction.Right];
            Groove(flat, panel, end, play, corners.Has(end) ? ends : [], corners.Has(end) ? [] : ends);
        }
    }

    private void Groove(
        PartDraft part,
        PartDraft panel,
        Direction into,
        Figure play,
        IReadOnlyList<Direction> stopped,
        ReadOnlySpan<Direction> through
    ) =>
        Housing.Let(
            piece,
            part,
            panel,
            CutKind.Groove,
            into,
            play.Length,
            JointKind.Loose,
            glued: false,
            roomAt: stopped,
            through: through
        );

    private PartDraft Planted(BackPlan back, Extent inside)
    {
        var panel = Panel(back, plan.Width, sideLength, new(plan.Envelope.Min.X, inside.Max.Y, baseZ));
        ScrewTo(panel, [left, right, bottom, closing[^1]]);
        return panel;
    }

    /// <summary>A back's grain runs up, so its length is its height.</summary>
    private PartDraft Panel(BackPlan back, Figure width, Figure height, Point at) =>
        piece.Board(
            plan.Group,
            "back",
            Role.Back,
            back.Material,
            Lie.Of(Direction.Up, Direction.Front),
            height.As("back height"),
            width.As("back width"),
            at
        );

    private void ScrewTo(PartDraft panel, IReadOnlyList<PartDraft> parts)
    {
        foreach (var part in parts)
            Screws.Between(piece, part, panel, Direction.Front, 4);
    }

    private static Direction[] Levels() => [Direction.Up, Direction.Down];

    private (PartDraft, Direction)[] Sides() => [(left, Direction.Left), (right, Direction.Right)];
}
