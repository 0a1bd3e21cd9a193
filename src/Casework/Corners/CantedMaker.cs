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
/// Builds the open end of a run: one side, a back planted on its rear edge, and boards jointed into the side and screwed to
/// the back, each with its free front corner sawn off.
/// </summary>
internal sealed class CantedMaker(PieceBuilder piece, CarcasePlan plan, CantedPlan canted)
{
    private readonly Figure _thickness = plan.Body.Thickness;
    private readonly Figure _dado = piece.Shop.Length(JointRules.DadoDepth, "dado depth");

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
        Flat("bottom", Role.Bottom, deep, outside.Min.Z, side, back);
        Flat("top panel", Role.Top, deep, outside.Max.Z - _thickness.Length, side, back);
        var n = 0;
        foreach (var height in Heights())
            Flat($"fixed shelf {++n}", Role.Shelf, deep, outside.Min.Z + _thickness.Length + height.Length, side, back);
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

    private void Flat(string name, Role role, Figure deep, Length z, PartDraft side, PartDraft back)
    {
        var outside = plan.Envelope;
        var length = plan.Width - _thickness;
        if (IsLetIn)
            length += _dado;
        length = length.As($"{name} length");
        var x = canted.AtRight ? outside.Max.X - length.Length : outside.Min.X;
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
            [(Length.Zero, Length.Zero), (canted.Across.Length, Length.Zero), (Length.Zero, canted.Deep.Length)],
            called: "corner cut off"
        );
        PanelJoints.Tie(piece, plan.Joint, side, flat, Fixed, Axis.Y);
        Screws.Between(piece, flat, back, Direction.Front, 3);
    }
}
