using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Feet;

/// <summary>Makes bracket feet under a body: it looks only at the body's outside.</summary>
/// <param name="envelope">The outside of body and feet together.</param>
internal sealed class BracketMaker(PieceBuilder piece, GroupDraft owner, Extent envelope, Figure depth)
{
    public IReadOnlyList<PartDraft> Make(BracketsPlan plan)
    {
        Refuse(plan);
        var group = piece.Group("feet", GroupKind.Stand, owner, plan.Place);
        var parts = new List<PartDraft>();
        foreach (var end in (Direction[])[Direction.Left, Direction.Right])
        {
            parts.AddRange(FrontFoot(group, plan, end));
            parts.AddRange(RearFoot(group, plan, end));
        }
        return parts;
    }

    private void Refuse(BracketsPlan plan)
    {
        var thickness = plan.Material.Thickness.Length;
        if (plan.Length.Length * 2 > envelope.Width || plan.Length.Length * 2 > depth.Length)
            throw Cannot(
                plan,
                "Two brackets are longer than the carcase over them.",
                "brackets under half of width and depth"
            );
        if (plan.Strip.Length >= plan.Height.Length || plan.Foot.Length + Rise(plan) > plan.Length.Length)
            throw Cannot(
                plan,
                "There is no room for the curve of the brackets between their foot and their inner end.",
                "longer or lower brackets, or a narrower foot"
            );
        if (plan.Block.Length <= Length.Zero || plan.Block.Length + thickness > plan.Length.Length)
            throw Cannot(
                plan,
                "The foot of the brackets is narrower than they are thick, or their blocks are longer than they.",
                "a wider foot, or longer brackets"
            );
    }

    private static CannotBuildException Cannot(BracketsPlan plan, string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));

    /// <summary>The height that is sawn out, which is also how far the curve runs in.</summary>
    private static Length Rise(BracketsPlan plan) => plan.Height.Length - plan.Strip.Length;

    private IEnumerable<PartDraft> FrontFoot(GroupDraft group, BracketsPlan plan, Direction end)
    {
        var name = end == Direction.Left ? "left" : "right";
        var thickness = plan.Material.Thickness.Length;
        var x = end == Direction.Left ? envelope.Min.X : envelope.Max.X - plan.Length.Length;
        var front = Board(
            group,
            plan,
            $"front {name} bracket",
            Direction.Right,
            Direction.Front,
            envelope.Min with
            {
                X = x,
            }
        );
        var sideX = end == Direction.Left ? envelope.Min.X : envelope.Max.X - thickness;
        var side = Board(
            group,
            plan,
            $"front {name} end bracket",
            Direction.Back,
            end,
            envelope.Min with
            {
                X = sideX,
            }
        );
        CornerMitre.Between(piece, front, end, side, Direction.Front);
        Saw(front, plan, end.Opposite());
        Saw(side, plan, Direction.Back);
        var blockX =
            end == Direction.Left ? envelope.Min.X + thickness : envelope.Max.X - thickness - plan.Block.Length;
        var block = Block(group, plan, $"front {name} block", new(blockX, envelope.Min.Y + thickness, envelope.Min.Z));
        piece.Join(JointKind.Butt, front, block, Direction.Front);
        piece.Join(JointKind.Butt, side, block, end);
        return [front, side, block];
    }

    private IEnumerable<PartDraft> RearFoot(GroupDraft group, BracketsPlan plan, Direction end)
    {
        var name = end == Direction.Left ? "left" : "right";
        var thickness = plan.Material.Thickness.Length;
        var sideX = end == Direction.Left ? envelope.Min.X : envelope.Max.X - thickness;
        var side = Board(
            group,
            plan,
            $"rear {name} end bracket",
            Direction.Back,
            end,
            new(sideX, envelope.Max.Y - plan.Length.Length, envelope.Min.Z)
        );
        Saw(side, plan, Direction.Front);
        var inner = end == Direction.Left ? envelope.Min.X + thickness : envelope.Max.X - plan.Length.Length;
        var back = piece.Board(
            group,
            $"rear {name} back bracket",
            Role.Bracket,
            plan.Material,
            Lie.Of(Direction.Right, Direction.Back),
            (plan.Length - plan.Material.Thickness).As("back bracket length"),
            plan.Height,
            new(inner, envelope.Max.Y - thickness, envelope.Min.Z)
        );
        Saw(back, plan, end.Opposite(), thickness);
        Screws.Between(piece, side, back, end, 2, glued: true);
        var blockX = end == Direction.Left ? inner : envelope.Max.X - thickness - plan.Block.Length;
        var block = Block(
            group,
            plan,
            $"rear {name} block",
            new(blockX, envelope.Max.Y - thickness - plan.Block.Length, envelope.Min.Z)
        );
        piece.Join(JointKind.Butt, side, block, end);
        piece.Join(JointKind.Butt, back, block, Direction.Back);
        return [side, back, block];
    }

    private PartDraft Board(
        GroupDraft group,
        BracketsPlan plan,
        string name,
        Direction along,
        Direction shows,
        Point at
    ) =>
        piece.Board(
            group,
            name,
            Role.Bracket,
            plan.Material,
            Lie.Of(along, shows),
            plan.Length.As("bracket length"),
            plan.Height.As("bracket height"),
            at
        );

    private PartDraft Block(GroupDraft group, BracketsPlan plan, string name, Point at) =>
        piece.Board(
            group,
            name,
            Role.Block,
            plan.Material,
            Lie.Of(Direction.Up, Direction.Front),
            plan.Height.As("block length"),
            plan.Block,
            at,
            thickness: plan.Block
        );

    /// <summary>Saws the curve from the foot to the inner end, out of the lower edge.</summary>
    /// <param name="inset">How far from the corner of the piece the board begins.</param>
    private static void Saw(PartDraft board, BracketsPlan plan, Direction inner, Length inset = default)
    {
        var rise = Rise(plan);
        var (zero, foot, half) = (Length.Zero, plan.Foot.Length, rise / 2);
        var length = plan.Length.Length;
        OutlineCorner[] outline = plan.Shape switch
        {
            BracketShape.Straight => [(foot, zero), (length, zero), (length, rise), (foot + rise, rise)],
            // From the strip down to the floor, round the middle of the opening.
            BracketShape.Cove =>
            [
                (foot, zero),
                (length, zero),
                (length, rise),
                new(foot + rise, rise, new(foot + rise, zero, Clockwise: false)),
            ],
            _ =>
            [
                (foot, zero),
                (length, zero),
                (length, rise),
                new(foot + rise, rise, new(foot + half, rise, Clockwise: true)),
                new(foot + half, half, new(foot + half, zero, Clockwise: false)),
            ],
        };
        Swept.Cut(
            board,
            CutKind.SawnShape,
            Swept.Corner(board.Extent, inner.Opposite(), Direction.Down).Moved(inner.Opposite(), inset),
            inner,
            Direction.Up,
            outline,
            called: plan.Shape == BracketShape.Straight
                ? "bracket, sawn straight"
                : $"bracket, sawn to {(plan.Shape == BracketShape.Cove ? "a hollow" : "an ogee")}"
        );
    }
}
