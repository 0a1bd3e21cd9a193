using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>
/// A check that holds what is measured along each side of a front against what was wanted there: which sides it looks at,
/// how it judges smallest and largest, and how it says so is all that one adds.
/// </summary>
internal abstract class SideCheck : ICheck
{
    public abstract string Name { get; }

    public abstract string Of { get; }

    public abstract string How { get; }

    public abstract IReadOnlyList<FindingKind> Kinds { get; }

    /// <summary>What is measured: "gap", "overlay".</summary>
    protected abstract string Measures { get; }

    /// <summary>Whether it grows as the two edges part; a lap grows as they close.</summary>
    protected abstract bool GrowsWithGap { get; }

    /// <summary>Whether a front has sides that are looked at; the sides of others are not measured.</summary>
    protected virtual bool Concerns(Front front) => true;

    protected abstract bool LooksAt(InspectedPiece piece, FrontSide side);

    /// <summary>The kind of what is wrong; null where nothing is.</summary>
    protected abstract FindingKind? Judge(Length smallest, Length largest, Length wanted);

    /// <summary>Whether a kind tells of too much, so that the largest is shown and not the smallest.</summary>
    protected abstract bool IsTooMuch(FindingKind kind);

    /// <param name="place">Which side of which front: "at the left of the door".</param>
    /// <param name="larger">At which end it is larger: "at the top".</param>
    protected abstract string Says(FindingKind kind, string name, FrontSide side, string place, string larger);

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts.Where(Concerns))
        {
            var seen = piece.From(front);
            var sides = FrontSides.Of(seen, front).Select(side => FoundDoor.AsItIs(seen, side)).ToList();
            foreach (var side in sides)
            {
                if (side.Gap is not { } gap || !LooksAt(piece, side))
                    continue;
                covered++;
                var (smallest, largest) = Span(seen, gap);
                if (Judge(smallest, largest, side.Wanted) is { } kind)
                    findings.Add(Tell(seen, kind, side, gap, sides.Find(s => s.Side == side.Side.Opposite())));
            }
        }
        return new(covered, findings);
    }

    private (Length Smallest, Length Largest) Span(InspectedPiece piece, SideGap gap)
    {
        var (near, far) = (piece.ToLength(gap.Smallest.Gap), piece.ToLength(gap.Largest.Gap));
        return GrowsWithGap ? (near, far) : (-far, -near);
    }

    private Finding Tell(InspectedPiece piece, FindingKind kind, FrontSide side, SideGap gap, FrontSide? opposite)
    {
        var within = piece.ToUnits(Tolerance.Fitting);
        var (smallest, largest) = Span(piece, gap);
        var much =
            IsTooMuch(kind) || (smallest != largest && largest - side.Wanted > side.Wanted - smallest && Runs(kind));
        var worst = much == GrowsWithGap ? gap.Largest : gap.Smallest;
        var (own, other) = side.Ends(gap.Shown(worst, within));
        var name = piece.GroupName(side.Front.Group);
        var place = side.Neighbour is { } neighbour
            ? $"between the {name} and the {piece.GroupName(neighbour)}"
            : $"at the {side.Word} of the {name}";
        var doubted = Doubted(piece, side).ToList();
        var first = doubted.Count > 0 ? doubted : [piece.Shape(side.Front.Face[0]).Part];
        return new()
        {
            Kind = kind,
            Message = Says(kind, name, side, place, LargerEnd(side, gap)),
            Parts = PartIds.Together(first.Select(part => part.Id), side.Front.Face, side.Faces),
            Place = first[0].Source,
            Related = [piece.Opening(side.Front.Opening).Source],
            Where = piece.ToSpace(other, own),
            Measured = gap.IsEven(within)
                ? new MeasuredLength(Measures, much ? largest : smallest)
                : new MeasuredRange(Measures, smallest, largest),
            Wanted = Wanted.Exactly(side.Wanted),
            Remedy = FrontRemedy.For(piece, side, opposite),
            Assumptions = [.. Assumed(piece, side)],
        };
    }

    /// <summary>Whether a kind tells of a side that runs out of true.</summary>
    protected abstract bool Runs(FindingKind kind);

    private string LargerEnd(FrontSide side, SideGap gap)
    {
        var (much, little) = GrowsWithGap ? (gap.Largest, gap.Smallest) : (gap.Smallest, gap.Largest);
        var up = much.Course > little.Course;
        return side.Along == Axis.Z ? (up ? "at the top" : "at the bottom") : (up ? "at the right" : "at the left");
    }

    private static IEnumerable<string> Assumed(InspectedPiece piece, FrontSide side)
    {
        if (side.Neighbour is null && piece.Opening(side.Front.Opening).AsMeasured is not null)
            yield return FoundOpening.Assumption;
        if (side.Front.AsFound?.Diagonals is not null)
            yield return FoundDoor.Assumption;
    }

    private static IEnumerable<Part> Doubted(InspectedPiece piece, FrontSide side)
    {
        var own = FrontRemedy.Doubted(piece, side.Front, side.Side.Axis());
        return side.Neighbour is { } neighbour && piece.Front(neighbour) is { } other
            ? own.Concat(FrontRemedy.Doubted(piece, other, side.Side.Axis()))
            : own;
    }
}
