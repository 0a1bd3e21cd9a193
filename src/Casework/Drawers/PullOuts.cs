using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Sides;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// Puts trays on slides behind doors, or in an open bay. Packers bring the slides in from the uprights, past the edges of a face frame
/// and clear of doors that stand open at a right angle, with their hinges. Each is a front of its own, without a face: it
/// slides out, and is judged as a drawer is.
/// </summary>
/// <param name="isBehindDoors">Whether they must pass doors that stand open.</param>
internal sealed class PullOuts(PieceBuilder piece, FrontSite site, PullOutsPlan plan, bool isBehindDoors)
{
    private const int PackerScrews = 3;

    /// <summary>How far the slides stand in from the opening; null where nothing is in their way.</summary>
    private readonly Figure? _in = isBehindDoors
        ? piece.Shop.Length(DrawerRules.PullOutIn, "in from the opening")
        : null;

    /// <param name="inside">The clear space behind the opening.</param>
    /// <param name="insideHeight">Its height.</param>
    /// <param name="doors">How far doors in their opening reach in before the trays; null where they do not.</param>
    public void Make(Extent inside, Figure insideHeight, Figure? doors)
    {
        var materials = new FrontMaterials(piece, said: null, plan.Place);
        var box = plan.Box ?? materials.Named("box", "boxes") ?? site.Material;
        var bottom = plan.Bottom ?? materials.Named("bottom", "bottoms", "backs") ?? box;
        var setback = piece.Shop.Length(ShelfRules.ShelfSetback, "setback");
        if (doors is not null)
            setback += doors;
        var drawer = Drawer(box, bottom);
        var run = DrawerRun.Of(piece, site, drawer, box.Thickness.As("side thickness"));
        var height = plan.Height ?? piece.Shop.Length(DrawerRules.PullOutHeight, "height of a pull-out");
        var room = (site.InsideDepth - setback - run.Behind).As("room for the slides");
        var slide =
            run.LongestIn(room)?.As("slide length")
            ?? throw NoRoom.Of(
                $"There is no room for pull-outs: {NoRoom.Show(room.Length)} are left for slides, and the shortest is {NoRoom.Show(run.Shortest)}.",
                plan.Place,
                "a deeper carcase"
            );
        var width = ((_in is null ? site.Width : site.Width - _in - _in) - run.Taken).As("box width");
        var share = insideHeight / plan.Count;
        // What slides out passes the rails of a face frame, where these stand in before the bay.
        var clear = site.Opening.Clear;
        var floor = Length.Max(inside.Min.Z, clear.Min.Z);
        var ceiling = Length.Min(inside.Max.Z, clear.Max.Z) - run.Above.Length;
        var apart = Length.Max(run.Above.Length, run.Below.Length);
        for (var n = plan.Count - 1; n >= 0; n--)
        {
            var at =
                plan.At.Count > 0 ? plan.At[n]
                : n == 0 ? run.Below
                : (share * n) + run.Below;
            var z = inside.Min.Z + at.Length;
            if (n == 0 && plan.At.Count == 0)
                z = floor + run.Below.Length;
            if (width.Length <= Length.Zero || z < inside.Min.Z || z + height.Length > ceiling)
                throw NoRoom.Of(
                    $"There is no room for pull-out {n + 1} of {plan.Count}, which is {NoRoom.Show(height.Length)} high, in a bay of {NoRoom.Show(insideHeight.Length)}.",
                    plan.Place,
                    "fewer or lower pull-outs, or heights that leave room for each"
                );
            ceiling = z - apart;
            Tray(
                drawer,
                plan.Count == 1 ? "pull-out" : $"pull-out {n + 1}",
                new DrawerSizes
                {
                    Width = width,
                    Height = height,
                    Length = slide.As("box length"),
                    Slide = slide,
                    Run = run,
                    FrontY = site.InsideFrontY + setback.Length,
                    BottomZ = z,
                    MiddleX = (site.Opening.Clear.Min.X + site.Opening.Clear.Max.X) / 2,
                    Source = plan.Place,
                }
            );
        }
    }

