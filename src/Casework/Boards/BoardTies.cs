using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Boards;

/// <summary>Ties a loose board to all it is said to meet; what it goes into is cut for it.</summary>
internal sealed class BoardTies(PieceBuilder piece, FaceFinder faces, BoardPlan plan, PartDraft board)
{
    public void Make()
    {
        foreach (var (side, said) in plan.Sides.OrderBy(s => s.Key))
        {
            foreach (var meets in said.OfType<MeetsSaid>())
            {
                if (!Meet(meets, side))
                    throw Misses(meets, $" with its {Sides.Word(side)}");
            }
        }
        foreach (var meets in plan.Joined)
        {
            if (meets.IsLetIn)
                throw new CannotBuildException(
                    new InputError(
                        "What goes into another says so at its side.",
                        meets.Place,
                        "left: dadoed into base left side"
                    )
                );
            var met = false;
            foreach (var side in Enum.GetValues<Direction>())
                met |= Meet(meets, side);
            if (!met)
                throw Misses(meets, "");
        }
    }

    /// <summary>Ties the board to whatever of what is meant it meets on a side; false where that is nothing.</summary>
    private bool Meet(MeetsSaid meets, Direction side)
    {
        var met = faces
            .Find(meets.Met)
            .Parts.Where(part => part != board && part.Turn == board.Turn && Touches(meets, part, side))
            .ToList();
        foreach (var part in met)
            Join(meets, part, side);
        return met.Count > 0;
    }

    private bool Touches(MeetsSaid meets, PartDraft part, Direction side) =>
        meets.IsLetIn
            ? Extent.Shared(part.Reckoned, board.Reckoned) is not null
            : Resting.ShareFace(part.Reckoned, board.Reckoned, side.Opposite());

    private void Join(MeetsSaid meets, PartDraft part, Direction side)
    {
        var shared = Footprint(part, side);
        var spread =
            side.Axis() == Axis.X ? Longer(Axis.Y, Axis.Z)
            : side.Axis() == Axis.Y ? Longer(Axis.X, Axis.Z)
            : Longer(Axis.X, Axis.Y);
        Axis Longer(Axis a, Axis b) => shared.Size(a) >= shared.Size(b) ? a : b;
        // One every 150 mm or so, two at least: common practice.
        var count = Math.Max(2, (int)(shared.Size(spread) / Length.FromMillimetres(150)).Round());
        switch (meets.Tie)
        {
            case Tie.Dado or Tie.Groove or Tie.Rabbet or Tie.Tenon or Tie.Loose:
                LetIn(meets, part, side);
                break;
            case Tie.Plugged:
                RefuseFace(meets, side, "Plugged screws");
                PluggedScrews.Between(piece, part, board, side, spread, count);
                break;
            case Tie.Glued:
                piece.Join(JointKind.Butt, part, board, side, glued: meets.Glue ?? true);
                break;
            case Tie.Screwed:
                Screws.Between(piece, part, board, side, count, meets.Glue ?? false);
                break;
            case Tie.PocketScrewed:
                RefuseFace(meets, side, "Pocket screws");
                PocketScrews.Between(piece, part, board, side, plan.Lie.Shows.Opposite(), spread, count);
                break;
            case Tie.Dowelled or Tie.Biscuits:
                var what = meets.Tie == Tie.Biscuits ? "Biscuits" : "Dowels";
                RefuseFace(meets, side, what);
                if (shared != Footprint(board, side))
                    throw new CannotBuildException(
                        new InputError(
                            $"{what} want the whole {Sides.Word(side)} of the {plan.Name} on the {part.Name}.",
                            meets.Place,
                            "a place where it does not stand over, or another joint"
                        )
                    );
                if (meets.Tie == Tie.Biscuits)
                    Biscuits.Between(piece, part, board, side, spread, count);
                else
                    Dowels.Between(piece, part, board, side, spread, count);
                break;
            default:
                piece.Join(JointKind.Resting, part, board, side, glued: meets.Glue ?? false);
                break;
        }
    }

    /// <summary>What the board and a part share in the plane of the board's side.</summary>
    private Extent Footprint(PartDraft part, Direction side)
    {
        var plane = board.Reckoned.Side(side);
        var flat = new Extent(part.Reckoned.Min.With(side.Axis(), plane), part.Reckoned.Max.With(side.Axis(), plane));
        var (min, max) = (flat.Min, flat.Max);
        foreach (var axis in Enum.GetValues<Axis>())
        {
            if (axis == side.Axis())
                continue;
            min = min.With(axis, Length.Max(min[axis], board.Reckoned.Min[axis]));
            max = max.With(axis, Length.Min(max[axis], board.Reckoned.Max[axis]));
        }
        return new Extent(min, max);
    }

