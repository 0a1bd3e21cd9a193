using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Stiles, mullions, sides and partitions of one carcase over those of another.</summary>
internal static class Uprights
{
    public static Outcome Check(InspectedPiece piece)
    {
        var carcases = piece
            .Piece.Openings.GroupBy(opening => Carcase(piece, opening)?.Id, StringComparer.Ordinal)
            .Where(of => of.Key is not null)
            .Select(of => new Stood(piece, piece.Group(of.Key!)!, [.. of]))
            .Where(stood => stood.Foot.Count > 1 && stood.Head.Count > 1)
            .ToList();
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var upper in carcases)
        {
            foreach (var lower in Below(upper, carcases))
            {
                foreach (var (above, below) in Over(upper.Foot, lower.Head))
                {
                    covered++;
                    if (Judge(upper.Seen, above, below) is { } finding)
                        findings.Add(finding);
                }
            }
        }
        return new(covered, findings);
    }

    private static Group? Carcase(InspectedPiece piece, Opening opening)
    {
        var bound = opening.Bounds.Left.Concat(opening.Bounds.Right).FirstOrDefault();
        return bound is null ? null : CarcaseOf.Group(piece, piece.Shape(bound).Part.Group);
    }

    /// <summary>What stands right under a carcase: of all that are below it and share some of its width, the highest.</summary>
    private static IEnumerable<Stood> Below(Stood upper, List<Stood> all)
    {
        var under = all.Where(lower =>
                lower.Group.Turn == upper.Group.Turn
                && lower.Box.Max.Z <= upper.Box.Min.Z
                && lower.Box.Min.X < upper.Box.Max.X
                && upper.Box.Min.X < lower.Box.Max.X
            )
            .ToList();
        return under.Where(lower =>
            !under.Exists(other =>
                other.Box.Min.Z >= lower.Box.Max.Z
                && other.Box.Min.X < lower.Box.Max.X
                && lower.Box.Min.X < other.Box.Max.X
            )
        );
    }

    private static IEnumerable<(Shape Above, Shape Below)> Over(
        IReadOnlyList<Shape> above,
        IReadOnlyList<Shape> below
    ) => above.Count == below.Count ? above.Zip(below) : [(above[0], below[0]), (above[^1], below[^1])];

    private static Finding? Judge(InspectedPiece piece, Shape above, Shape below)
    {
        // A blind panel ends where the other run needs it to.
        if (above.Part.Role == Role.BlindPanel || below.Part.Role == Role.BlindPanel)
            return null;
        var (a, b) = (above.Box, below.Box);
        Span<double> offsets = [a.Min.X - b.Min.X, a.Centre().X - b.Centre().X, a.Max.X - b.Max.X];
        var least = offsets[0];
        foreach (var offset in offsets)
        {
            if (Math.Abs(offset) < Math.Abs(least))
                least = offset;
        }
        var off = Length.Abs(piece.ToLength(least));
        if (off <= Tolerance.Fitting || off > Tolerance.ReadsAsMeant)
            return null;
        var way = least > 0 ? "left" : "right";
        var parts = JointPlaces.Doubted(above.Part, below.Part);
        var x =
            least == offsets[0] ? (a.Min.X, b.Min.X)
            : least == offsets[2] ? (a.Max.X, b.Max.X)
            : (a.Centre().X, b.Centre().X);
        return new()
        {
            Kind = LinesRunOn.Upright,
            Message = $"The {above.Part.Name} stands a little beside the {below.Part.Name}, not over it.",
            Parts = [.. parts.Select(part => part.Id)],
            Place = parts[0].Source,
            Related = [parts[1].Source],
            Where = piece.ToSpace(new Vec3(x.Item2, a.Min.Y, a.Min.Z), new Vec3(x.Item1, a.Min.Y, a.Min.Z)),
            Measured = new MeasuredLength("out of line by", off),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new(
                $"Bring the {above.Part.Name} {piece.Say(off)} to the {way}, or set it off by enough to be seen as meant.",
                Sure: false
            ),
        };
    }

    /// <summary>A carcase with its uprights from the left: those that bound its lowest openings, and its highest.</summary>
    private sealed class Stood
    {
        public Stood(InspectedPiece piece, Group group, IReadOnlyList<Opening> openings)
        {
            Group = group;
            Seen = piece.From(group.Turn);
            Box = FrontSides.Around(Bounding(openings, all: true));
            var (low, high) = (openings.Min(o => o.Clear.Min.Z), openings.Max(o => o.Clear.Max.Z));
            Foot = Bounding(openings.Where(o => o.Clear.Min.Z == low));
            Head = Bounding(openings.Where(o => o.Clear.Max.Z == high));
        }

        public Group Group { get; }

        public InspectedPiece Seen { get; }

        public Box Box { get; }

        public IReadOnlyList<Shape> Foot { get; }

        public IReadOnlyList<Shape> Head { get; }

        private IReadOnlyList<Shape> Bounding(IEnumerable<Opening> openings, bool all = false) =>
            [
                .. Seen.ShapesOf(
                        openings
                            .SelectMany(o =>
                                o.Bounds.Left.Concat(o.Bounds.Right)
                                    .Concat(all ? o.Bounds.Bottom.Concat(o.Bounds.Top) : [])
                            )
                            .Distinct(StringComparer.Ordinal)
                    )
                    .OrderBy(shape => shape.Box.Centre().X),
            ];
    }
}
