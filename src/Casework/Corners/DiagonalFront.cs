using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Shaping;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// The front across a corner, in a frame of its own that is turned by 45 degrees: a face frame whose stiles are bevelled to
/// meet the fronts of both runs, and what closes its one opening.
/// </summary>
internal sealed class DiagonalFront(
    PieceBuilder piece,
    CarcasePlan plan,
    DiagonalPlan diagonal,
    DiagonalShape shape,
    DiagonalBox box
)
{
    public void Make(Figure height, Length baseZ, AsMeasured measured)
    {
        var face = plan.Face!;
        var deep = face.Material.Thickness;
        var width = shape.FrontWidth;
        var at = shape.Pivot with { Z = baseZ };
        var outside = new Extent(at, at + new Point(width.Length, deep.Length, height.Length));
        var front = piece.Group("front", GroupKind.FaceFrame, plan.Group, plan.Group.Source, shape.Turn);
        var group = piece.Group("face frame", GroupKind.FaceFrame, front, plan.Group.Source);
        var own = plan with { Envelope = outside };
        // The bevelled stiles are wider behind, by the thickness at 45 degrees.
        var wide = face with
        {
            Stile = (face.Stile + deep).As("stile with its bevel"),
        };
        var stiles = new FrameMembers(piece, own, wide, group);
        var left = stiles.Stile("left stile", outside.Min.X - deep.Length, baseZ, height);
        var right = stiles.Stile("right stile", outside.Max.X - face.Stile.Length, baseZ, height);
        EndMitre.Cut(left, Direction.Left, Direction.Back, deep.Length);
        EndMitre.Cut(right, Direction.Right, Direction.Back, deep.Length);
        var between = (width - face.Stile - face.Stile).As("width between stiles");
        var clear = (height - face.Rail - face.Rail).As("height between rails");
        if (Length.Min(between.Length, clear.Length) <= Length.Zero)
            throw new CannotBuildException(
                new InputError(
                    "The frame of the diagonal front leaves no opening.",
                    diagonal.Place,
                    "narrower stiles and rails, or a larger corner"
                )
            );
        var members = new FrameMembers(piece, own, face, group);
        var bottom = members.Rail("bottom rail", left, right, between, baseZ);
        var top = members.Rail("top rail", left, right, between, outside.Max.Z - face.Rail.Length);
        var (first, second) = diagonal.WallAtRight ? (box.Near, box.Far) : (box.Far, box.Near);
        piece.Join(JointKind.Butt, first, left, Direction.Back);
        piece.Join(JointKind.Butt, second, right, Direction.Back);
        piece.Join(JointKind.Butt, box.Bottom, bottom, Direction.Back);
        piece.Join(JointKind.Butt, box.Top, top, Direction.Back);
        Fill(front, (left, right, bottom, top), (between, clear), outside, measured);
    }

    private void Fill(
        GroupDraft front,
        (PartDraft Left, PartDraft Right, PartDraft Bottom, PartDraft Top) frame,
        (Figure Width, Figure Height) clear,
        Extent outside,
        AsMeasured measured
    )
    {
        var region = plan.Front is null ? null : RegionWord.Read(plan.Front, piece);
        if (region is { IsLeaf: false } or { Filling: Filling.Drawer })
            throw new CannotBuildException(
                new InputError(
                    "A diagonal front is one opening, open or with doors.",
                    region.Place,
                    "front: { doors: framed }"
                )
            );
        var name = front.Full("opening");
        var found = measured.Opening(name, clear.Width, clear.Height);
        var (width, height) = (found?.Width ?? clear.Width, found?.Height ?? clear.Height);
        var corner = new Point(frame.Left.Reckoned.Max.X, outside.Min.Y, frame.Bottom.Reckoned.Max.Z);
        // Straight in, the opening is as deep as to the middle between the walls.
        var inside = (shape.FrontWidth / 2).As("inside depth");
        var opening = new Opening(
            piece.Unique($"{front.Id}/opening"),
            name,
            new(corner, corner + new Point(width.Length, outside.Depth + inside.Length, height.Length)),
            new OpeningBounds([frame.Left.Id], [frame.Right.Id], [frame.Bottom.Id], [frame.Top.Id]),
            found?.Sides,
            region?.Place ?? diagonal.Place
        );
        piece.Add(opening);
        if (region is not { Filling: Filling.Doors, Said: { } said })
            return;
        var reach = piece.Shop.Length(GapRules.FrameOverlay, "overlay");
        var site = new FrontSite
        {
            Carcase = front,
            Prefix = "",
            Opening = opening,
            Width = width,
            Height = height,
            UsualHang = Hang.Inset,
            Reach = new SideFigures(reach, reach, reach, reach),
            OpenSides = [],
            FaceY = outside.Min.Y,
            InsideFrontY = outside.Max.Y,
            InsideBackY = outside.Max.Y + inside.Length,
            InsideDepth = inside,
            InsideLeft = box.Near,
            InsideRight = box.Far,
            HingeLeft = frame.Left,
            HingeRight = frame.Right,
            Material = plan.Fronts,
        };
        DoorsWord.Build(piece, site, said, piece.Scope);
    }
}
