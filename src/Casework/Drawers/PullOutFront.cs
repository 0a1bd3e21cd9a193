using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Handles;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// Several trays on slides, all screwed to one front that closes the opening: they slide out together. Together they are one
/// drawer, whose box is all of them.
/// </summary>
internal static class PullOutFront
{
    /// <exception cref="CannotBuildException">The trays do not go one over the other into the opening.</exception>
    public static Front Build(PieceBuilder piece, FrontSite site, PullOutsPlan plan)
    {
        var local = site.NameOf("pull-out");
        var drawer = Drawer(piece, site, plan);
        var group = piece.Group(local, GroupKind.Drawer, site.Carcase, plan.Place);
        var face = DrawerWord.Face(piece, site, drawer, group);
        group.Measures("front width", face.Panel.FinishedLength ?? face.Panel.Length);
        group.Measures("front height", face.Panel.FinishedWidth ?? face.Panel.Width);
        var share = site.Height / plan.Count;
        var clear = site.Opening.Clear;
        var boxes = new List<DrawerBox>();
        DrawerFit? lowest = null;
        var floor = clear.Min.Z;
        for (var n = 0; n < plan.Count; n++)
        {
            var name = plan.Count == 1 ? "tray" : $"tray {n + 1}";
            var tray = piece.Group(name, GroupKind.Drawer, group, plan.Place);
            var sizes = DrawerSizes.Of(piece, site, drawer, tray);
            var at = plan.At.Count > 0 ? plan.At[n].Length : (share * n).Length + sizes.Run.Below.Length;
            sizes = sizes with { BottomZ = clear.Min.Z + at };
            var top = sizes.BottomZ + sizes.Height.Length;
            if (sizes.BottomZ < floor || top > clear.Max.Z - sizes.Run.Above.Length)
                throw NoRoom.Of(
                    $"There is no room for {tray.Name}, which is {NoRoom.Show(sizes.Height.Length)} high, in an opening of {NoRoom.Show(site.Height.Length)}.",
                    plan.Place,
                    "fewer or lower trays, or heights that leave room for each"
                );
            floor = top;
            var box = DrawerBox.Make(piece, tray, drawer, sizes);
            DrawerWord.Screw(piece, drawer, face.Panel, box);
            var runs = DrawerSlides.Fit(piece, site, $"{local} {name}", drawer, sizes, box);
            lowest ??= DrawerWord.FitOf(drawer, sizes, box, runs);
            boxes.Add(box);
        }
        if (drawer.Fit.IsLipped)
            Lip.Cut(drawer.Fit, [.. face.Parts], face.Extent);
        if (drawer.Handle is { } handle)
        {
            var middle = (face.Extent.Min.Z + face.Extent.Max.Z) / 2;
            var behind = boxes.Select(b => b.Front).Where(f => f.Extent.Min.Z < middle && f.Extent.Max.Z > middle);
            new HandleMaker(piece, handle, group.Name, plan.Place).OnDrawer([.. face.Parts, .. behind], face.Extent);
        }
        var front = new Front(
            group.Id,
            [.. face.Parts.Select(part => part.Id)],
            site.Opening.Id,
            drawer.Fit.Hang,
            FrontMotion.SlidesOut,
            face.Extent.Min,
            drawer.Fit.Wanted,
            [],
            lowest! with
            {
                Box = [.. boxes.SelectMany(box => box.Parts).Select(part => part.Id)],
            }
        );
        piece.Add(front);
        return front;
    }

    private static DrawerPlan Drawer(PieceBuilder piece, FrontSite site, PullOutsPlan plan)
    {
        var materials = new FrontMaterials(piece, plan.Said, plan.Place);
        var front = plan.Front!;
        var box = plan.Box ?? materials.Named("box", "boxes") ?? site.Material;
        return new()
        {
            Fit = new FrontFit(piece, site, plan.Said, hang: null),
            Front = front,
            Box = box,
            Bottom = plan.Bottom ?? materials.Named("bottom", "bottoms", "backs") ?? box,
            Joint = DrawerJoint.Rabbeted,
            BottomSet = BottomSet.Grooved,
            OwnFront = false,
            Running = DrawerRunning.Slides,
            BoxHeight = plan.Height ?? piece.Shop.Length(DrawerRules.PullOutHeight, "height of a pull-out"),
            Slide = plan.Slide,
            Runners = box,
            SlideLength = null,
            Edging = materials.Edging(front),
            Dividers = null,
            Old = null,
            Handle = HandlePlan.Read(piece, plan.Said, plan.Place),
            Place = plan.Place,
        };
    }
}
