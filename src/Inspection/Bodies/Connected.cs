using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// Whether everything is tied to everything: by joints that really touch, or by hardware. Whole carcases, stands and old
/// pieces may stand by themselves, on the floor or on what stands there.
/// </summary>
internal sealed class Connected : ICheck
{
    public static FindingKind PartLoose { get; } =
        new(
            "part-touches-nothing",
            Severity.Stop,
            "Part tied to nothing",
            "No joint of this part touches, and nothing bought holds it: it would fall on the floor."
        );

    public static FindingKind UnitLoose { get; } =
        new(
            "unit-touches-nothing",
            Severity.Stop,
            "Unit tied to nothing",
            "These parts hold each other, but nothing holds them to the rest of the piece."
        );

    public string Name => "everything tied to the rest";

    public string Of => "parts";

    public string How =>
        "Parts belong together where a joint between them touches (within its play and 1/128 in) or where hardware ties "
        + "them. What is then left over must be a carcase, stand or kept piece that stands on the floor or on another, or hangs on the wall.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [PartLoose, UnitLoose];

    public Outcome Run(InspectedPiece piece)
    {
        var bodies = Gather(piece);
        if (bodies.Count == 0)
            return new(0, []);
        var floor = piece.Shapes.Min(shape => shape.Box.Min.Z);
        // What all else must be tied to: the largest body that is no front.
        var main =
            bodies.Where(body => !IsFront(piece, body)).MaxBy(body => body.Count) ?? bodies.MaxBy(body => body.Count)!;

        var hung = piece
            .Piece.Hardware.Where(hardware => hardware.IsInWall)
            .SelectMany(hardware => hardware.Ties)
            .ToHashSet(StringComparer.Ordinal);
        var standing = bodies.ConvertAll(body => body == main || body.Exists(shape => hung.Contains(shape.Part.Id)));
        for (var changed = true; changed; )
        {
            changed = false;
            for (var i = 0; i < bodies.Count; i++)
            {
                if (standing[i] || !MayStandAlone(piece, bodies[i]) || !Stands(piece, bodies, standing, i, floor))
                    continue;
                standing[i] = changed = true;
            }
        }
        var loose = bodies.Where((_, i) => !standing[i]);
        return new(piece.Shapes.Count, [.. loose.Select(body => Tell(piece, body))]);
    }

    /// <summary>The parts in heaps, each tied within itself, in the order of the piece.</summary>
    private static List<List<Shape>> Gather(InspectedPiece piece)
    {
        var heaps = new Heaps(piece.Shapes);
        var within = piece.ToUnits(Tolerance.Fitting);
        foreach (var joint in piece.Piece.Joints)
        {
            if (piece.From(joint).Fit(joint).Ties(piece.ToUnits(joint.Play), within))
                heaps.Join(joint.Receives, joint.Enters);
        }
        foreach (var hardware in piece.Piece.Hardware)
        {
            foreach (var tied in hardware.Ties.Skip(1))
                heaps.Join(hardware.Ties[0], tied);
        }
        return heaps.All();
    }

    private static bool IsFront(InspectedPiece piece, List<Shape> body) =>
        body.TrueForAll(shape => piece.Group(shape.Part.Group)?.Kind is GroupKind.Door or GroupKind.Drawer);

    private static bool MayStandAlone(InspectedPiece piece, List<Shape> body) =>
        body.Exists(shape =>
            piece.Group(shape.Part.Group)?.Kind is GroupKind.Carcase or GroupKind.KeptCarcase or GroupKind.Stand
        );

    private static bool Stands(
        InspectedPiece piece,
        List<List<Shape>> bodies,
        List<bool> standing,
        int body,
        double floor
    )
    {
        var within = piece.ToUnits(Tolerance.Fitting);
        var own = bodies[body].ToHashSet();
        // A shelf that lies on a side by its own weight is a part of its carcase; what stands alone is more than a board.
        if (own.Count == 1 && !bodies[body][0].Part.IsKept)
            return false;
        if (bodies[body].Min(shape => shape.Box.Min.Z) <= floor + within)
            return true;
        var carriers = bodies.Where((_, i) => standing[i]).SelectMany(b => b).ToHashSet();
        foreach (var shape in bodies[body])
        {
            foreach (var below in piece.Near(shape.Box.Grown(Direction.Down, within)))
            {
                if (
                    carriers.Contains(below)
                    && Pair.GapAlong(shape.Placed, below.Placed, Direction.Down.Unit(), within) is not null
                )
                {
                    return true;
                }
            }
        }
        return false;
    }

    private static Finding Tell(InspectedPiece piece, List<Shape> body)
    {
        var parts = JointPlaces.Doubted(body.Select(shape => shape.Part));
        var box = body.Select(shape => shape.Box).Aggregate((a, b) => a.Around(b));
        var (kind, message) =
            body.Count == 1
                ? (PartLoose, $"The {parts[0].Name} is tied to nothing.")
                : (UnitLoose, $"The {UnitName(piece, body)} is tied to nothing.");
        return new()
        {
            Kind = kind,
            Message = message,
            Parts = [.. parts.Select(part => part.Id)],
            Place = parts[0].Source,
            Where = piece.ToSpace(box.Min, box.Max),
            Remedy = new("Say which joint or hardware holds it, or move it to where its joints touch.", Sure: false),
        };
    }

    private static string UnitName(InspectedPiece piece, List<Shape> body)
    {
        var groups = body.Select(shape => shape.Part.Group).Distinct(StringComparer.Ordinal).ToList();
        return groups.Count == 1
            ? piece.GroupName(groups[0])
            : string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"{body[0].Part.Name} with {body.Count - 1} more parts"
            );
    }

    /// <summary>Parts sorted into heaps as ties between them come to light.</summary>
    private sealed class Heaps
    {
        private readonly IReadOnlyList<Shape> _shapes;
        private readonly Dictionary<string, int> _at = new(StringComparer.Ordinal);
        private readonly int[] _leader;

        public Heaps(IReadOnlyList<Shape> shapes)
        {
            _shapes = shapes;
            _leader = [.. Enumerable.Range(0, shapes.Count)];
            for (var i = 0; i < shapes.Count; i++)
                _at[shapes[i].Part.Id] = i;
        }

        public void Join(string a, string b)
        {
            // Hardware may tie a part to a wall, which is no part.
            if (!_at.TryGetValue(a, out var first) || !_at.TryGetValue(b, out var second))
                return;
            var (low, high) = (Leader(first), Leader(second));
            _leader[Math.Max(low, high)] = Math.Min(low, high);
        }

        public List<List<Shape>> All()
        {
            var heaps = new SortedDictionary<int, List<Shape>>();
            for (var i = 0; i < _shapes.Count; i++)
            {
                var leader = Leader(i);
                if (!heaps.TryGetValue(leader, out var heap))
                    heaps[leader] = heap = [];
                heap.Add(_shapes[i]);
            }
            return [.. heaps.Values];
        }

        private int Leader(int i)
        {
            while (_leader[i] != i)
                i = _leader[i] = _leader[_leader[i]];
            return i;
        }
    }
}
