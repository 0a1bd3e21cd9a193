using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Partitions and dividing shelves behind the front.</summary>
internal sealed class BayDividers(PieceBuilder piece, CarcasePlan plan, Box box)
{
    private readonly Figure _dado = piece.Shop.Length(JointRules.DadoDepth, "dado depth");

    private Figure? LetInto => plan.IsLetIn ? _dado : null;

    private Length LetIn => LetInto?.Length ?? Length.Zero;

    /// <summary>An upright panel between the floor and the ceiling of a cell.</summary>
    /// <param name="x">Its left face.</param>
    public PartDraft Partition(string name, Cell cell, Length x)
    {
        var partition = Panels
            .Make(
                piece,
                plan,
                name,
                Role.Partition,
                plan.Body,
                Lie.Of(Direction.Up, Direction.Left),
                LetInBothEnds(cell.InsideHeight).As("partition length"),
                box.InsideDepth.As("partition width"),
                new(x, cell.Inside.Min.Y, cell.Inside.Min.Z - LetIn),
                letIn: LetInto
            )
            .Panel;
        PanelJoints.Tie(piece, plan.Joint, cell.Floor, partition, Direction.Down, Axis.Y);
        foreach (var flat in cell.Ceiling)
            PanelJoints.Tie(piece, plan.Joint, flat, partition, Direction.Up, Axis.Y);
        if (box.Back is not null)
            Screws.Between(piece, partition, box.Back, Direction.Front, 3);
        return partition;
    }

    /// <summary>A fixed flat panel between the uprights of a cell.</summary>
    /// <param name="z">Its underside.</param>
    public PartDraft Shelf(string name, Cell cell, Length z)
    {
        var shelf = Panels
            .Make(
                piece,
                plan,
                name,
                Role.Shelf,
                plan.Body,
                Lie.Of(Direction.Right, Direction.Up),
                LetInBothEnds(cell.InsideWidth).As("divider length"),
                box.InsideDepth.As("divider width"),
                new(cell.Inside.Min.X - LetIn, cell.Inside.Min.Y, z),
                letIn: LetInto
            )
            .Panel;
        PanelJoints.Tie(piece, plan.Joint, cell.InsideLeft, shelf, Direction.Left, Axis.Y);
        PanelJoints.Tie(piece, plan.Joint, cell.InsideRight, shelf, Direction.Right, Axis.Y);
        return shelf;
    }

    /// <summary>The inside of a cell left and right of a partition.</summary>
    /// <param name="before">Clear width left of it.</param>
    public static (Cell Before, Cell After) Split(Cell cell, PartDraft partition, Figure before, Figure thickness) =>
        (
            cell with
            {
                InsideRight = partition,
                InsideWidth = before,
                Inside = cell.Inside.With(Direction.Right, partition.Reckoned.Min.X),
            },
            cell with
            {
                InsideLeft = partition,
                InsideWidth = (cell.InsideWidth - before - thickness).As("rest of the width"),
                Inside = cell.Inside.With(Direction.Left, partition.Reckoned.Max.X),
            }
        );

    /// <summary>The inside of two rows above and below a dividing shelf.</summary>
    /// <param name="below">Clear height below it.</param>
    public static (Cell Row, Cell Below) SplitFlat(
        Cell row,
        Cell rest,
        PartDraft shelf,
        Figure below,
        Figure thickness
    ) =>
        (
            row with
            {
                Floor = shelf,
                InsideHeight = (row.InsideHeight - below - thickness).As("height above"),
                Inside = row.Inside.With(Direction.Down, shelf.Reckoned.Max.Z),
            },
            rest with
            {
                Ceiling = [shelf],
                InsideHeight = below,
                Inside = rest.Inside.With(Direction.Up, shelf.Reckoned.Min.Z),
            }
        );

    /// <summary>
    /// The inside of two rows with no panel between: each reaches as far as its own opening, so that its shelves stand
    /// behind it.
    /// </summary>
    /// <param name="between">Height of the rail between them; null where only a gap divides.</param>
    public static (Cell Row, Cell Below) SplitOpen(Cell row, Cell rest, Figure? between)
    {
        var above = row.InsideHeight - rest.Height;
        return (
            row with
            {
                InsideHeight = (between is null ? above : above - between).As("height above"),
                Inside = row.Inside.With(Direction.Down, row.Z),
            },
            rest with
            {
                InsideHeight = rest.Height.As("height below"),
                Inside = rest.Inside.With(Direction.Up, rest.Z + rest.Height.Length),
            }
        );
    }

    private Figure LetInBothEnds(Figure clear) => plan.IsLetIn ? clear + _dado + _dado : clear;
}
