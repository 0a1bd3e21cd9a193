using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>The word <c>drawer</c>: a box on slides with an applied front.</summary>
internal static class DrawerWord
{
    /// <summary>Screws from inside the box into its front, common practice.</summary>
    private const int FrontScrews = 4;

    public static Shape Shape => DrawerShapes.Shape;

    /// <summary>Builds one drawer and adds it to the piece.</summary>
    /// <param name="value">What the recipe says: nothing, a phrase or keys, checked against <see cref="Shape"/>.</param>
    /// <param name="name">What it is called within its bay: "drawer 1".</param>
    /// <returns>The front that was added.</returns>
    /// <exception cref="CannotBuildException">The sizes leave no room for a part.</exception>
    public static Front Build(PieceBuilder piece, FrontSite site, Node? value, Scope scope, string name)
    {
        var plan = DrawerPlan.Read(piece, site, value, scope);
        var local = site.NameOf(name);
        var group = piece.Group(local, GroupKind.Drawer, site.Carcase, plan.Place);
        var sizes = DrawerSizes.Of(piece, site, plan, group);
        var applied = plan.OwnFront ? null : Face(piece, site, plan, group);
        var box = plan.Old is { } old
            ? new OldBox(piece, group, plan, old, sizes).Make()
            : DrawerBox.Make(piece, group, plan, sizes);
        if (applied is not null)
            Screw(piece, plan, applied.Panel, box);
        var face = applied ?? new BandedPanel(box.Front, []);
        if (plan.Fit.IsLipped)
            Lip.Cut(plan.Fit, [.. face.Parts], face.Extent);
        group.Measures("front width", face.Panel.FinishedLength ?? face.Panel.Length);
        group.Measures("front height", face.Panel.FinishedWidth ?? face.Panel.Width);
        group.Measures("box width", sizes.Width);
        group.Measures("box height", sizes.Height);
        group.Measures("box length", sizes.Length);
        if (plan.Handle is not null)
            new HandleMaker(piece, plan.Handle, group.Name, plan.Place).OnDrawer(
                [.. face.Parts.Append(box.Front).Distinct()],
                face.Extent
            );
        var runs = DrawerSlides.Fit(piece, site, local, plan, sizes, box);
        var front = new Front(
            group.Id,
            [.. face.Parts.Select(p => p.Id)],
            site.Opening.Id,
            plan.Fit.Hang,
            FrontMotion.SlidesOut,
            face.Extent.Min,
            plan.Fit.Wanted,
            [],
            FitOf(plan, sizes, box, runs)
        );
        piece.Add(front);
        return front;
    }

    /// <summary>The box front lies on the applied one; the ends of the sides too, and the bottom where it is planted.</summary>
    public static void Screw(PieceBuilder piece, DrawerPlan plan, PartDraft applied, DrawerBox box)
    {
        Screws.Between(piece, applied, box.Front, Direction.Front, FrontScrews);
        if (plan.Joint != DrawerJoint.HalfBlind)
        {
            foreach (var side in (ReadOnlySpan<PartDraft>)[box.Left, box.Right])
                piece.Join(JointKind.Butt, applied, side, Direction.Front, glued: false);
        }
        if (plan.BottomSet == BottomSet.Planted)
            piece.Join(JointKind.Butt, applied, box.Bottom, Direction.Front, glued: false);
    }

    public static BandedPanel Face(PieceBuilder piece, FrontSite site, DrawerPlan plan, GroupDraft group)
    {
        var fit = plan.Fit;
        var (width, height) = (fit.Width().As("front width"), fit.Height.As("front height"));
        NoRoom.Unless(width.Length > Length.Zero && height.Length > Length.Zero, group.Name, site, plan.Place);
        var thickness = plan.Front.Thickness;
        return Edging.Panel(
            piece,
            group,
            "front",
            Role.DrawerFront,
            plan.Front,
            Lie.Of(Direction.Right, Direction.Front),
            width,
            height,
            new(fit.Edge(Direction.Left), fit.BackY(piece, thickness) - thickness.Length, fit.Edge(Direction.Down)),
            plan.Edging is null
                ? null
                : new Bands(plan.Edging, Direction.Left, Direction.Right, Direction.Down, Direction.Up),
            plan.Place,
            // Its back lies on the box, which stays where its slides are.
            Direction.Back
        );
    }

    public static DrawerFit FitOf(
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerBox box,
        (PartDraft Left, PartDraft Right) runs
    )
    {
        var run = sizes.Run;
        // A front of its own makes the box as wide as itself.
        var clearance = (plan.OwnFront ? plan.Fit.Wanted.Left : null) ?? run.Clearance.Length;
        var most = clearance;
        if (plan.Running == DrawerRunning.SideHung)
        {
            // The strips reach over from the uprights, however far these stand behind the edges of a face frame.
            var (left, right) = (
                box.Left.Reckoned.Min.X - runs.Left.Reckoned.Max.X,
                runs.Right.Reckoned.Min.X - box.Right.Reckoned.Max.X
            );
            (clearance, most) = (Length.Min(left, right), Length.Max(left, right));
        }
        return new(
            [.. box.Parts.Where(p => !plan.OwnFront || p != box.Front).Select(p => p.Id)],
            (clearance, most + run.ClearanceOver.Length),
            run.Above.Length,
            plan.Running == DrawerRunning.Runners ? Length.Zero : run.Below.Length,
            run.Behind.Length,
            plan.Running == DrawerRunning.Slides ? sizes.Slide.Length : Length.Zero,
            (runs.Left.Edge(Direction.Front).Id, runs.Right.Edge(Direction.Front).Id)
        )
        {
            GoesByInside = run.IsUnder,
            Travel = run.Travel(plan.Running == DrawerRunning.Slides ? sizes.Slide.Length : sizes.Length.Length),
        };
    }
}
