using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// The outside of a drawer box: as wide as the opening less the room of its slides, as high as the opening less the room
/// over and under it, as long as the longest slide that goes in. The maker's own numbers for the drawer as a unit are
/// those of its box: width, height, length from front to back.
/// </summary>
internal sealed record DrawerSizes
{
    public required Figure Width { get; init; }

    public required Figure Height { get; init; }

    public required Figure Length { get; init; }

    public required Figure Slide { get; init; }

    /// <summary>What its slides ask for.</summary>
    public required DrawerRun Run { get; init; }

    /// <summary>Where the box begins: on the back of the front.</summary>
    public required Length FrontY { get; init; }

    public required Length BottomZ { get; init; }

    /// <summary>The X in the middle of the opening.</summary>
    public required Length MiddleX { get; init; }

    /// <summary>The line that sets its sizes.</summary>
    public required SourcePlace Source { get; init; }

    public static DrawerSizes Of(PieceBuilder piece, FrontSite site, DrawerPlan plan, GroupDraft group)
    {
        var own = piece.AsCut.ForUnit(group.Name);
        var run = DrawerRun.Of(piece, site, plan, plan.Old?.Side ?? plan.Box.Thickness.As("side thickness"));
        var below = run.Below;
        var clear = site.Opening.Clear;
        // Slides go on the sides, which end behind the lap of half-blind dovetails.
        var lap = plan.Joint == DrawerJoint.HalfBlind ? new DrawerCorners(piece, plan).Lap : null;
        var slide = SlideFor(piece, site, plan, run, group, lap);
        Refuse(site, plan, group);
        // A front of its own ends the box where the front ends.
        var width = (plan.OwnFront ? plan.Fit.Width() : site.Width - run.Taken).As("box width");
        NoRoom.Unless(width.Length > Dryfit.Measure.Length.Zero, $"box of the {group.Name}", site, plan.Place);
        return new DrawerSizes
        {
            Width = plan.Old?.Left(Axis.X, width) ?? own?.Width ?? width,
            Height =
                plan.Old?.Left(Axis.Z, HeightFor(piece, site, plan, group, run))
                ?? own?.Height
                ?? plan.BoxHeight
                ?? HeightFor(piece, site, plan, group, run),
            Length =
                plan.Old?.Left(Axis.Y, slide) ?? own?.Length ?? (lap is null ? slide : slide + lap).As("box length"),
            Slide = slide,
            Run = run,
            FrontY = plan.OwnFront ? site.FaceY : plan.Fit.BackY(piece, plan.Front.Thickness),
            BottomZ = clear.Min.Z + below.Length,
            MiddleX = (clear.Min.X + clear.Max.X) / 2,
            Source = own?.Place ?? plan.Place,
        };
    }

    private static Figure HeightFor(
        PieceBuilder piece,
        FrontSite site,
        DrawerPlan plan,
        GroupDraft group,
        DrawerRun run
    )
    {
        var height = (site.Height - run.Below - run.Above)
            .As("room for the box")
            .FloorTo(piece.Shop.Length(DrawerRules.DrawerHeightStep).Length)
            .As("box height");
        NoRoom.Unless(height.Length > Dryfit.Measure.Length.Zero, $"box of the {group.Name}", site, plan.Place);
        return height;
    }

    private static Figure SlideFor(
        PieceBuilder piece,
        FrontSite site,
        DrawerPlan plan,
        DrawerRun run,
        GroupDraft group,
        Figure? lap
    )
    {
        var room = site.InsideDepth;
        if (site.InsideFrontY > site.FaceY)
            room += Given("face frame thickness", site.InsideFrontY - site.FaceY);
        if (plan.Fit.Hang == Hang.Inset && !plan.OwnFront)
            room -= plan.Front.Thickness.As("front thickness");
        else if (plan.Fit.Hang == Hang.Overlay)
            room += piece.Shop.Length(GapRules.BumperGap, "gap behind the front");
        if (plan.Fit.IsLipped)
            room -= (plan.Front.Thickness / 2).As("half of the front");
        room -= run.Behind;
        if (lap is not null)
            room -= lap;
        room = room.As("room for the slides");
        // An old box is no longer than it was; slides are no longer than their box.
        if (plan.Old is { } old && (old.CutAt?.Axis() != Axis.Y || old.To is not null))
            room = Figure.Min(room, old.Left(Axis.Y, room));
        else if (plan.Old is not null)
            room = Figure.Min(room, plan.Old.Length);
        var slide = plan.SlideLength ?? run.LongestIn(room)?.As("slide length");
        if (slide is null || slide.Length > room.Length || slide.Length <= Dryfit.Measure.Length.Zero)
            throw NoRoom.Of(
                $"{(run.Running == DrawerRunning.Slides ? "No slide" : "No box")} for the {group.Name}: {NoRoom.Show(room.Length)} are left behind its front"
                    + (plan.SlideLength is null ? $", and the shortest is {NoRoom.Show(run.Shortest)}." : "."),
                plan.Place,
                "a deeper carcase, or shorter slides"
            );
        return slide;
    }

    private static void Refuse(FrontSite site, DrawerPlan plan, GroupDraft group)
    {
        if (plan.Fit.IsLipped && plan.Running != DrawerRunning.Slides)
            throw NoRoom.Of(
                $"The back of the {group.Name} goes into its opening, where its runners begin.",
                plan.Place,
                "slides at its sides or under it, or another `hang:`"
            );
        if (!plan.OwnFront)
            return;
        if (plan.Fit.Hang != Hang.Inset)
            throw NoRoom.Of(
                $"The {group.Name} lies in front of its opening: the front of its box cannot be its front.",
                plan.Place,
                "an inset drawer, or a front screwed to the box"
            );
        if (plan.Running == DrawerRunning.Slides)
            throw NoRoom.Of(
                $"The box of the {group.Name} is narrower than its opening by its slides: its own front would leave them open to view.",
                plan.Place,
                "`slides: runners` or `slides: side hung`, or a front screwed to the box"
            );
        if (plan.Joint is not (DrawerJoint.HalfBlind or DrawerJoint.Dovetailed or DrawerJoint.BoxJointed))
            throw NoRoom.Of(
                $"The front of the {group.Name} is let in between its sides, which would show before it.",
                plan.Place,
                "`joint: half-blind dovetailed`, or a front screwed to the box"
            );
    }

    /// <summary>A distance between parts that stand already.</summary>
    private static Figure Given(string name, Length length) =>
        Figure.Given(name, length, new TradeOrigin("between parts that stand already"));
}
