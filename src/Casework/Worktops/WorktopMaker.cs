using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Worktops;

/// <summary>Lays worktops over runs of carcases: lengths, their joints, the corner to another worktop, cut-outs.</summary>
internal sealed class WorktopMaker(
    PieceBuilder piece,
    GroupDraft root,
    IReadOnlyList<(Body Body, GroupDraft Group)> carcases
)
{
    private readonly List<Worktop> _made = [];

    /// <summary>Makes all worktops; their edges are shaped when it is known which ends lie in a corner.</summary>
    public void Make(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries)
            Make(entry);
        foreach (var top in _made)
            WorktopEdges.Shape(top);
    }

    private void Make(Entry entry)
    {
        var fields = new Fields((Mapping)entry.Value, piece.Scope);
        var plan = WorktopWord.Read(fields, piece);
        var named = fields.List("over").OfType<Scalar>().Select(name => Carcase(name)).ToList();
        var run = WorktopRun.Of(named, fields.PlaceOf("over"));
        if (run.Diagonal is { } diagonal)
        {
            AcrossACorner(entry, fields, plan, run, diagonal);
            return;
        }
        var corner = WorktopCorner.Of(run, _made);
        if (corner is { Main.Run.Diagonal: not null } && IsMitred(fields))
            throw new CannotBuildException(
                new InputError(
                    $"The worktop over the {corner.Main.Run.Carcases[0].Body.Name} ends square before the return.",
                    fields.PlaceOf("corner"),
                    "corner: butt"
                )
            );
        var (length, left) = corner is null
            ? (Over(Over(run.Width, plan.Left), plan.Right), run.Left - plan.Left.Length)
            : corner.Stretch(Over(run.Width, corner.IsLeft ? plan.Right : plan.Left), plan, IsMitred(fields));
        length = length.As("worktop length");
        var width = Over(Over(run.Depth, plan.Front), plan.Back).As("worktop width");
        var front = run.Front - plan.Front.Length;
        var group = piece.Group(entry.Key, GroupKind.Top, root, entry.KeyPlace, run.Turn);
        var lengths = Lengths(group, plan, fields, length, width, new(left, front, run.Top));
        var top = new Worktop(entry.Key, run, lengths, left, left + length.Length, front, front + width.Length)
        {
            Edge = plan.Edge,
        };
        for (var n = 1; n < lengths.Count; n++)
            BoltPockets.Butt(piece, lengths[n - 1], lengths[n], Direction.Left);
        corner?.Join(piece, top, IsMitred(fields));
        foreach (var hole in fields.Named("cut outs"))
            CutOut.Cut(piece, top, hole, fields.Place);
        foreach (var board in lengths)
            ScrewDown(run, board);
        foreach (var beside in _made.Where(made => made.Run.Diagonal is not null))
            DiagonalWorktop.Join(piece, beside, [top]);
        _made.Add(top);
    }

    private void AcrossACorner(Entry entry, Fields fields, TopPlan plan, WorktopRun run, DiagonalPlan diagonal)
    {
        DiagonalWorktop.Refuse(fields, plan);
        var group = piece.Group(entry.Key, GroupKind.Top, root, entry.KeyPlace, run.Turn);
        var board = DiagonalWorktop.Lay(piece, group, plan, run.Carcases[0].Body, diagonal, run.Top);
        var (from, to) = (board.Reckoned.Min, board.Reckoned.Max);
        var top = new Worktop(entry.Key, run, [board], from.X, to.X, from.Y, to.Y);
        DiagonalWorktop.Join(piece, top, _made);
        ScrewDown(run, board);
        _made.Add(top);
    }

    private static bool IsMitred(Fields fields) => fields.Text("corner") == "mitre";

    private (Body, GroupDraft) Carcase(Scalar name) =>
        carcases.FirstOrDefault(c => c.Body.Name == name.Text) is { Body: not null } found
            ? found
            : throw new CannotBuildException(
                new InputError(
                    $"There is no carcase called '{name.Text}'.",
                    name.Place,
                    $"one of {string.Join(", ", carcases.Select(c => c.Body.Name))}"
                )
            );

    private List<PartDraft> Lengths(
        GroupDraft group,
        TopPlan plan,
        Fields fields,
        Figure length,
        Figure width,
        Point at
    )
    {
        var joints = fields
            .List("joints")
            .OfType<Scalar>()
            .Select(joint => piece.Scope.Length(joint, "joint from the left"))
            .ToList();
        var boards = new List<PartDraft>();
        Figure? from = null;
        foreach (var to in (IEnumerable<Figure>)[.. joints, length])
        {
            var size = from is null ? to : to - from;
            if (size.Length <= Length.Zero)
                throw new CannotBuildException(
                    new InputError(
                        "The joints of the worktop do not lie one after the other within its length.",
                        fields.PlaceOf("joints"),
                        "distances from the left end that rise, less than its length"
                    )
                );
            boards.Add(
                piece.Board(
                    group,
                    joints.Count == 0 ? "top" : $"length {boards.Count + 1}",
                    Role.Worktop,
                    plan.Material,
                    Lie.Of(Direction.Right, Direction.Up),
                    size,
                    width,
                    at.Moved(Direction.Right, from?.Length ?? Length.Zero)
                )
            );
            from = to;
        }
        return boards;
    }

    /// <summary>Screws from below through what closes the carcases; the rest carries.</summary>
    private void ScrewDown(WorktopRun run, PartDraft board)
    {
        foreach (var (_, group) in run.Carcases)
        {
            var under = piece.Parts.Where(p => p.Group == group || p.Group.Parent == group).ToList();
            foreach (var part in under.Where(p => Resting.ShareFace(p, board, Direction.Up)))
            {
                if (part.Role is Role.Stretcher or Role.Top)
                    Screws.Between(piece, part, board, Direction.Down, 4);
                else
                    piece.Join(JointKind.Resting, part, board, Direction.Down, glued: false);
            }
        }
    }

    /// <summary>With an overhang where there is one: nothing is no term of a sum.</summary>
    private static Figure Over(Figure size, Figure overhang) => overhang.Length == Length.Zero ? size : size + overhang;
}
