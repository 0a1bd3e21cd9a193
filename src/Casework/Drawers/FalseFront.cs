using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>
/// The word <c>false front</c>: what looks like a drawer and stays where it is, before a sink say. It is screwed from
/// behind to a cleat at each end.
/// </summary>
internal static class FalseFront
{
    private const int ScrewsEach = 2;

    private static readonly PhraseShape Said = new(FrontShapes.Hangs);

    private static RecordShape Written { get; } =
        new(
            "false front",
            "A front with no drawer behind it, fixed: before a sink, say. `false front` alone says enough.",
            "false front: { front: cherry, hang: inset }\n",
            () =>
                [
                    FrontShapes.Hang,
                    FrontShapes.Gap,
                    FrontShapes.Overlay,
                    new(
                        "front",
                        new NameShape("material"),
                        "Material of the front.",
                        Default: "the material called `fronts`, else the carcase's own"
                    ),
                    FrontShapes.Edging("the front"),
                ]
        );

    public static Shape Shape { get; } = new EitherShape(new BareShape(), Said, Written);

    public static void Build(PieceBuilder piece, FrontSite site, Node? value, Scope scope)
    {
        var place = value?.Place ?? site.Opening.Source;
        var said = value is Mapping mapping ? new Fields(mapping, scope) : null;
        var materials = new FrontMaterials(piece, said, place);
        var material = materials.Named("front", "fronts") ?? site.Material;
        var fit = new FrontFit(piece, site, said, SpokenWords.Of(value, Said)[0]);
        var group = piece.Group(site.NameOf("false front"), GroupKind.Drawer, site.Carcase, place);
        var (width, height) = (fit.Width().As("front width"), fit.Height.As("front height"));
        NoRoom.Unless(width.Length > Length.Zero && height.Length > Length.Zero, group.Name, site, place);
        var backY = fit.BackY(piece, material.Thickness);
        var face = Edging.Panel(
            piece,
            group,
            "front",
            Role.DrawerFront,
            material,
            Lie.Of(Direction.Right, Direction.Front),
            width,
            height,
            new(fit.Edge(Direction.Left), backY - material.Thickness.Length, fit.Edge(Direction.Down)),
            materials.Edging(material) is { } edging
                ? new Bands(edging, Direction.Left, Direction.Right, Direction.Down, Direction.Up)
                : null,
            place,
            Direction.Back
        );
        foreach (
            var (side, upright, frame) in new[]
            {
                (Direction.Left, site.InsideLeft, site.HingeLeft),
                (Direction.Right, site.InsideRight, site.HingeRight),
            }
        )
            Screws.Between(piece, Cleat(side, upright, frame), face.Panel, Direction.Back, ScrewsEach);
        piece.Add(
            new Front(
                group.Id,
                [.. face.Parts.Select(p => p.Id)],
                site.Opening.Id,
                fit.Hang,
                FrontMotion.Fixed,
                face.Extent.Min,
                fit.Wanted,
                [],
                Drawer: null
            )
        );

        // Beside the opening, from the back of the front inwards; behind a thick inset front in a thin frame on the upright.
        PartDraft Cleat(Direction side, PartDraft upright, PartDraft frame)
        {
            var deep = piece.Shop.Length(DrawerRules.CleatDepth, "cleat depth");
            var thickness = piece.Shop.Length(DrawerRules.CleatThickness, "cleat thickness");
            var wall = upright.Reckoned.Side(side.Opposite());
            var edge = site.Opening.Clear.Side(side);
            var gap = Length.Abs(edge - wall);
            var onFrame = frame != upright && backY < site.InsideFrontY;
            if (!onFrame && gap > Length.Zero)
                thickness = (
                    thickness
                    + Figure.Given(
                        "from the upright to the opening",
                        gap,
                        new TradeOrigin("between parts that stand already")
                    )
                ).As("cleat thickness");
            var start = onFrame ? edge : wall;
            var (clear, stop) = (site.Opening.Clear, Length.FromMillimetres(3));
            var cleat = piece.Board(
                site.Carcase,
                $"{site.NameOf("false front")} {Spoken.Of(side)} cleat",
                Role.Packer,
                site.Material,
                Lie.Of(Direction.Up, side.Opposite()),
                (site.Height - Figure.Given("room at both ends", stop * 2, new TradeOrigin("common practice"))).As(
                    "cleat length"
                ),
                deep,
                new(side == Direction.Left ? start : start - thickness.Length, backY, clear.Min.Z + stop),
                place,
                thickness,
                holds: side
            );
            Screws.Between(piece, onFrame ? frame : upright, cleat, side, ScrewsEach);
            if (onFrame && gap == Length.Zero && cleat.Reckoned.Max.Y > site.InsideFrontY)
                piece.Join(JointKind.Butt, upright, cleat, side, glued: false);
            if (!onFrame && frame != upright && backY == site.InsideFrontY)
                piece.Join(JointKind.Butt, frame, cleat, Direction.Front, glued: false);
            return cleat;
        }
    }
}
