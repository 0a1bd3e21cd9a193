using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Makes what a body stands on: legs and rails, or a plinth. It looks only at the body's outside.</summary>
/// <param name="owner">The group the stand becomes part of.</param>
/// <param name="envelope">The outside of body and stand together.</param>
internal sealed class StandMaker(PieceBuilder piece, GroupDraft owner, Extent envelope, Figure width, Figure depth)
{
    /// <summary>Legs at the corners, rails between them under the body.</summary>
    /// <param name="left">The left side of the body; it takes the rails where there are no legs.</param>
    /// <param name="right">The right side.</param>
    public IReadOnlyList<PartDraft> Legs(LegsPlan plan, PartDraft left, PartDraft right)
    {
        var group = piece.Group("stand", GroupKind.Stand, owner, owner.Source);
        (Leg Front, Leg Rear)? leftLegs = plan.AtLeft ? Pair(group, plan, "left", envelope.Min.X) : null;
        (Leg Front, Leg Rear)? rightLegs = plan.AtRight
            ? Pair(group, plan, "right", envelope.Max.X - plan.LegWidth.Length)
            : null;
        var setback = piece.Shop.Length(StandRules.StandRailSetback, "setback").Length;
        var railZ = envelope.Min.Z + plan.Height.Length - plan.Rail.Length;
        var thickness = plan.RailMaterial.Thickness.Length;
        var tenons = new Dictionary<PartDraft, (Length Low, Length High)>();

        var along = width;
        along -= plan.AtLeft ? plan.LegWidth : left.Thickness;
        along -= plan.AtRight ? plan.LegWidth : right.Thickness;
        var railX = plan.AtLeft ? envelope.Min.X + plan.LegWidth.Length : left.Reckoned.Max.X;
        Rail(
            "front rail",
            Direction.Front,
            envelope.Min.Y + setback,
            leftLegs?.Front ?? [left],
            rightLegs?.Front ?? [right]
        );
        // A side may end before a planted back: the rail stays within its edge.
        var rear = envelope.Max.Y - setback;
        foreach (var (legs, side) in new[] { (leftLegs, left), (rightLegs, right) })
            rear = legs is null ? Length.Min(rear, side.Reckoned.Max.Y) : rear;
        Rail("rear rail", Direction.Back, rear - thickness, leftLegs?.Rear ?? [left], rightLegs?.Rear ?? [right]);
        if (leftLegs is { } l)
            End("left end rail", Direction.Left, envelope.Min.X + setback, l.Front, l.Rear);
        if (rightLegs is { } r)
            End("right end rail", Direction.Right, envelope.Max.X - setback - thickness, r.Front, r.Rear);
        if (plan.Shape is { } shape)
        {
            foreach (
                var (pair, inside) in (((Leg Front, Leg Rear)?, Direction)[])
                    [(leftLegs, Direction.Right), (rightLegs, Direction.Left)]
            )
            {
                if (pair is not { } legs)
                    continue;
                shape.Cut(legs.Front, inside, Direction.Back, railZ);
                shape.Cut(legs.Rear, inside, Direction.Front, railZ);
            }
        }
        foreach (var rail in piece.Parts.Where(p => p.Group == group && p.Role == Role.StandRail))
            plan.Arch?.Cut(rail, tenons.GetValueOrDefault(rail));
        return [.. piece.Parts.Where(p => p.Group == group && p.Role == Role.Leg)];

        void Rail(string name, Direction shows, Length y, IReadOnlyList<PartDraft> from, IReadOnlyList<PartDraft> to)
        {
            var (left, right) = (Tenon(plan, from, Direction.Left), Tenon(plan, to, Direction.Right));
            var rail = piece.Board(
                group,
                name,
                Role.StandRail,
                plan.RailMaterial,
                Lie.Of(Direction.Right, shows),
                Plus(Plus(along, left), right).As("rail length"),
                plan.Rail,
                new(railX - (left?.Length ?? Length.Zero), y, railZ)
            );
            tenons[rail] = (left?.Length ?? Length.Zero, right?.Length ?? Length.Zero);
            Tie(from, rail, Direction.Left, left);
            Tie(to, rail, Direction.Right, right);
            if (left is not null || right is not null)
                rail.ShoulderLength = along.As("shoulder to shoulder");
        }

        void End(string name, Direction shows, Length x, IReadOnlyList<PartDraft> front, IReadOnlyList<PartDraft> rear)
        {
            var between = depth - plan.LegDepth - plan.LegDepth;
            var (before, behind) = (Tenon(plan, front, Direction.Front), Tenon(plan, rear, Direction.Back));
            var rail = piece.Board(
                group,
                name,
                Role.StandRail,
                plan.RailMaterial,
                Lie.Of(Direction.Back, shows),
                Plus(Plus(between, before), behind).As("end rail length"),
                plan.Rail,
                new(x, envelope.Min.Y + plan.LegDepth.Length - (before?.Length ?? Length.Zero), railZ)
            );
            tenons[rail] = (before?.Length ?? Length.Zero, behind?.Length ?? Length.Zero);
            Tie(front, rail, Direction.Front, before);
            Tie(rear, rail, Direction.Back, behind);
            if (before is not null || behind is not null)
                rail.ShoulderLength = between.As("shoulder to shoulder");
        }
    }