    private void Tray(DrawerPlan drawer, string name, DrawerSizes sizes)
    {
        var local = site.NameOf(name);
        var group = piece.Group(local, GroupKind.Drawer, site.Carcase, plan.Place);
        var box = DrawerBox.Make(piece, group, drawer, sizes);
        group.Measures("box width", sizes.Width);
        group.Measures("box height", sizes.Height);
        group.Measures("box length", sizes.Length);
        var size = LengthFormat.For(piece.Scope.Unit).WriteWithUnit(sizes.Slide.Length);
        var left = Run(Direction.Left, site.InsideLeft, box.Left);
        var right = Run(Direction.Right, site.InsideRight, box.Right);
        piece.Add(
            new Front(
                group.Id,
                [],
                site.Opening.Id,
                Hang.Inset,
                FrontMotion.SlidesOut,
                box.Front.Extent.Min,
                new(null, null, null, null),
                [],
                DrawerWord.FitOf(drawer, sizes, box, (left, right))
            )
        );

        PartDraft Run(Direction side, PartDraft upright, PartDraft wall)
        {
            var packer = Packer(side, upright, local, drawer, sizes) ?? upright;
            var at = Meeting.Centre(wall.Extent, side);
            if (sizes.Run.IsUnder)
                at = at.With(Axis.Z, wall.Extent.Min.Z);
            var fitting = piece.NextFittingId;
            piece.FitSlide(plan.Slide, size, sizes.Run.Travel(sizes.Slide.Length), at, wall, packer);
            if (sizes.Run.IsUnder)
                DrawerSlides.LetPast(sizes, box, side, fitting);
            return packer;
        }
    }

    /// <summary>What brings a slide in from the upright; null where it goes on the upright itself.</summary>
    private PartDraft? Packer(Direction side, PartDraft upright, string name, DrawerPlan drawer, DrawerSizes sizes)
    {
        var wall = upright.Reckoned.Side(side.Opposite());
        var gap = Length.Abs(site.Opening.Clear.Side(side) - wall);
        if (gap == Length.Zero && _in is null)
            return null;
        var toOpening = Figure.Given(
            "from the upright to the opening",
            gap,
            new TradeOrigin("between parts that stand already")
        );
        var thickness = (
            _in is null ? toOpening
            : gap == Length.Zero ? _in
            : _in + toOpening
        ).As("packer thickness");
        var width = piece.Shop.Length(DrawerRules.PackerWidth, "packer width");
        if (width.Length > sizes.Height.Length)
            width = Figure.Min(width, sizes.Height).As("packer width");
        // On a frame with panels it reaches from the front stile to the rear one.
        var length = (
            upright is FramedSide
                ? Figure.Given(
                    "from the front of the tray to the back",
                    site.InsideBackY - sizes.FrontY,
                    new TradeOrigin("between parts that stand already")
                )
                : sizes.Slide
        ).As("packer length");
        var packer = piece.Board(
            site.Carcase,
            $"{name} {Spoken.Of(side)} packer",
            Role.Packer,
            drawer.Box,
            Lie.Of(Direction.Back, side.Opposite()),
            length,
            width,
            new(
                side == Direction.Left ? wall : wall - thickness.Length,
                sizes.FrontY,
                // An under slide lies below the box, a side slide in the middle of its side.
                sizes.Run.IsUnder
                    ? sizes.BottomZ - sizes.Run.Below.Length
                    : sizes.BottomZ + ((sizes.Height.Length - width.Length) / 2)
            ),
            plan.Place,
            thickness,
            holds: side
        );
        Screws.Between(piece, upright, packer, side, PackerScrews);
        return packer;
    }

    private DrawerPlan Drawer(Material box, Material bottom) =>
        new()
        {
            Fit = new FrontFit(piece, site, said: null, hang: null),
            Front = box,
            Box = box,
            Bottom = bottom,
            Joint = DrawerJoint.Rabbeted,
            BottomSet = BottomSet.Grooved,
            OwnFront = false,
            Running = DrawerRunning.Slides,
            BoxHeight = null,
            Slide = plan.Slide,
            Runners = box,
            SlideLength = null,
            Edging = null,
            Dividers = null,
            Old = null,
            Handle = null,
            Place = plan.Place,
        };
}
