using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Casework.Fronts.Sliding;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>The word <c>doors</c>: what closes an opening on hinges or in tracks.</summary>
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
            CutEdges(piece, site, leaf, unit);
            Fit(piece, site, leaf, unit);
            piece.Add(FrontOf(piece, site, leaf, unit));
        }
        if (plan.IsPair && plan.Opens != Opens.Sliding)
            piece.MakeNeighbours(
                leaves[0].Group.Id,
                Direction.Right,
                leaves[1].Group.Id,
                plan.PairGap.Length,
                plan.Meeting is not null
            );
        return [.. piece.Fronts.Skip(first)];
    }

    /// <summary>How far doors within their opening reach behind the front of the inside; null where they do not.</summary>
    public static Figure? ReachIn(PieceBuilder piece, FrontSite site, Node value, Scope scope)
    {
        var plan = DoorPlan.Read(piece, site, value, scope);
        if (plan.Opens == Opens.Sliding)
            return SlidingTracks.Reach(piece, plan);
        var thickness = plan.Material.Thickness;
        if (plan.Fit.IsLipped)
            thickness = (thickness / 2).As("half of the door");
        var frame = site.InsideFrontY - site.FaceY;
        if ((plan.Fit.Hang != Hang.Inset && !plan.Fit.IsLipped) || thickness.Length <= frame)
            return null;
        var given = Figure.Given("face frame thickness", frame, new TradeOrigin("between parts that stand already"));
        return (frame == Length.Zero ? thickness : thickness - given).As("door behind the front edges");
    }

    /// <summary>Whether doors want a board below and above them: to turn on, to slide in, to lap over.</summary>
    public static bool WantsBoards(Node value)
    {
        var said = value as Mapping;
        var spoken = SpokenWords.Of(value, DoorShapes.Spoken);
        return OpensWord.Read((said?["opens"] as Scalar)?.Text ?? spoken[5]) != Opens.Turning
            || ((said?["hang"] as Scalar)?.Text ?? spoken[3]) == "rebated";
    }

    /// <summary>What is cut along the edges of the whole door.</summary>
    private static void CutEdges(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var plan = leaf.Plan;
        if (plan.Fit.IsLipped)
            Lip.Cut(leaf, unit);
        if (plan.Meeting is { } meeting)
        {
            meeting.Cut(leaf, unit);
            meeting.Bolt(piece, site, leaf, unit);
        }
        if (plan.Opens == Opens.Sliding)
            new SlidingTracks(piece, site, plan).Run(leaf, unit);
    }

    private static void Fit(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var plan = leaf.Plan;
        if (plan.Opens != Opens.Sliding)
            Hinges.Hang(piece, site, leaf, unit);
        if (plan.Opens is Opens.LiftUp or Opens.DropFront)
            Stays.Fit(piece, site, leaf, unit);
        if (plan.Handle is not { } handle)
            return;
        if (plan.Opens == Opens.Sliding && !handle.IsSaidHere)
            return; // What is said of all fronts means those on which it can stand.
        if (plan.Opens == Opens.Sliding)
            throw NoRoom.Of(
                $"The {handle.Family.Called} of the {leaf.Group.Name} would stop the doors from passing one another.",
                leaf.Source,
                "`pull: none`, and a finger hole bored by hand"
            );
        var maker = new HandleMaker(piece, handle, leaf.Group.Name, leaf.Source);
        var isSlab = plan.Kind == DoorKind.Slab;
        switch (leaf.Hinged)
        {
            case Direction.Up:
                maker.OnFlap(unit, leaf.Hinged, isSlab ? null : plan.BottomRail.Length);
                break;
            case Direction.Down:
                maker.OnFlap(unit, leaf.Hinged, isSlab ? null : plan.TopRail.Length);
                break;
            default:
                // What a rebate hides of the leaf that closes first does not count.
                var hidden = plan.Meeting is { } meeting && meeting.IsFirst(leaf) ? meeting.Width.Length : Length.Zero;
                var seen = unit.Extent.Grown(leaf.Hinged.Opposite(), -hidden);
                maker.OnDoor(unit with { Extent = seen }, leaf.Hinged, isSlab ? null : plan.Stile.Length, site.Hangs);
                break;
        }
    }

    private static Front FrontOf(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var fit = leaf.Plan.Fit;
        var wanted = fit.Wanted;
        if (leaf.Plan.IsPair)
            wanted = leaf.Hinged == Direction.Left ? wanted with { Right = null } : wanted with { Left = null };
        if (leaf.Plan.Opens == Opens.Sliding)
        {
            var play = new SlidingTracks(piece, site, leaf.Plan).EndPlay.Length;
            wanted = leaf.Hinged == Direction.Left ? new(play, null, null, null) : new(null, play, null, null);
        }
        return new Front(
            leaf.Group.Id,
            [.. unit.Face.Select(p => p.Id)],
            site.Opening.Id,
            fit.Hang,
            MotionOf(leaf),
            new Point(leaf.HingeX, unit.Extent.Min.Y, leaf.Hinged == Direction.Up ? unit.Extent.Max.Z : leaf.BottomZ),
            wanted,
            [],
            Drawer: null
        )
        {
            Swing = leaf.Plan.Opens == Opens.Sliding ? null : Hinges.SwingOf(piece, site, leaf, unit),
        };
    }

    private static FrontMotion MotionOf(Leaf leaf) =>
        (leaf.Plan.Opens, leaf.Hinged) switch
        {
            (Opens.Sliding, Direction.Left) => FrontMotion.SlidesRight,
            (Opens.Sliding, _) => FrontMotion.SlidesLeft,
            (_, Direction.Up) => FrontMotion.TurnsOnTopEdge,
            (_, Direction.Down) => FrontMotion.TurnsOnBottomEdge,
            (_, Direction.Left) => FrontMotion.TurnsOnLeftEdge,
            _ => FrontMotion.TurnsOnRightEdge,
        };
}
