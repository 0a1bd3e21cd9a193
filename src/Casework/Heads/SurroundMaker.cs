using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Heads;

/// <summary>
/// Plants boards round the front and the ends of a carcase. At the front corners they meet in mitres; towards the back the
/// returns end square. The front length is glued; the returns are glued in the mitre only and screwed from inside, so that
/// solid sides can move behind them (common practice).
/// </summary>
/// <param name="around">What they are planted on: its front and its ends.</param>
/// <param name="width">Its width.</param>
/// <param name="depth">Its depth.</param>
internal sealed class SurroundMaker(PieceBuilder piece, GroupDraft owner, Extent around, Figure width, Figure depth)
{
    /// <param name="plan">What is wanted.</param>
    /// <param name="bottom">The height of the lower edge.</param>
    /// <param name="shaped">The edge of the outer faces that gets the shape: up or down.</param>
    /// <returns>The boards, and what they go round together with what they were planted on.</returns>
    public Surround Make(SurroundPlan plan, Length bottom, Direction shaped)
    {
        var before = piece.Parts.ToList();
        var stands = plan.Material.Thickness.As(plan.Name);
        var frontLength = width;
        if (plan.AtLeft)
            frontLength += stands;
        if (plan.AtRight)
            frontLength += stands;
        var outer = around.Grown(Direction.Front, stands.Length);
        if (plan.AtLeft)
            outer = outer.Grown(Direction.Left, stands.Length);
        if (plan.AtRight)
            outer = outer.Grown(Direction.Right, stands.Length);

        var front = Board(plan, "front", Direction.Right, Direction.Front, frontLength, outer.Min with { Z = bottom });
        var boards = new List<PartDraft> { front };
        foreach (var end in Ends(plan))
        {
            var x = end == Direction.Left ? outer.Min.X : around.Max.X;
            boards.Add(
                Board(
                    plan,
                    end == Direction.Left ? "left return" : "right return",
                    Direction.Back,
                    end,
                    (depth + stands).As($"{plan.Name} return length"),
                    new(x, outer.Min.Y, bottom)
                )
            );
        }
        foreach (var board in boards)
            RefuseClash(plan, board, before);
        foreach (var back in boards.Skip(1))
            Mitre(plan, front, back, shaped);
        if (plan.Shape is { } shape)
        {
            foreach (var board in boards)
                ShapedEdge.Cut(board, shaped, board.Place.Lie.Shows, shape);
        }
        foreach (var board in boards)
            Plant(board, before);
        return new Surround(boards, outer, frontLength, (depth + stands).As("depth with " + plan.Name));
    }

    private void Mitre(SurroundPlan plan, PartDraft front, PartDraft back, Direction shaped)
    {
        var end = back.Place.Lie.Shows;
        if (!plan.IsSplined)
        {
            CornerMitre.Between(piece, front, end, back, Direction.Front);
            return;
        }
        // Where the shape is run the spline would come out of it.
        var over = plan.Shape?.In ?? Length.Zero;
        var run =
            over.Sign == 0
                ? plan.Height
                : plan.Height - Figure.Given($"the {plan.Shape!.Called}", over, new TradeOrigin("its size"));
        if (run.Length < piece.Shop.Length(JointRules.SplineDepth).Length * 2)
            throw new CannotBuildException(
                new InputError(
                    $"The shape of the {plan.Name} leaves no room beside it for a spline across the mitre.",
                    plan.Place,
                    "a higher board, a smaller shape, or a plain mitre"
                )
            );
        var from = front.Reckoned.Min.Z + (shaped == Direction.Down ? over : Length.Zero);
        SplinedMitre.Between(
            piece,
            front,
            end,
            back,
            Direction.Front,
            $"{plan.Name} {Spoken.Of(end)} spline",
            (from, run)
        );
    }

    private static IEnumerable<Direction> Ends(SurroundPlan plan)
    {
        if (plan.AtLeft)
            yield return Direction.Left;
        if (plan.AtRight)
            yield return Direction.Right;
    }

    private PartDraft Board(
        SurroundPlan plan,
        string which,
        Direction along,
        Direction shows,
        Figure length,
        Point at
    ) =>
        piece.Board(
            owner,
            $"{plan.Name} {which}",
            Role.Moulding,
            plan.Material,
            Lie.Of(along, shows),
            length.As($"{plan.Name} length"),
            plan.Height,
            at,
            plan.Place
        );

    /// <summary>Doors, drawers and tops may stand where the boards should go.</summary>
    private void RefuseClash(SurroundPlan plan, PartDraft board, IReadOnlyList<PartDraft> others)
    {
        if (
            others.FirstOrDefault(other =>
                other.Turn == board.Turn && Extent.Shared(board.Reckoned, other.Reckoned) is not null
            ) is
            { } clash
        )
        {
            var deep = Extent.Shared(board.Reckoned, clash.Reckoned)!.Value.Height;
            throw new CannotBuildException(
                new InputError(
                    $"The {board.Name} would stand in the place of the {clash.Name}.",
                    plan.Place,
                    $"a board {NoRoom.Show(deep)} lower, fronts that end so much further from it, or a wider rail there"
                )
            );
        }
        var hidden = piece.Openings.FirstOrDefault(opening =>
            opening.Id.StartsWith($"{owner.Id}/", StringComparison.Ordinal)
            && piece.Fronts.Any(front => front.Opening == opening.Id)
            && board.Place.Lie.Shows == Direction.Front
            && opening.Clear.Min.Z < board.Reckoned.Max.Z
            && opening.Clear.Max.Z > board.Reckoned.Min.Z
        );
        if (hidden is not null)
            throw new CannotBuildException(
                new InputError(
                    $"The {board.Name} would hang before the front of the {hidden.Name}.",
                    plan.Place,
                    "a lower board, or a wider rail there"
                )
            );
    }

    private void Plant(PartDraft board, IReadOnlyList<PartDraft> others)
    {
        var inward = board.Place.Lie.Shows.Opposite();
        // Panels of a framed side stay free.
        foreach (var other in others.Where(other => other.Role != Role.SidePanel))
        {
            if (Resting.ShareFace(board, other, inward))
            {
                if (inward == Direction.Back)
                    piece.Join(JointKind.Butt, other, board, inward);
                else
                    Screws.Between(piece, other, board, inward, 3);
            }
            else if (Resting.ShareFace(board, other, Direction.Up))
            {
                piece.Join(JointKind.Butt, other, board, Direction.Up, glued: false);
            }
        }
    }
}

/// <summary>Boards that were planted round a carcase.</summary>
/// <param name="Around">What is now their outside: its front, its ends, and the back as before.</param>
internal sealed record Surround(IReadOnlyList<PartDraft> Boards, Extent Around, Figure Width, Figure Depth);
