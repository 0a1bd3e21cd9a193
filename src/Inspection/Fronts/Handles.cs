using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether pulls and knobs sit flat on their fronts.</summary>
internal sealed class Handles : ICheck
{
    public static FindingKind Off { get; } =
        new(
            "handle-not-flat-on-its-front",
            Severity.Warn,
            "Handle does not sit flat",
            "Part of the pull or knob stands past an edge, over a joint or on a moulding: it rocks, or its edge shows.",
            "common practice"
        );

    public static FindingKind Clash { get; } =
        new(
            "handles-too-near",
            Severity.Warn,
            "Handles too near each other",
            "Fingers that reach for the one meet the other: less than 10 mm is left between them.",
            "common practice"
        );

    /// <summary>Room for fingers: common practice.</summary>
    private static readonly Measure.Length Fingers = Measure.Length.FromMillimetres(10);

    public string Name => "pulls and knobs on their fronts";

    public string Of => "handles";

    public string How =>
        "The outline of each pull or knob is held, at its corners and the middles of its sides, against the flat of the part "
        + "it is screwed to; and handles of different fronts must stay 10 mm apart.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Off, Clash];

    public Outcome Run(InspectedPiece piece)
    {
        var handles = piece.Piece.Hardware.Where(hardware => hardware.Handle is not null).ToList();
        var findings = new List<Finding>();
        for (var i = 0; i < handles.Count; i++)
        {
            var seen = piece.From(piece.Shape(handles[i].Ties[0]).Part.Turn);
            if (NotFlat(seen, handles[i]) is { } off)
                findings.Add(off);
            for (var j = i + 1; j < handles.Count; j++)
            {
                if (TooNear(seen, handles[i], handles[j]) is { } near)
                    findings.Add(near);
            }
        }
        return new(handles.Count, findings);
    }

    private static Finding? NotFlat(InspectedPiece piece, Hardware handle)
    {
        var part = piece.Shape(handle.Ties[0]);
        var face = part.Facing(Direction.Front, Square)
            .Where(t => Math.Abs(t.A.Y - part.Box.Min.Y) <= piece.ToUnits(Tolerance.Rounding))
            .ToList();
        var (min, max) = Room(piece, handle);
        if (Rim(min, max).All(at => face.Exists(triangle => Holds(triangle, at))))
            return null;
        return new()
        {
            Kind = Off,
            Message = $"The {handle.Kind} does not sit flat on the {part.Part.Name}.",
            Parts = [part.Part.Id],
            Place = part.Part.Source,
            Where = piece.ToSpace(min, max),
            Remedy = new("Move it on the flat of one part, or take a smaller one.", Sure: false),
        };
    }

    private static Finding? TooNear(InspectedPiece piece, Hardware one, Hardware other)
    {
        var (part, second) = (piece.Shape(one.Ties[0]).Part, piece.Shape(other.Ties[0]).Part);
        // At an angle to each other they are reached for from different sides.
        if (string.Equals(part.Group, second.Group, StringComparison.Ordinal) || part.Turn != second.Turn)
            return null;
        var (min, max) = Room(piece, one);
        var (otherMin, otherMax) = Room(piece, other);
        var apart = piece.ToLength(
            Math.Max(Math.Max(otherMin.X - max.X, min.X - otherMax.X), Math.Max(otherMin.Z - max.Z, min.Z - otherMax.Z))
        );
        if (apart >= Fingers)
            return null;
        return new()
        {
            Kind = Clash,
            Message =
                $"The handles of the {piece.GroupName(part.Group)} and the {piece.GroupName(second.Group)} are too near each other.",
            Parts = [part.Id, second.Id],
            Place = part.Source,
            Related = [second.Source],
            Where = piece.ToSpace(min, otherMax),
            Measured = new MeasuredLength("between them", apart),
            Wanted = new(Fingers, null),
            Remedy = new("Set one of them elsewhere: `pull at:`, or wider stiles.", Sure: false),
        };
    }

    /// <summary>A face square to the view.</summary>
    private const double Square = 0.999999;

    /// <summary>The outline of a handle on its front.</summary>
    private static (Vec3 Min, Vec3 Max) Room(InspectedPiece piece, Hardware handle)
    {
        var size = handle.Handle!;
        var at = piece.Grid.ToUnits(handle.At);
        var (length, across) = (piece.ToUnits(size.Length) / 2, piece.ToUnits(size.Across) / 2);
        var half = size.Along == Axis.X ? new Vec3(length, 0, across) : new Vec3(across, 0, length);
        return (at - half, at + half);
    }

    private static Vec3[] Rim(Vec3 min, Vec3 max)
    {
        var middle = (min + max) * 0.5;
        return
        [
            min,
            max,
            min with
            {
                X = max.X,
            },
            min with
            {
                Z = max.Z,
            },
            middle with
            {
                X = min.X,
            },
            middle with
            {
                X = max.X,
            },
            middle with
            {
                Z = min.Z,
            },
            middle with
            {
                Z = max.Z,
            },
        ];
    }

    private static bool Holds(Triangle t, Vec3 p)
    {
        var (a, b, c) = (Turn(t.A, t.B, p), Turn(t.B, t.C, p), Turn(t.C, t.A, p));
        return (a >= 0 && b >= 0 && c >= 0) || (a <= 0 && b <= 0 && c <= 0);
    }

    /// <summary>Which side of the line from a to b a point lies on, seen from the front.</summary>
    private static double Turn(Vec3 a, Vec3 b, Vec3 p) => ((b.X - a.X) * (p.Z - a.Z)) - ((b.Z - a.Z) * (p.X - a.X));
}
