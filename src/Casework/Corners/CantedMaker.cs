using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Casework.Shelving;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// Builds the canted end of a run: one side, a back planted on its rear edge, and boards jointed into the side and screwed to
/// the back, each with its free front corner sawn off; where it is closed, a panel along the cant and a side behind it.
/// </summary>
internal sealed class CantedMaker(PieceBuilder piece, CarcasePlan plan, CantedPlan canted)
{
    private readonly Figure _thickness = plan.Body.Thickness;
    private readonly Figure _dado = piece.Shop.Length(JointRules.DadoDepth, "dado depth");

    private readonly CantedShape? _closed = canted.IsClosed
        ? new CantedShape(plan.Envelope, canted, plan.Body.Thickness)
        : null;

    private Direction Fixed => canted.AtRight ? Direction.Left : Direction.Right;

    private bool IsLetIn => plan.Joint is PanelJoint.Dado or PanelJoint.ShoulderedDado;

    public void Make()
    {
        var outside = plan.Envelope;
        var material = plan.Back!.Material;
        var deep = (plan.Depth - material.Thickness).As("depth before the back");
        var side = piece.Board(
            plan.Group,
            canted.AtRight ? "left side" : "right side",
            Role.Side,
            plan.Body,
            Lie.Of(Direction.Up, Fixed),
            plan.Height.As("side length"),
            deep,
            canted.AtRight ? outside.Min : outside.Min.With(Axis.X, outside.Max.X - _thickness.Length)
        );
        var back = piece.Board(
            plan.Group,
            "back",
            Role.Back,
            material,
            Lie.Of(Direction.Up, Direction.Front),
            plan.Height.As("back height"),
            plan.Width.As("back width"),
            outside.Min.With(Axis.Y, outside.Max.Y - material.Thickness.Length)
        );
        Screws.Between(piece, side, back, Direction.Front, 4);
        var closing = _closed?.Make(piece, plan, deep);
        if (closing is { } ends)
            Screws.Between(piece, ends.End, back, Direction.Front, 4);
        Lay("bottom", Role.Bottom, outside.Min.Z);
        Lay("top panel", Role.Top, outside.Max.Z - _thickness.Length);
        var n = 0;
        foreach (var height in Heights())
            Lay($"fixed shelf {++n}", Role.Shelf, outside.Min.Z + _thickness.Length + height.Length);

        void Lay(string name, Role role, Length z)
        {
            var flat = Flat(name, role, deep, z, side, back);
            if (closing is not { } ends)
                return;
            PanelJoints.Tie(piece, plan.Joint, ends.End, flat, Fixed.Opposite(), Axis.Y);
            Screws.Between(piece, flat, ends.Panel, Direction.Back, 3, glued: true);
        }
    }

    private IReadOnlyList<Figure> Heights()
    {
        if (plan.Shelves is not { } shelves)
            return [];
        var inside = (plan.Height - _thickness - _thickness).As("inside height");
        var said = shelves.Fixed;
        var heights = said.At.Count > 0 ? said.At : Spaces.Evenly(inside, _thickness, said.Count);
        var floor = Length.Zero;
        foreach (var height in heights)
        {
            if (height.Length <= floor || height.Length + _thickness.Length >= inside.Length)
                throw new CannotBuildException(
                    new InputError(
                        "There is no room for the shelves one above the other.",
                        shelves.Place,
                        "fewer shelves, or heights that rise from the floor"
                    )
                );
            floor = height.Length + _thickness.Length;
        }
        return heights.Count == said.Count
            ? heights
            : throw new CannotBuildException(
                new InputError(
                    $"There are {said.Count} shelves and {heights.Count} heights for them.",
                    shelves.Place,
                    "a height for each shelf, or none"
                )
            );
    }

    private PartDraft Flat(string name, Role role, Figure deep, Length z, PartDraft side, PartDraft back)
    {
        var outside = plan.Envelope;
        var length = plan.Width - _thickness;
        if (IsLetIn)
            length += _dado;
        // Where it is closed the board ends at the short side, or goes into it.
        var inside = Length.Zero;
        if (_closed is not null)
        {
            length -= _thickness;
            if (IsLetIn)
                length += _dado;
            inside = IsLetIn ? _thickness.Length - _dado.Length : _thickness.Length;
        }
        length = length.As($"{name} length");
        var (across, cutDeep) = _closed?.CutOff(inside) ?? (canted.Across.Length, canted.Deep.Length);
        var x = canted.AtRight ? outside.Max.X - inside - length.Length : outside.Min.X + inside;
        var flat = piece.Board(
            plan.Group,
            name,
            role,
            plan.Body,
            Lie.Of(Direction.Right, Direction.Up),
            length,
            deep,
            new(x, outside.Min.Y, z)
        );
        Swept.Cut(
            flat,
            CutKind.Mitre,
            Swept.Corner(flat.Extent, Fixed.Opposite(), Direction.Front),
            Fixed,
            Direction.Back,
            [(Length.Zero, Length.Zero), (across, Length.Zero), (Length.Zero, cutDeep)],
            called: "corner cut off"
        );
        PanelJoints.Tie(piece, plan.Joint, side, flat, Fixed, Axis.Y);
        Screws.Between(piece, flat, back, Direction.Front, 3);
        return flat;
    }
}
