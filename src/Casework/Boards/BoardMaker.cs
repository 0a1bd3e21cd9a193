using Dryfit.Casework.Building;
using Dryfit.Casework.Own;
using Dryfit.Casework.Words;
using Dryfit.Findings;

namespace Dryfit.Casework.Boards;

/// <summary>Makes the loose boards of the recipe, each after what it leans on, in whatever order they stand there.</summary>
internal sealed class BoardMaker
{
    /// <summary>A longer chain of boards, each placed by the one before, would be deep to follow; no maker writes one.</summary>
    private const int LongestChain = 100;

    private readonly PieceBuilder _piece;
    private readonly GroupDraft _group;
    private readonly IReadOnlyList<BoardPlan> _plans;
    private readonly FaceFinder _faces;
    private readonly Dictionary<string, PartDraft> _made = new(StringComparer.OrdinalIgnoreCase);
    private readonly Lines _lines = new();
    private readonly Dictionary<string, GroupDraft> _units = new(StringComparer.Ordinal);
    private readonly List<string> _making = [];

    private BoardMaker(
        PieceBuilder piece,
        GroupDraft group,
        IReadOnlyList<(Body Body, GroupDraft Group)> bodies,
        IReadOnlyList<BoardPlan> plans
    )
    {
        _piece = piece;
        _group = group;
        _plans = plans;
        _faces = new FaceFinder(piece, bodies, [.. plans.Select(p => p.Name)], Settled);
    }

    public static void Make(
        PieceBuilder piece,
        GroupDraft group,
        IReadOnlyList<(Body Body, GroupDraft Group)> bodies,
        IReadOnlyList<BoardPlan> plans
    )
    {
        var maker = new BoardMaker(piece, group, bodies, plans);
        foreach (var plan in plans)
            maker.Settled(plan.Name, plan.Place);
    }

    private PartDraft Settled(string name, SourcePlace asked)
    {
        if (_made.TryGetValue(name, out var made))
            return made;
        if (_making.Contains(name, StringComparer.OrdinalIgnoreCase))
            throw new CannotBuildException(
                new InputError(
                    $"The boards lean on each other in a circle: {string.Join(" -> ", _making.Append(name))}.",
                    asked,
                    "one of them placed by itself"
                )
            );
        if (_making.Count >= LongestChain)
            throw new CannotBuildException(
                new InputError(
                    $"The boards lean on boards that lean on boards, more than {LongestChain} in a row.",
                    asked,
                    "a board placed by something nearer"
                )
            );
        _making.Add(name);
        var board = Make(_plans.First(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase)));
        _making.RemoveAt(_making.Count - 1);
        _made.Add(name, board);
        return board;
    }

    /// <summary>The boards of one use of an own word are one unit; beside a carcase alone they belong to that.</summary>
    private GroupDraft GroupOf(OwnUnit? unit)
    {
        if (unit is null)
            return _group;
        if (!_units.TryGetValue(unit.Use, out var group))
            _units[unit.Use] = group =
                _piece.Groups.FirstOrDefault(g => g.Kind == GroupKind.Carcase && g.Name == unit.Use)
                ?? _piece.Group(unit.Use, GroupKind.OwnWord, _group, unit.Place);
        return group;
    }

    private PartDraft Make(BoardPlan plan)
    {
        var place = new BoardPlace(_piece, _faces, _lines, plan);
        var stretches = Enum.GetValues<Axis>().Select(place.Along).ToList();
        var board = _piece.Board(
            place.Home() ?? GroupOf(plan.Unit),
            place.Home() is null ? plan.Local : plan.Name,
            plan.Role,
            plan.Material,
            plan.Lie,
            stretches[(int)plan.Lie.Along.Axis()].Size,
            stretches[(int)plan.Lie.Across.Axis()].Size,
            new Point(stretches[0].Low, stretches[1].Low, stretches[2].Low),
            plan.Place,
            holds: [.. place.Holds()]
        );
        foreach (var axis in Enum.GetValues<Axis>())
        {
            if (stretches[(int)axis] is not { Line: { } line } stretch)
                continue;
            _lines.Know(board, Sides.Low(axis), line);
            _lines.Know(board, Sides.High(axis), line.Moved(stretch.Size, 1));
        }
        new BoardTies(_piece, _faces, plan, board).Make();
        new BoardCuts(plan, board).Make();
        return board;
    }
}
