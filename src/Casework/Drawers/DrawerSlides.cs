using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Sides;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// The side slides of a drawer and what they are fixed to: the upright itself, or a packer on it where a face frame
/// stands in before it.
/// </summary>
internal static class DrawerSlides
{
    private const int PackerScrews = 3;

    /// <summary>The least that lies against the upright: common practice.</summary>
    private static readonly Length SlideHeight = Length.FromMillimetres(10);

    /// <summary>Fits both slides; returns the parts they are fixed to.</summary>
    public static (PartDraft Left, PartDraft Right) Fit(
        PieceBuilder piece,
        FrontSite site,
        string name,
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerBox box
    )
    {
        if (plan.Running == DrawerRunning.SideHung)
        {
            SideHung.Make(piece, site, name, plan, sizes, box);
            return (site.InsideLeft, site.InsideRight);
        }
        var left = RunFor(Direction.Left, site.InsideLeft, site.HingeLeft);
        var right = RunFor(Direction.Right, site.InsideRight, site.HingeRight);
        if (plan.Running == DrawerRunning.Runners)
        {
            new WoodenRunners(piece, site, name, plan, sizes).Make(box, (left, right));
            return (left, right);
        }
        var size = LengthFormat.For(piece.Scope.Unit).WriteWithUnit(sizes.Slide.Length);
        foreach (
            var (side, wall, run) in new[] { (Direction.Left, box.Left, left), (Direction.Right, box.Right, right) }
        )
        {
            var at = Meeting.Centre(wall.Extent, side);
            if (sizes.Run.IsUnder)
                at = at.With(Axis.Z, wall.Extent.Min.Z);
            var fitting = piece.NextFittingId;
            var slide = wall
                .Extent.With(Direction.Back, wall.Extent.Min.Y + sizes.Slide.Length)
                .With(Direction.Down, at.Z)
                .With(Direction.Up, at.Z + SlideHeight);
            piece.FitSlide(
                sizes.Run.Slide,
                size,
                sizes.Run.Travel(sizes.Slide.Length),
                at,
                [wall, .. run.Carrying(slide, side, $"slide of the {site.Carcase.Full(name)}", plan.Place)]
            );
            if (sizes.Run.IsUnder)
                LetPast(sizes, box, side, fitting);
        }
        return (left, right);

        PartDraft RunFor(Direction side, PartDraft upright, PartDraft frame)
        {
            var wall = upright.Reckoned.Side(side.Opposite());
            var opening = site.Opening.Clear.Side(side);
            var gap = side == Direction.Left ? opening - wall : wall - opening;
            if (gap < Length.Zero)
                throw NoRoom.Of(
                    $"The slides of the {site.Carcase.Full(name)} have nothing to be fixed to: the opening is wider than the inside behind it.",
                    plan.Place,
                    "a face frame that stands in at least as far as the sides"
                );
            return gap == Length.Zero ? upright : Packer(side, upright, frame, gap);
        }

        PartDraft Packer(Direction side, PartDraft upright, PartDraft frame, Length gap)
        {
            var width = piece.Shop.Length(DrawerRules.PackerWidth, "packer width");
            if (width.Length > site.Height.Length)
                width = Figure.Min(width, site.Height).As("packer width");
            // Beside a box on runners it only guides, and stands clear of them.
            if (plan.Running == DrawerRunning.Runners && width.Length > sizes.Height.Length * new Rational(3, 4))
                width = (sizes.Height * new Rational(3, 4)).As("packer width");
            var length = LengthOf(site, upright, sizes.Slide);
            var thickness = Figure
                .Given(
                    "from the upright to the edge of the opening",
                    gap,
                    new TradeOrigin("between parts that stand already")
                )
                .As("packer thickness");
            // In the middle of the box, or low where the slides lie under it, but within its own opening.
            var clear = site.Opening.Clear;
            var z = sizes.Run.IsUnder
                ? sizes.BottomZ - sizes.Run.Below.Length
                : sizes.BottomZ + ((sizes.Height.Length - width.Length) / 2);
            z = Length.Max(clear.Min.Z, Length.Min(z, clear.Max.Z - width.Length));
            var x = side == Direction.Left ? site.Opening.Clear.Min.X - gap : site.Opening.Clear.Max.X;
            var packer = piece.Board(
                site.Carcase,
                $"{name} {Spoken.Of(side)} packer",
                Role.Packer,
                plan.Box,
                Lie.Of(Direction.Back, side.Opposite()),
                length,
                width,
                new(x, site.InsideFrontY, z),
                plan.Place,
                thickness,
                holds: side
            );
            Screws.Between(piece, upright, packer, side, PackerScrews);
            if (frame != upright)
                piece.Join(JointKind.Butt, frame, packer, Direction.Front, glued: false);
            return packer;
        }
    }

    /// <summary>As long as the slide; on a frame with panels from its front stile to its rear one.</summary>
    public static Figure LengthOf(FrontSite site, PartDraft upright, Figure slide)
    {
        var depth = site.InsideDepth.As("inside depth");
        return (upright is FramedSide ? depth : Figure.Min(slide, depth)).As("packer length");
    }

    /// <summary>
    /// An under slide passes below the back of the box, which is notched for it where it reaches down so far, and holds it
    /// by a hook.
    /// </summary>
    public static void LetPast(DrawerSizes sizes, DrawerBox box, Direction side, string fitting)
    {
        var slide = sizes.Run.Slide;
        var wall = side == Direction.Left ? box.Left : box.Right;
        var inside = wall.Extent.Side(side.Opposite());
        var inward = side.Opposite();
        var underside = sizes.BottomZ + sizes.Run.BottomUp.Length;
        var up = slide.Length(UnderSlideRules.HookUp).Length;
        var hole = slide.Length(UnderSlideRules.HookHole).Length;
        if (box.Bottom.Thickness.Length + (hole / 2) > up)
            throw NoRoom.Of(
                $"The {box.Bottom.Name} is {NoRoom.Show(box.Bottom.Thickness.Length)} thick: the hook of the {slide.Called} would go into it.",
                sizes.Source,
                $"a bottom no thicker than {NoRoom.Show(up - (hole / 2))}, or `slides: side`"
            );
        if (box.Back.Extent.Min.Z < underside)
        {
            var notch = slide.Length(UnderSlideRules.Notch).Length;
            box.Back.CutAway(
                CutKind.Notch,
                box.Back.Extent.With(side, inside)
                    .With(inward, inside + (notch * inward.Sign()))
                    .With(Direction.Up, underside),
                fitting
            );
        }
        var hook = new Point(inside, box.Back.Extent.Max.Y, underside + up);
        box.Back.Bore(
            CutKind.Bore,
            hook.Moved(inward, slide.Length(UnderSlideRules.HookIn).Length),
            Direction.Front,
            hole,
            slide.Length(UnderSlideRules.HookDepth).Length,
            fitting
        );
    }
}
