using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Sides;

/// <summary>
/// A side that is a frame with panels, as those see it that would meet a board there. It is no part itself: what cuts or
/// bores it goes to the stile, rail or muntin that lies there, and what is fixed to it is fixed to those. On a panel, which
/// is thin and must stay free to move, nothing is fixed.
/// </summary>
internal sealed class FramedSide : PartDraft
{
    /// <summary>Less wood than this under an end carries nothing: 12 mm, common practice.</summary>
    private static readonly Length Least = Measure.Length.FromMillimetres(12);

    private const string Wanted =
        "wider stiles or rails, a muntin or a middle rail there (`sides:`), or what meets it at another place";

    /// <summary>Stiles, rails and muntins.</summary>
    public required IReadOnlyList<PartDraft> Members { get; init; }

    /// <summary>The clear spaces between them, through the whole thickness.</summary>
    public required IReadOnlyList<Extent> Fields { get; init; }

    /// <summary>The wood behind the grooves of the panels.</summary>
    public required Length Behind { get; init; }

    public override void CutAway(CutKind kind, Extent inPiece, string? joint = null)
    {
        foreach (var member in Members)
        {
            if (Extent.Shared(member.Extent, inPiece) is not null)
                member.CutAway(kind, inPiece, joint);
        }
    }

    public override void Bore(
        CutKind kind,
        Point at,
        Direction into,
        Length diameter,
        Length depth,
        string? joint = null
    )
    {
        var hole = Dowels.HoleBox(at, into, diameter, depth);
        RequireWood(hole, "hole");
        foreach (var member in Members)
        {
            if (Extent.Shared(member.Extent, hole) is not null)
                member.Bore(kind, at, into, diameter, depth, joint);
        }
    }

    public override void RequireWood(Extent place, string what)
    {
        if (!IsWood(place))
            throw new CannotBuildException(
                new InputError(
                    $"A {what} in the {Name} would lie on one of its panels, or on the edge of one.",
                    Source,
                    Wanted
                )
            );
    }

    public override bool IsWood(Extent place) => !Fields.Any(field => Extent.Shared(field, place) is not null);

    public override PartDraft At(Point place) => Members.MinBy(member => Away(member.Open, place))!;

    public override PartDraft Edge(Direction side) =>
        Members.First(member => member.Role == Role.SideStile && member.Reckoned.Side(side) == Reckoned.Side(side));

    /// <remarks>What is long must be carried at both ends: within the first and within the last third of it.</remarks>
    public override IReadOnlyList<PartDraft> Carrying(Extent what, Direction into, string name, SourcePlace place)
    {
        var isBeside = into.Axis() == Axis.X;
        var back = into.Opposite();
        var carrying = Members
            .Where(member => isBeside || member.Reckoned.Side(back) == Reckoned.Side(back))
            .Where(member => Meets(member.Open, what, into.Axis()))
            .ToList();
        if (isBeside && carrying.Count > 0)
        {
            var third = what.Depth / 3;
            var enough = Measure.Length.Min(third, Least);
            foreach (
                var (from, to) in (ReadOnlySpan<(Length, Length)>)
                    [(what.Min.Y, what.Min.Y + third), (what.Max.Y - third, what.Max.Y)]
            )
            {
                var wood = carrying.Aggregate(Measure.Length.Zero, (sum, m) => sum + Over(m.Open, from, to));
                if (wood < enough)
                {
                    carrying = [];
                    break;
                }
            }
        }
        return carrying.Count > 0
            ? carrying
            : throw new CannotBuildException(
                new InputError(
                    $"The {name} would be fixed to a panel of the {Name}, which is thin and must stay free to move.",
                    place,
                    Wanted
                )
            );
    }

    /// <summary>How much of a stretch from front to back lies over a member.</summary>
    private static Length Over(Extent member, Length from, Length to) =>
        Measure.Length.Max(
            Measure.Length.Zero,
            Measure.Length.Min(member.Max.Y, to) - Measure.Length.Max(member.Min.Y, from)
        );

    private static bool Meets(Extent member, Extent what, Axis ignored)
    {
        foreach (var axis in (ReadOnlySpan<Axis>)[Axis.X, Axis.Y, Axis.Z])
        {
            if (
                axis != ignored
                && Measure.Length.Min(member.Max[axis], what.Max[axis])
                    <= Measure.Length.Max(member.Min[axis], what.Min[axis])
            )
                return false;
        }
        return true;
    }

    /// <summary>How far a point is from a member as seen from the side.</summary>
    private static Length Away(Extent member, Point place)
    {
        return Apart(Axis.Y) + Apart(Axis.Z);

        Length Apart(Axis axis) =>
            Measure.Length.Max(
                Measure.Length.Zero,
                Measure.Length.Max(member.Min[axis] - place[axis], place[axis] - member.Max[axis])
            );
    }
}