    /// <summary>A plinth: front and rear boards the whole width, ends between them.</summary>
    public IReadOnlyList<PartDraft> Plinth(PlinthPlan plan)
    {
        var group = piece.Group("plinth", GroupKind.Stand, owner, owner.Source);
        var thickness = plan.Material.Thickness;
        var y = envelope.Min.Y + plan.Setback.Length;
        var across = (depth - plan.Setback - thickness - thickness).As("plinth end length");
        var front = Board("front", Direction.Right, Direction.Front, width, new(envelope.Min.X, y, envelope.Min.Z));
        var rear = Board(
            "rear",
            Direction.Right,
            Direction.Back,
            width,
            new(envelope.Min.X, envelope.Max.Y - thickness.Length, envelope.Min.Z)
        );
        var endY = y + thickness.Length;
        var left = Board("left end", Direction.Back, Direction.Left, across, new(envelope.Min.X, endY, envelope.Min.Z));
        var right = Board(
            "right end",
            Direction.Back,
            Direction.Right,
            across,
            new(envelope.Max.X - thickness.Length, endY, envelope.Min.Z)
        );
        foreach (var end in (PartDraft[])[left, right])
        {
            Screws.Between(piece, front, end, Direction.Front, 2, glued: true);
            Screws.Between(piece, rear, end, Direction.Back, 2, glued: true);
        }
        PartDraft[] boards = [front, rear, left, right];
        foreach (var board in boards)
            plan.Arch?.Cut(board);
        return boards;

        PartDraft Board(string name, Direction along, Direction shows, Figure length, Point at) =>
            piece.Board(
                group,
                name,
                Role.Plinth,
                plan.Material,
                Lie.Of(along, shows),
                length.As("plinth length"),
                plan.Height,
                at
            );
    }

    private (Leg Front, Leg Rear) Pair(GroupDraft group, LegsPlan plan, string end, Length x)
    {
        if (plan.LegDepth.Length * 2 > depth.Length)
            throw new CannotBuildException(
                new InputError(
                    "Two legs are deeper than the carcase they should carry.",
                    owner.Source,
                    "legs under half of the depth"
                )
            );
        if (plan.AtLeft && plan.AtRight && plan.LegWidth.Length * 2 >= width.Length)
            throw new CannotBuildException(
                new InputError(
                    "Two legs are wider than the carcase they should carry.",
                    owner.Source,
                    "legs under half of the width"
                )
            );
        var rails = piece.Shop.Length(StandRules.StandRailSetback).Length + plan.RailMaterial.Thickness.Length;
        if (Length.Min(plan.LegDepth.Length, plan.LegWidth.Length) < rails)
            throw new CannotBuildException(
                new InputError(
                    "The legs are thinner than the rails between them and their setback.",
                    owner.Source,
                    "legs thicker than the rails and their setback together"
                )
            );
        var (front, rear) = (envelope.Min.Y, envelope.Max.Y - plan.LegDepth.Length);
        var foot = envelope.Min.Z;
        return (
            MakeLeg(group, plan, $"front {end} leg", Turned(plan, end, atFront: true), new(x, front, foot)),
            MakeLeg(group, plan, $"rear {end} leg", Turned(plan, end, atFront: false), new(x, rear, foot))
        );
    }

    /// <summary>
    /// Square legs are turned a quarter from corner to corner, so that their joints come on the same two faces and one
    /// marking-out serves all four.
    /// </summary>
    private static Direction Turned(LegsPlan plan, string end, bool atFront)
    {
        if (plan.Plies > 1 || plan.LegWidth.Length != plan.LegDepth.Length)
            return Direction.Front;
        return (end, atFront) switch
        {
            ("left", true) => Direction.Front,
            ("left", false) => Direction.Left,
            (_, true) => Direction.Right,
            _ => Direction.Back,
        };
    }

