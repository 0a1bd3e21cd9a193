using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Tests.Pieces;
using Dryfit.Parameters;
using Dryfit.Solids;

namespace Dryfit.Outputs.Tests;

/// <summary>Boards with cuts in any position, put together by hand; and a small cupboard made of them.</summary>
internal sealed class Bench(LengthFormat format)
{
    public static readonly SourcePlace Somewhere = new("sample.dryfit.yaml", 1, 1, 1);

    private readonly List<Group> _groups = [new("cupboard", "cupboard", GroupKind.Piece, null, Somewhere)];
    private readonly List<Part> _parts = [];

    public List<Joint> Joints { get; } = [];

    public List<Front> Fronts { get; } = [];

    public Grid Grid { get; init; } = new(640);

    public IReadOnlyList<Part> Parts => _parts;

    public static Length Mm(Rational millimetres) => Length.FromMillimetres(millimetres);

    public static Point At(Rational x, Rational y, Rational z) => new(Mm(x), Mm(y), Mm(z));

    public static Extent Box(Rational x0, Rational y0, Rational z0, Rational x1, Rational y1, Rational z1) =>
        new(At(x0, y0, z0), At(x1, y1, z1));

    public static Figure Given(Length length) => Figure.Given("size", length, new TradeOrigin("a test"));

    public static Material Stuff(string name, MaterialKind kind, string stuff, bool hasGrain, double density = 700) =>
        new(name, kind, stuff, Given(Mm(18)), null, null, hasGrain, density, "a test", Somewhere);

    public static SquareCut Cut(CutKind kind, Extent extent) => new($"{kind}", kind, null, extent);

    public Bench Group(string id, GroupKind kind, string parent = "cupboard")
    {
        _groups.Add(new(id, id.Replace('/', ' '), kind, parent, Somewhere));
        return this;
    }

    /// <summary>A board that fills a box of the piece, lying as told, with cuts in its own coordinates.</summary>
    public Part Board(string id, Role role, Material material, Extent inPiece, Lie lie, params PartCut[] cuts)
    {
        var sized = new Placement(default, lie).ToBoard(inPiece);
        var place = new Placement(new Placement(default, lie).ToPiece(sized.Min), lie);
        var size = new Point(sized.Width, sized.Depth, sized.Height);
        var solid = SolidOf(Grid.ToUnits(size), [.. cuts.Select(SolidCut)]);
        var part = new Part
        {
            Id = id,
            Name = id.Replace('/', ' ').Replace('-', ' '),
            Role = role,
            Group = id.Contains('/', StringComparison.Ordinal) ? id[..id.LastIndexOf('/')] : "cupboard",
            Material = material,
            Length = Given(size.X),
            Width = Given(size.Y),
            Thickness = Given(size.Z),
            Cuts = cuts,
            Place = place,
            Source = Somewhere,
            Solid = solid,
            Placed = new(solid, new(Grid.ToUnits(place.Origin), Unit(lie.Along), Unit(lie.Across), Unit(lie.Shows))),
        };
        _parts.Add(part);
        return part;
    }

    public void Replace(Part part, Part by) => _parts[_parts.IndexOf(part)] = by;

    public Piece Build() =>
        new()
        {
            Name = "Sample cupboard",
            Format = format,
            Grid = Grid,
            Groups = _groups,
            Parts = _parts,
            Joints = Joints,
            Hardware = [],
            Openings = [],
            Fronts = Fronts,
            Finishes = [],
            Accepted = [],
        };

    private static Solid SolidOf(Vec3 size, Cut[] cuts) =>
        cuts.Length == 0 ? BoxSolid.Of(size.X, size.Y, size.Z) : SolidBuilder.Build(size, cuts);

    private Cut SolidCut(PartCut cut)
    {
        switch (cut)
        {
            case SquareCut square:
                return new BoxCut(Grid.ToUnits(square.Extent.Min), Grid.ToUnits(square.Extent.Max));
            case RoundCut round:
                var into = Unit(round.Into);
                var side = Unit(Directions.Along((Axis)(((int)round.Into.Axis() + 1) % 3), 1));
                return new BoreCut(
                    new(Grid.ToUnits(round.From), side, Vec3.Cross(into, side), into),
                    Grid.ToUnits(round.Diameter) / 2,
                    Grid.ToUnits(round.Depth),
                    24
                );
            default:
                throw new NotSupportedException(cut.ToString());
        }
    }

