using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Trim;

/// <summary>
/// Lays a strip on the fronts of two bodies over the gap between them: screwed to the one, loose on the other, so that
/// neither keeps the other from moving (common practice).
/// </summary>
internal sealed class TrimMaker(PieceBuilder piece, IReadOnlyList<(Body Body, GroupDraft Group)> bodies)
{
    public void Make(IReadOnlyList<TrimPlan> plans)
    {
        var made = new Dictionary<string, PartDraft>(StringComparer.Ordinal);
        // Those under a ceiling run through; what stands at the walls ends under them.
        foreach (var plan in plans.OrderBy(plan => ToTheRoom(plan)?.Side == Direction.Up ? 0 : 1))
        {
            if (ToTheRoom(plan) is not var (at, side))
                Between(plan);
            else
                made[plan.Name] = new WallTrim(piece, at.Body, at.Group).Make(plan, side, plans, made);
        }
    }

    /// <summary>The carcase and the side of it on which a strip reaches out to the room; null where it lies on two carcases.</summary>
    private ((Body Body, GroupDraft Group) At, Direction Side)? ToTheRoom(TrimPlan plan)
    {
        foreach (var (one, other) in (ReadOnlySpan<(string, string)>)[(plan.One, plan.Other), (plan.Other, plan.One)])
        {
            if (WallTrim.SideOf(other) is { } side && bodies.All(body => body.Body.Name != other))
                return (Find(one, plan), side);
        }
        return null;
    }

    private void Between(TrimPlan plan)
    {
        var (one, other) = (Find(plan.One, plan), Find(plan.Other, plan));
        if (one.Body.Turn is not null || other.Body.Turn is not null)
            throw Refuse(
                plan,
                "A carcase that stands at an angle has no front in line with another's.",
                "a strip between carcases that look straight to the front"
            );
        var towards = Across(one.Body.Envelope, other.Body.Envelope);
        if (towards.Sign() < 0)
            (one, other, towards) = (other, one, towards.Opposite());
        var front = one.Body.Envelope.Min.Y;
        if (front != other.Body.Envelope.Min.Y)
            throw Refuse(
                plan,
                $"The fronts of the {one.Body.Name} and the {other.Body.Name} do not lie in one plane: no strip lies on both.",
                "carcases that line up at their fronts"
            );
        var near = StripBed.Of(piece, one.Group, one.Body.Envelope, towards);
        var far = StripBed.Of(piece, other.Group, other.Body.Envelope, towards.Opposite());
        var run = towards.Axis() == Axis.X ? Axis.Z : Axis.X;
        var from = Length.Max(near.Course(run).From, far.Course(run).From);
        var to = Length.Min(near.Course(run).To, far.Course(run).To);
        if (near.Parts.Count == 0 || far.Parts.Count == 0 || to <= from)
            throw Refuse(
                plan,
                $"The {one.Body.Name} and the {other.Body.Name} have no edges side by side for a strip to lie on.",
                "carcases beside each other, or one over the other"
            );
        var (begins, ends) = (one.Body.Envelope.Side(towards), other.Body.Envelope.Side(towards.Opposite()));
        var gap = Figure.Given("gap", ends - begins, new WrittenOrigin(plan.Place));
        var width = (plan.Width ?? gap + plan.Lap + plan.Lap).As("strip width");
        var extent = new Extent(
            default(Point)
                .With(run, from)
                .With(towards.Axis(), ((begins + ends) - width.Length) / 2)
                .With(Axis.Y, front),
            default
        );
        var carrier = one.Body.Name == plan.Carrier ? one.Group : other.Group;
        // It belongs to neither of the two: no size of theirs counts it in.
        var strip = piece.Board(
            piece.Groups[0],
            plan.Name,
            Role.CoverStrip,
            plan.Material,
            Lie.Of(Directions.Along(run, 1), Direction.Front),
            Figure.Given("height of what it lies on", to - from, new WrittenOrigin(plan.Place)).As("strip length"),
            width,
            extent.Min.Moved(Direction.Front, plan.Material.Thickness.Length),
            plan.Place
        );
        StripBed.RefuseClash(piece, strip, plan.Place);
        if (plan.Edge is { } edge)
        {
            ShapedEdge.Cut(strip, towards, Direction.Front, edge);
            ShapedEdge.Cut(strip, towards.Opposite(), Direction.Front, edge);
        }
        StripBed.Lay(piece, strip, carrier);
        piece.Add(new Cover(strip.Id, near.Ids, far.Ids, towards, plan.Lap.Length, plan.Place));
    }

    private (Body Body, GroupDraft Group) Find(string name, TrimPlan plan)
    {
        foreach (var body in bodies)
        {
            if (body.Body.Name == name)
                return body;
        }
        throw Refuse(plan, $"There is no carcase called '{name}'.", "the names of two carcases of the recipe");
    }

    /// <summary>The way across the gap: along the axis on which the two lie apart.</summary>
    private static Direction Across(Extent one, Extent other)
    {
        if (other.Min.X >= one.Max.X)
            return Direction.Right;
        if (one.Min.X >= other.Max.X)
            return Direction.Left;
        return other.Min.Z >= one.Max.Z ? Direction.Up : Direction.Down;
    }

    private static CannotBuildException Refuse(TrimPlan plan, string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));
}
