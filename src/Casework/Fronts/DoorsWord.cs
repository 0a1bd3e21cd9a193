using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>The word <c>doors</c>: one door or a pair in an opening.</summary>
internal static class DoorsWord
{
    public static Shape Shape => DoorShapes.Shape;

    /// <summary>Builds the doors of an opening and adds them to the piece.</summary>
    /// <param name="value">What the recipe says: a phrase or keys, checked against <see cref="Shape"/>.</param>
    /// <returns>The fronts that were added, from left to right.</returns>
    /// <exception cref="CannotBuildException">The sizes leave no room for a part.</exception>
    public static IReadOnlyList<Front> Build(PieceBuilder piece, FrontSite site, Node value, Scope scope)
    {
        var plan = DoorPlan.Read(piece, site, value, scope);
        var leaves = Leaf.Of(piece, site, plan);
        var first = piece.Fronts.Count;
        foreach (var leaf in leaves)
        {
            var unit = plan.Kind switch
            {
                DoorKind.Framed => FramedDoor.Build(piece, leaf),
                DoorKind.Glazed => GlazedDoor.Build(piece, leaf),
                _ => SlabDoor.Build(piece, leaf),
            };
            Hinges.Hang(piece, site, leaf, unit);
            piece.Add(FrontOf(site, leaf, unit));
        }
        if (plan.IsPair)
            piece.MakeNeighbours(leaves[0].Group.Id, Direction.Right, leaves[1].Group.Id, plan.PairGap.Length);
        return [.. piece.Fronts.Skip(first)];
    }

    /// <summary>How far doors within their opening reach behind the front of the inside; null where they do not.</summary>
    public static Figure? ReachIn(PieceBuilder piece, FrontSite site, Node value, Scope scope)
    {
        var plan = DoorPlan.Read(piece, site, value, scope);
        var thickness = plan.Material.Thickness;
        var frame = site.InsideFrontY - site.FaceY;
        if (plan.Fit.Hang != Hang.Inset || thickness.Length <= frame)
            return null;
        var given = Figure.Given("face frame thickness", frame, new TradeOrigin("between parts that stand already"));
        return (frame == Length.Zero ? thickness : thickness - given).As("door behind the front edges");
    }

    private static Front FrontOf(FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var fit = leaf.Plan.Fit;
        var wanted = fit.Wanted;
        if (leaf.Plan.IsPair)
            wanted = leaf.Hinged == Direction.Left ? wanted with { Right = null } : wanted with { Left = null };
        return new Front(
            leaf.Group.Id,
            [.. unit.Face.Select(p => p.Id)],
            site.Opening.Id,
            fit.Hang,
            leaf.Hinged == Direction.Left ? FrontMotion.TurnsOnLeftEdge : FrontMotion.TurnsOnRightEdge,
            new Point(leaf.HingeX, unit.Extent.Min.Y, leaf.BottomZ),
            wanted,
            [],
            Drawer: null
        );
    }
}