    private static Vec3 Unit(Direction direction)
    {
        double sign = direction.Sign();
        return direction.Axis() switch
        {
            Axis.X => new(sign, 0, 0),
            Axis.Y => new(0, sign, 0),
            _ => new(0, 0, sign),
        };
    }
}

internal static class SamplePieces
{
    public static readonly Material Maple = Bench.Stuff("body", MaterialKind.Solid, "maple", hasGrain: true);
    public static readonly Material Board = Bench.Stuff("board", MaterialKind.Sheet, "MDF", hasGrain: false);
    public static readonly Material Panes = Bench.Stuff("panes", MaterialKind.Glass, "float glass", false, 2500);

    /// <summary>
    /// 600 wide, 300 deep, 700 high: sides with a dado for the bottom and shelf pin holes, a bottom with tongues let in,
    /// a glazed door that turns on its left edge, and a strip of edging half a millimetre thick.
    /// </summary>
    public static Bench Cupboard(LengthFormat? format = null)
    {
        var bench = new Bench(format ?? LengthFormat.Millimetres)
            .Group("case", GroupKind.Carcase)
            .Group("case/door", GroupKind.Door, "case")
            .Group("spare", GroupKind.Carcase);
        var upOutward = (Direction outward) => Lie.Of(Direction.Up, outward);
        // In the boards of both sides x is the height and the dado lies on the reverse face; y runs to the back in the left
        // one and to the front in the right one. The rows of holes are 37 from the front and 73 from the back.
        bench.Board(
            "case/left-side",
            Role.Side,
            Maple,
            Bench.Box(0, 0, 0, 18, 300, 700),
            upOutward(Direction.Left),
            [Bench.Cut(CutKind.Dado, Bench.Box(40, 0, 0, 52, 300, 6)), .. PinHoles(37, 227)]
        );
        bench.Board(
            "case/right-side",
            Role.Side,
            Maple,
            Bench.Box(582, 0, 0, 600, 300, 700),
            upOutward(Direction.Right),
            [Bench.Cut(CutKind.Dado, Bench.Box(40, 0, 0, 52, 300, 6)), .. PinHoles(73, 263)]
        );
        bench.Board(
            "case/bottom",
            Role.Bottom,
            Maple,
            Bench.Box(12, 0, 40, 588, 300, 58),
            Lie.Of(Direction.Right, Direction.Up),
            Bench.Cut(CutKind.Shoulder, Bench.Box(0, 0, 12, 6, 300, 18)),
            Bench.Cut(CutKind.Shoulder, Bench.Box(570, 0, 12, 576, 300, 18))
        );
        foreach (var (id, x) in (ReadOnlySpan<(string, int)>)[("left", 20), ("right", 528)])
        {
            bench.Board(
                $"case/door/{id}-stile",
                Role.DoorStile,
                Maple,
                Bench.Box(x, -18, 60, x + 52, 0, 698),
                Lie.Of(Direction.Up, Direction.Front)
            );
        }

        bench.Board(
            "case/door/glass",
            Role.Glass,
            Panes,
            Bench.Box(72, -12, 60, 528, -9, 698),
            Lie.Of(Direction.Up, Direction.Front)
        );
        bench.Board(
            "case/edging",
            Role.Edging,
            Board,
            Bench.Box(12, new Rational(-1, 2), 40, 588, 0, 58),
            Lie.Of(Direction.Right, Direction.Front)
        );
        bench.Fronts.Add(
            new(
                "case/door",
                ["case/door/left-stile", "case/door/right-stile"],
                "case/opening",
                Hang.Overlay,
                FrontMotion.TurnsOnLeftEdge,
                Bench.At(20, -18, 0),
                new(null, null, null, null),
                [],
                null
            )
        );
        return bench;
    }

    private static IEnumerable<PartCut> PinHoles(params int[] across) =>
        from x in (int[])[300, 332, 364]
        from y in across
        select new RoundCut(
            $"pin-{x}-{y}",
            CutKind.ShelfPinHole,
            null,
            Bench.At(x, y, 0),
            Direction.Up,
            Bench.Mm(5),
            Bench.Mm(12)
        );
}