    private void LetIn(MeetsSaid meets, PartDraft part, Direction side)
    {
        if (part.IsKept)
            throw new CannotBuildException(
                new InputError(
                    $"The {part.Name} is kept as it is: nothing is cut into it.",
                    meets.Place,
                    "glued to, screwed to, or resting on"
                )
            );
        var depth = BoardPlace.DepthOf(meets, piece, part.SizeAlong(side.Axis()), plan.Material.Thickness)!.Length;
        if (meets.Tie == Tie.Tenon)
        {
            Tenon(meets, part, side, depth);
            return;
        }
        if (depth >= part.Reckoned.Size(side.Axis()))
            throw new CannotBuildException(
                new InputError(
                    $"The {plan.Name} would go right through the {part.Name}.",
                    meets.Place,
                    "less depth than the other is thick"
                )
            );
        var play = meets.Tie == Tie.Loose ? piece.Shop.Length(JointRules.BackPlay).Length : Length.Zero;
        var kind = meets.Tie switch
        {
            Tie.Rabbet => CutKind.Rabbet,
            Tie.Dado => RunsThrough(part, side) ? CutKind.Dado : CutKind.StoppedDado,
            _ => CutKind.Groove,
        };
        Housing.Let(
            piece,
            part,
            board,
            kind,
            side,
            play,
            meets.Tie == Tie.Loose ? JointKind.Loose : null,
            meets.Glue ?? meets.Tie != Tie.Loose
        );
    }

    private void Tenon(MeetsSaid meets, PartDraft part, Direction side, Length length)
    {
        RefuseFace(meets, side, "Tenons");
        if (length > part.Reckoned.Size(side.Axis()))
            throw new CannotBuildException(
                new InputError(
                    $"The tenon of the {plan.Name} comes out of the {part.Name}.",
                    meets.Place,
                    "a tenon no longer than the other is thick"
                )
            );
        // The tenon is as wide as the board, and a third as thick.
        var spread = Enum.GetValues<Axis>().First(a => a != side.Axis() && a != plan.Lie.Shows.Axis());
        MortiseTenon.Between(piece, [part], part, board, side, spread, length);
    }

    /// <summary>Whether the board reaches from end to end, or edge to edge, of what it goes into.</summary>
    private bool RunsThrough(PartDraft part, Direction side) =>
        Enum.GetValues<Axis>()
            .Any(axis =>
                axis != side.Axis()
                && board.Reckoned.Min[axis] <= part.Reckoned.Min[axis]
                && board.Reckoned.Max[axis] >= part.Reckoned.Max[axis]
            );

    private void RefuseFace(MeetsSaid meets, Direction side, string what)
    {
        if (side.Axis() == plan.Lie.Shows.Axis())
            throw new CannotBuildException(
                new InputError(
                    $"{what} go into an end or an edge of a board, and the {Sides.Word(side)} of the {plan.Name} is a face.",
                    meets.Place,
                    "glued to, or screwed to"
                )
            );
    }

    private CannotBuildException Misses(MeetsSaid meets, string with) =>
        new(
            new InputError(
                $"The {plan.Name} does not meet the {meets.Met.Name}{with}.",
                meets.Place,
                $"places and sizes that let the two share a face{Apart(meets)}"
            )
        );

    /// <summary>Where the board lies past the one part that is meant; nothing where several are, or it does not.</summary>
    private string Apart(MeetsSaid meets)
    {
        if (faces.Find(meets.Met).Parts is not [var part] || part.Group.Turn != board.Group.Turn)
            return "";
        var (mine, its) = (board.Reckoned, part.Reckoned);
        foreach (var axis in Enum.GetValues<Axis>())
        {
            if (mine.Min[axis] >= its.Max[axis])
                return Said(Directions.Along(axis, 1), mine.Min[axis] - its.Max[axis]);
            if (mine.Max[axis] <= its.Min[axis])
                return Said(Directions.Along(axis, -1), its.Min[axis] - mine.Max[axis]);
        }
        return "";

        string Said(Direction way, Length by) =>
            $"; now it lies {(by.Sign > 0 ? $"{NoRoom.Show(by)} " : "just ")}{Past(way)} the {part.Name}";
    }

    private static string Past(Direction way) =>
        way switch
        {
            Direction.Left => "left of",
            Direction.Right => "right of",
            Direction.Front => "before",
            Direction.Back => "behind",
            Direction.Down => "below",
            _ => "above",
        };
}