    /// <summary>Makes a leg, whole or glued up of plies from the front to the back.</summary>
    private Leg MakeLeg(GroupDraft group, LegsPlan plan, string name, Direction shows, Point at)
    {
        var leg = new Leg();
        for (var n = 0; n < plan.Plies; n++)
        {
            var ply = piece.Board(
                group,
                plan.Plies == 1 ? name : $"{name} ply {n + 1}",
                Role.Leg,
                plan.Leg,
                Lie.Of(Direction.Up, shows),
                plan.Height.As("leg length"),
                plan.LegWidth,
                at.Moved(Direction.Back, plan.LegDepth.Length * n / plan.Plies),
                thickness: plan.Plies == 1 ? plan.LegDepth : plan.Leg.Thickness
            );
            if (n > 0)
                piece.Join(JointKind.Butt, leg[^1], ply, Direction.Front);
            leg.Add(ply);
        }
        return leg;
    }

    /// <summary>
    /// The tenon of a rail in a leg; null where it is dowelled, or meets a side. Two rails come into a leg at the same
    /// height: neither tenon may reach the other.
    /// </summary>
    private Figure? Tenon(LegsPlan plan, IReadOnlyList<PartDraft> leg, Direction into)
    {
        if (!plan.Tenoned || leg[0].Role != Role.Leg)
            return null;
        var rail = plan.RailMaterial.Thickness;
        var whole = into.Axis() == Axis.Y ? plan.LegDepth : plan.LegWidth;
        var room = piece.Shop.Length(JointRules.MortiseRoom).Length;
        var other =
            piece.Shop.Length(StandRules.StandRailSetback).Length
            + ((rail.Length + MortiseTenon.ThicknessOf(piece, rail.Length)) / 2)
            + room
            + room;
        var free = Figure.Given(
            "room before the other rail's tenon",
            whole.Length - other,
            new TradeOrigin("common practice")
        );
        return Figure.Min(MortiseTenon.LengthOf(piece, rail, whole), free).As("tenon length");
    }

    private static Figure Plus(Figure figure, Figure? more) => more is null ? figure : figure + more;

    private void Tie(IReadOnlyList<PartDraft> leg, PartDraft rail, Direction into, Figure? tenon)
    {
        if (tenon is null)
        {
            Dowel(leg, rail, into);
            return;
        }
        // The shoulder of the rail lies against the ply that faces it.
        var meets = leg.Where(ply => Extent.Shared(ply.Reckoned, rail.Reckoned) is not null)
            .MaxBy(ply => Extent.Shared(ply.Reckoned, rail.Reckoned)!.Value.Size(into.Axis()));
        if (meets is null || tenon.Length <= Length.Zero)
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for the tenons of the {rail.Name} in its leg.",
                    rail.Source,
                    "thicker legs, or `joint: dowels`"
                )
            );
        MortiseTenon.Between(piece, leg, meets, rail, into, Axis.Z, tenon.Length);
    }

    /// <summary>Ties a rail to the plies of a leg, or to a side that goes down to the floor.</summary>
    private void Dowel(IReadOnlyList<PartDraft> leg, PartDraft rail, Direction into)
    {
        var middle = Meeting.Centre(rail.Reckoned, into);
        var meets =
            leg.Where(p => Resting.ShareFace(rail.Reckoned, p.Reckoned, into))
                .OrderByDescending(p => p.Reckoned.Min.Y <= middle.Y && middle.Y <= p.Reckoned.Max.Y)
                .FirstOrDefault()
            ?? throw new CannotBuildException(
                new InputError(
                    $"The {rail.Name} does not meet its leg.",
                    rail.Source,
                    "legs thicker than the rails and their setback together"
                )
            );
        var through = leg.Aggregate(Length.Zero, (sum, p) => sum + p.Reckoned.Size(into.Axis()));
        var size = into.Axis() == Axis.Y ? through : meets.Reckoned.Size(into.Axis());
        // Two rails come into a leg at the same height: 2 mm stay between their holes, or behind one.
        var crossing =
            meets.Role == Role.Leg
                ? piece.Shop.Length(StandRules.StandRailSetback).Length
                    + (rail.Thickness.Length / 2)
                    + (piece.Shop.Length(JointRules.DowelDiameter).Length / 2)
                : Length.Zero;
        Dowels.Between(piece, leg, meets, rail, into, Axis.Z, 2, size - crossing - Length.FromMillimetres(2));
    }

    /// <summary>The plies of a leg, from the front to the back.</summary>
    private sealed class Leg : List<PartDraft>;
}
