using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
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
    public void Make(TrimPlan plan)
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
        var near = Edges(one.Group, one.Body.Envelope, towards, front);
        var far = Edges(other.Group, other.Body.Envelope, towards.Opposite(), front);
        var run = towards.Axis() == Axis.X ? Axis.Z : Axis.X;
        var from = Length.Max(Least(near, run), Least(far, run));
        var to = Length.Min(Most(near, run), Most(far, run));
        if (near.Count == 0 || far.Count == 0 || to <= from)
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
        RefuseClash(plan, strip);
        if (plan.Edge is { } edge)
        {
            ShapedEdge.Cut(strip, towards, Direction.Front, edge);
            ShapedEdge.Cut(strip, towards.Opposite(), Direction.Front, edge);
        }
        Lay(strip, carrier);
        piece.Add(new Cover(strip.Id, Ids(near), Ids(far), towards, plan.Lap.Length, plan.Place));
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

    /// <summary>The parts of a body at its front that end where the gap begins.</summary>
    private List<PartDraft> Edges(GroupDraft group, Extent envelope, Direction side, Length front) =>
        [
            .. piece.Parts.Where(part =>
                IsOf(part.Group, group)
                && part.Group.Kind is not (GroupKind.Door or GroupKind.Drawer)
                && part.Reckoned.Min.Y == front
                && part.Reckoned.Side(side) == envelope.Side(side)
            ),
        ];

    private static bool IsOf(GroupDraft? part, GroupDraft group) =>
        part is not null && (part == group || IsOf(part.Parent, group));

    private static Length Least(List<PartDraft> parts, Axis axis) =>
        parts.Count == 0 ? Length.Zero : parts.Select(part => part.Reckoned.Min[axis]).Min();

    private static Length Most(List<PartDraft> parts, Axis axis) =>
        parts.Count == 0 ? Length.Zero : parts.Select(part => part.Reckoned.Max[axis]).Max();

    private void RefuseClash(TrimPlan plan, PartDraft strip)
    {
        var clash = piece.Parts.FirstOrDefault(part =>
            part != strip && Extent.Shared(strip.Reckoned, part.Reckoned) is not null
        );
        if (clash is not null)
            throw Refuse(
                plan,
                $"The {plan.Name} would stand in the place of the {clash.Name}.",
                "a narrower strip, or fronts that leave room for it"
            );
    }

    /// <summary>Ties the strip to all that it lies on: screwed to what carries it, loose on the rest.</summary>
    private void Lay(PartDraft strip, GroupDraft carrier)
    {
        foreach (var part in piece.Parts.Where(part => part != strip).ToList())
        {
            if (Resting.ShareFace(strip.Reckoned, part.Reckoned, Direction.Back))
            {
                if (IsOf(part.Group, carrier))
                    Screws.Between(piece, part, strip, Direction.Back, 3);
                else
                    piece.Join(JointKind.Resting, part, strip, Direction.Back, glued: false);
                continue;
            }
            foreach (var side in (Direction[])[Direction.Up, Direction.Down, Direction.Left, Direction.Right])
            {
                if (Resting.ShareFace(strip.Reckoned, part.Reckoned, side))
                    piece.Join(JointKind.Resting, part, strip, side, glued: false);
            }
        }
    }

    private static IReadOnlyList<string> Ids(List<PartDraft> parts) => [.. parts.Select(part => part.Id)];

    private static CannotBuildException Refuse(TrimPlan plan, string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));
}
