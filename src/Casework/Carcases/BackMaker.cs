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
        var panel = Panel(
            back,
            insideWidth + lap + lap,
            insideHeight + _thickness + _thickness,
            new(inside.Min.X - lap.Length, inside.Max.Y, inside.Min.Z - _thickness.Length)
        );
        foreach (var (side, into) in Sides())
            Housing.Let(piece, side, panel, CutKind.Rabbet, into, through: [Direction.Up, Direction.Down]);
        ScrewTo(panel, [bottom, closing[^1]]);
        return panel;
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
            Groove(side, panel, into, play, Direction.Up, Direction.Down);
        Groove(bottom, panel, Direction.Down, play, Direction.Left, Direction.Right);
        if (toPanel)
            Groove(closing[0], panel, Direction.Up, play, Direction.Left, Direction.Right);
        else
            ScrewTo(panel, [closing[^1]]);
        return panel;
    }

    private void Groove(
        PartDraft part,
        PartDraft panel,
        Direction into,
        Figure play,
        params ReadOnlySpan<Direction> through
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

    private (PartDraft, Direction)[] Sides() => [(left, Direction.Left), (right, Direction.Right)];
}
