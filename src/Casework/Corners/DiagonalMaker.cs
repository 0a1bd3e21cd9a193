using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// Builds a diagonal corner carcase: an end beside the run, an end before the return, two backs along the walls, five-sided
/// panels between, and the front across. The front edges of both ends are sawn at 45 degrees and lie flat on the frame.
/// </summary>
internal sealed class DiagonalMaker(PieceBuilder piece, CarcasePlan plan, DiagonalPlan diagonal)
{
    private readonly DiagonalShape _shape = new(plan, diagonal);
    private readonly Figure _thickness = plan.Body.Thickness;
    private readonly Figure _dado = piece.Shop.Length(JointRules.DadoDepth, "dado depth");

    public void Make(AsMeasured measured)
    {
        var face = plan.Face!;
        var lift = plan.Stand.Lift;
        var baseZ = plan.Envelope.Min.Z + (lift?.Length ?? Length.Zero);
        var height = Less(lift is null ? plan.Height : plan.Height - lift, plan.Top?.Material.Thickness)
            .As("side length");
        var topZ = baseZ + height.Length;
        var back = plan.Back?.Material.Thickness;
        // Behind the frame: where the line stands on either wall.
        var line = _shape.Cut + DiagonalShape.Across(face.Material.Thickness).As("frame across the corner");

        var near = NearEnd(line, back, height, baseZ);
        var far = FarEnd(line, back, height, baseZ);
        var insideHeight = (height - face.Rail - _thickness).As("inside height");
        var bottom = Flat("bottom", Role.Bottom, line, back, baseZ + face.Rail.Length - _thickness.Length, LetIn);
        var top = Flat("top panel", Role.Top, line, back, topZ - _thickness.Length, LetIn);
        foreach (var flat in (PartDraft[])[bottom, top])
            Tie(near, far, flat);
        var backs = plan.Back is null ? [] : Backs(plan.Back.Material, height, baseZ, near, far, bottom, top);
        var box = new DiagonalBox(near, far, bottom, top, line, back, insideHeight);
        if (plan.Shelves is not null)
            new DiagonalShelves(piece, plan, _shape, box).Make(plan.Shelves, this);
        if (plan.Top is { } board)
            DiagonalTop.Make(piece, plan, diagonal, _shape, board, box, topZ);
        new DiagonalFront(piece, plan, diagonal, _shape, box).Make(height, baseZ, measured);
        if (plan.Head is { } head)
            new DiagonalHead(piece, plan, diagonal, _shape).Make(head, topZ);
        if (plan.Stand is PlinthPlan plinth)
        {
            var under = new DiagonalPlinth(piece, plan, _shape).Make(plinth);
            Resting.On(piece, under, [near, far, .. backs], JointKind.Screwed);
        }
    }

    public Length LetIn => plan.Joint == PanelJoint.Dado ? _dado.Length : Length.Zero;

    private PartDraft NearEnd(Figure line, Figure? back, Figure height, Length baseZ)
    {
        var width = (Less(plan.Depth, back) - line + _thickness).As("side width");
        var from = line.Length - _thickness.Length;
        var end = Board(
            diagonal.WallAtRight ? "left side" : "right side",
            Role.Side,
            Lie.Of(Direction.Up, _shape.Near),
            height,
            width,
            _shape.Box((Length.Zero, _thickness.Length), (from, from + width.Length), (baseZ, baseZ + height.Length))
        );
        EndMitre.Cut(end, Direction.Front, _shape.Far, _thickness.Length);
        return end;
    }

    private PartDraft FarEnd(Figure line, Figure? back, Figure height, Length baseZ)
    {
        var width = (Less(plan.Width, back) - line + _thickness).As("side width");
        var from = line.Length - _thickness.Length;
        var end = Board(
            diagonal.WallAtRight ? "right side" : "left side",
            Role.Side,
            Lie.Of(Direction.Up, Direction.Front),
            height,
            width,
            _shape.Box((from, from + width.Length), (Length.Zero, _thickness.Length), (baseZ, baseZ + height.Length))
        );
        EndMitre.Cut(end, _shape.Near, Direction.Back, _thickness.Length);
        return end;
    }

    /// <summary>A five-sided panel between the ends and the backs.</summary>
    /// <param name="letIn">How far it goes into both ends.</param>
    public PartDraft Flat(string name, Role role, Figure line, Figure? back, Length z, Length letIn)
    {
        var isLetIn = letIn > Length.Zero;
        var length = (isLetIn ? Less(plan.Width, back) - _thickness + _dado : Less(plan.Width, back) - _thickness).As(
            $"{name} length"
        );
        var width = (isLetIn ? Less(plan.Depth, back) - _thickness + _dado : Less(plan.Depth, back) - _thickness).As(
            $"{name} width"
        );
        var start = _thickness.Length - letIn;
        var flat = Board(
            name,
            role,
            Lie.Of(Direction.Right, Direction.Up),
            length,
            width,
            _shape.Box((start, start + length.Length), (start, start + width.Length), (z, z + _thickness.Length))
        );
        _shape.CutCorner(flat, start, line.Length);
        return flat;
    }

    /// <summary>Ties a panel into both ends.</summary>
    public void Tie(PartDraft near, PartDraft far, PartDraft flat)
    {
        PanelJoints.Tie(piece, plan.Joint, near, flat, _shape.Near, Axis.Y);
        PanelJoints.Tie(piece, plan.Joint, far, flat, Direction.Front, Axis.X);
    }

    /// <summary>Two backs planted on the rear edges; the one along the side wall laps over the other.</summary>
    private List<PartDraft> Backs(
        Material material,
        Figure height,
        Length baseZ,
        PartDraft near,
        PartDraft far,
        PartDraft bottom,
        PartDraft top
    )
    {
        var (w, d, t) = (plan.Width.Length, plan.Depth.Length, material.Thickness.Length);
        var up = (baseZ, baseZ + height.Length);
        var rear = piece.Board(
            plan.Group,
            "back",
            Role.Back,
            material,
            Lie.Of(Direction.Up, Direction.Front),
            height.As("back height"),
            (plan.Width - material.Thickness).As("back width"),
            _shape.Box((Length.Zero, w - t), (d - t, d), up).Min
        );
        var side = piece.Board(
            plan.Group,
            "side back",
            Role.Back,
            material,
            Lie.Of(Direction.Up, _shape.Near),
            height.As("back height"),
            plan.Depth,
            _shape.Box((w - t, w), (Length.Zero, d), up).Min
        );
        foreach (var part in (PartDraft[])[near, bottom, top])
            Screws.Between(piece, part, rear, Direction.Front, 4);
        foreach (var part in (PartDraft[])[far, bottom, top])
            Screws.Between(piece, part, side, _shape.Near, 4);
        piece.Join(JointKind.Butt, side, rear, _shape.Far, glued: false);
        return [rear, side];
    }

    private PartDraft Board(string name, Role role, Lie lie, Figure length, Figure width, Extent box) =>
        piece.Board(plan.Group, name, role, plan.Body, lie, length, width, box.Min);

    private static Figure Less(Figure figure, Figure? by) => by is null ? figure : figure - by;
}

/// <summary>The box of a diagonal corner carcase as built.</summary>
/// <param name="Near">The end beside the run.</param>
/// <param name="Far">The end before the return.</param>
/// <param name="Line">Where the line behind the frame stands on either wall.</param>
/// <param name="Back">Thickness of the backs; null for none.</param>
internal sealed record DiagonalBox(
    PartDraft Near,
    PartDraft Far,
    PartDraft Bottom,
    PartDraft Top,
    Figure Line,
    Figure? Back,
    Figure InsideHeight
);
