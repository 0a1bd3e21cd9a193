using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Inspection;

/// <summary>Parts of one role and material that differ by less than a setting of the saw.</summary>
internal static class NearParts
{
    private static readonly (string Name, Func<Part, Figure> Of, Func<Lie, Direction> Way)[] Sizes =
    [
        ("length", part => part.Length, lie => lie.Along),
        ("width", part => part.Width, lie => lie.Across),
        ("thickness", part => part.Thickness, lie => lie.Shows),
    ];

    /// <summary>Words in which twins differ.</summary>
    private static readonly string[] Sides = ["left", "right", "middle", "no"];

    public static Outcome Find(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var kinds = piece
            .Piece.Parts.Where(part =>
                !part.IsKept && part.Role != Role.Edging && !part.Cuts.Any(cut => cut.Kind == CutKind.Scribe)
            )
            .GroupBy(part => (part.Role, part.Material.Name))
            .Select(kind => kind.ToList())
            .Where(kind => kind.Count > 1);
        foreach (var kind in kinds)
        {
            foreach (var size in Sizes)
            {
                // Equal parts stand together; each step to the next size is looked at once.
                var steps = kind.GroupBy(part => size.Of(part).Length)
                    .OrderBy(step => step.Key)
                    .Select(step => step.ToList())
                    .ToList();
                foreach (var (smaller, larger) in steps.Zip(steps.Skip(1)))
                {
                    covered++;
                    var apart = size.Of(larger[0]).Length - size.Of(smaller[0]).Length;
                    if (apart <= Tolerance.Fitting || apart > Tolerance.SawSetting)
                        continue;
                    if (Twins(smaller, larger, size.Of) is { } twins)
                        findings.Add(Tell(piece, size, twins));
                }
            }
        }
        // One number gone wrong makes several parts so: they are told by the first.
        return new(covered, [.. findings.DistinctBy(finding => (finding.Place, LinesTold.Apart(finding)))]);
    }

    /// <summary>The first two of which one is likely a slip: first the one to doubt.</summary>
    private static (Part Odd, Part Usual)? Twins(List<Part> smaller, List<Part> larger, Func<Part, Figure> size)
    {
        // The odd one is among the fewer.
        var (few, many) = smaller.Count <= larger.Count ? (smaller, larger) : (larger, smaller);
        var pairs = few.SelectMany(one => many.Select(other => (one, other)));
        foreach (var (one, other) in pairs)
        {
            if (one.IsAsCut || other.IsAsCut)
            {
                if (NameOfTwins(one) == NameOfTwins(other))
                    return one.IsAsCut ? (one, other) : (other, one);
            }
            else if (Grounds.AreAlike(size(one), size(other)))
                return (one, other);
        }
        return null;
    }

    private static string NameOfTwins(Part part) =>
        string.Join(
            ' ',
            part.Name.Split(' ')
                .Where(word => !Sides.Contains(word, StringComparer.Ordinal) && !word.All(char.IsAsciiDigit))
        );

    private static Finding Tell(
        InspectedPiece piece,
        (string Name, Func<Part, Figure> Of, Func<Lie, Direction> Way) size,
        (Part Odd, Part Usual) twins
    )
    {
        var (odd, usual) = twins;
        var seen = piece.From(odd.Turn);
        var box = seen.Shape(odd.Id).Box;
        var way = size.Way(odd.Place.Lie);
        return new()
        {
            Kind = AlikeParts.Parts,
            Message = $"The {odd.Name} and the {usual.Name} are of nearly the same {size.Name}, but not quite.",
            Parts = [odd.Id, usual.Id],
            Place = odd.Source,
            Related = [usual.Source],
            Where = seen.ToSpace(
                box.Centre().With(way.Opposite(), box.Reach(way.Opposite())),
                box.Centre().With(way, box.Reach(way))
            ),
            Measured = new MeasuredLength(size.Name, size.Of(odd).Length),
            Wanted = Wanted.Exactly(size.Of(usual).Length),
            Remedy = new($"Saw both at one setting: {piece.Say(size.Of(usual).Length)}, or say why not.", Sure: false),
        };
    }
}
