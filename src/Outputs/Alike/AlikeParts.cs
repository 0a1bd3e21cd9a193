using Dryfit.Casework;

namespace Dryfit.Outputs.Alike;

/// <summary>
/// Parts that are one and the same thing to whoever cuts them: same material, same sizes, same cuts, when one is laid on
/// the other by a turn that keeps show face and grain. A board has two such ways, as it is and turned end for end with
/// the show face still up; one without grain has four. Turning a board over swaps its show face, and no turn makes a
/// left of a right, so mirrored parts are not alike.
/// </summary>
/// <param name="Prototype">The first of them in the order of the piece.</param>
/// <param name="Members">All of them, the prototype first.</param>
public sealed record AlikeParts(Part Prototype, IReadOnlyList<AlikeMember> Members)
{
    /// <summary>The parts of a piece sorted into kinds, in the order in which each kind is first met.</summary>
    public static IReadOnlyList<AlikeParts> Of(IReadOnlyList<Part> parts)
    {
        var kinds = new List<Kind>();
        var bySort = new Dictionary<Sort, List<Kind>>();
        foreach (var part in parts)
        {
            var sort = Sort.Of(part);
            if (!bySort.TryGetValue(sort, out var candidates))
                bySort.Add(sort, candidates = []);
            if (candidates.Any(kind => kind.Takes(part)))
                continue;
            var fresh = new Kind(part);
            candidates.Add(fresh);
            kinds.Add(fresh);
        }

        return [.. kinds.Select(kind => new AlikeParts(kind.Prototype, kind.Members))];
    }

    private sealed class Kind(Part prototype)
    {
        private readonly Dictionary<Turn, BoardShape> _turned = [];

        public Part Prototype => prototype;

        public List<AlikeMember> Members { get; } = [new(prototype, Turn.None)];

        public bool Takes(Part part)
        {
            Turn[] turns = part.Material.HasGrain
                ? [Turn.None, Turn.Half]
                : [Turn.None, Turn.Half, Turn.Quarter, Turn.ThreeQuarters];
            BoardShape? wanted = null;
            foreach (var turn in turns)
            {
                if (!SameSizes(turn, part))
                    continue;
                if (!_turned.TryGetValue(turn, out var shape))
                    _turned.Add(turn, shape = BoardShape.Of(prototype, turn));
                wanted ??= BoardShape.Of(part, Turn.None);
                if (!shape.Equals(wanted))
                    continue;
                Members.Add(new(part, turn));
                return true;
            }

            return false;
        }

        private bool SameSizes(Turn turn, Part part)
        {
            var swaps = turn is Turn.Quarter or Turn.ThreeQuarters;
            var (length, width) = swaps ? (prototype.Width, prototype.Length) : (prototype.Length, prototype.Width);
            var (finishedLength, finishedWidth) = swaps
                ? (prototype.FinishedWidth, prototype.FinishedLength)
                : (prototype.FinishedLength, prototype.FinishedWidth);
            return length.Length == part.Length.Length
                && width.Length == part.Width.Length
                && finishedLength?.Length == part.FinishedLength?.Length
                && finishedWidth?.Length == part.FinishedWidth?.Length;
        }
    }

    /// <summary>What parts of one kind must share before anything is turned.</summary>
    private sealed record Sort(
        string Material,
        bool IsKept,
        Measure.Length Thickness,
        Measure.Length Girth,
        GrainRun? Run
    )
    {
        public static Sort Of(Part part) =>
            new(
                part.Material.Name,
                part.IsKept,
                part.Thickness.Length,
                part.Length.Length + part.Width.Length,
                part.Run
            );
    }
}

/// <summary>One of several parts that are alike.</summary>
/// <param name="Turn">The turn that lays the prototype's board on this one's, in board coordinates.</param>
public sealed record AlikeMember(Part Part, Turn Turn);
