using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Inspection;

/// <summary>Carcases whose outsides nearly agree.</summary>
internal static class NearCarcases
{
    private static readonly (string Size, Axis Axis)[] Sizes =
    [
        ("width", Axis.X),
        ("height", Axis.Z),
        ("depth", Axis.Y),
    ];

    public static Outcome Find(InspectedPiece piece)
    {
        var findings = new List<Finding>();
        var covered = 0;
        foreach (var (size, axis) in Sizes)
        {
            var carcases = piece
                .Piece.Groups.Where(group => group.Kind == GroupKind.Carcase)
                .Select(group => Sized(piece, group, size, axis))
                .OfType<Carcase>()
                .OrderBy(carcase => carcase.Size)
                .ToList();
            foreach (var (smaller, larger) in carcases.Zip(carcases.Skip(1)))
            {
                covered++;
                var apart = larger.Size - smaller.Size;
                if (
                    apart > Tolerance.Fitting
                    && apart <= Tolerance.ReadsAsMeant
                    && Grounds.AreAlike(smaller.Reckoned, larger.Reckoned)
                )
                    findings.Add(Tell(piece, size, smaller, larger));
            }
        }
        return new(covered, findings);
    }

    private static Carcase? Sized(InspectedPiece piece, Group group, string size, Axis axis)
    {
        var seen = piece.From(group.Turn);
        var sides = seen.Members(group.Id).Where(shape => shape.Part.Role == Role.Side).ToList();
        var reckoned = group.Sizes.FirstOrDefault(named => named.Name == size);
        if (sides.Count < 2 || reckoned is null)
            return null;
        var box = FrontSides.Around(sides);
        var middle = box.Centre() with { Y = box.Min.Y };
        var way = Directions.Along(axis, 1);
        return new(
            group,
            sides,
            reckoned.Figure,
            seen.ToLength(box.Size(axis)),
            seen.ToSpace(middle.With(way.Opposite(), box.Reach(way.Opposite())), middle.With(way, box.Reach(way)))
        );
    }

    private static Finding Tell(InspectedPiece piece, string size, Carcase smaller, Carcase larger) =>
        new()
        {
            Kind = AlikeParts.Carcases,
            Message =
                $"The {size} of the {smaller.Group.Name} is nearly that of the {larger.Group.Name}, but not quite.",
            Parts = PartIds.Together(
                smaller.Sides.Select(side => side.Part.Id),
                larger.Sides.Select(side => side.Part.Id)
            ),
            Place = smaller.Group.Source,
            Related = [larger.Group.Source],
            Where = smaller.Where,
            Measured = new MeasuredLength($"{size} over its sides", smaller.Size),
            Wanted = Wanted.Exactly(larger.Size),
            Remedy = new(
                $"Give both the same {size}, or make the difference large enough to be seen as meant.",
                Sure: false
            ),
        };

    private sealed record Carcase(
        Group Group,
        IReadOnlyList<Shape> Sides,
        Figure Reckoned,
        Length Size,
        SpacePlace Where
    );
}
