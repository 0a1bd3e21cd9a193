using System.Text;
using Dryfit.Casework.Building;
using Dryfit.Casework.Drawers;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>
/// A bare opening to hang fronts in: two uprights, with a face frame before them or without. It stands at the origin:
/// the front face at Y 0, the clear opening's lower left corner at X 0 and Z 0.
/// </summary>
internal sealed class FrontBench
{
    private static readonly SourcePlace Line = new("test.dryfit.yaml", 7, 9, 4);

    private readonly Dictionary<string, Material> _materials = new(StringComparer.Ordinal);
    private readonly LengthUnit _unit;
    private readonly bool _faceFrame;

    /// <param name="shop">A shop file's text; house rules it does not name keep their defaults.</param>
    /// <param name="asCut">The maker's own numbers, as the recipe writes them.</param>
    public FrontBench(
        LengthUnit unit,
        string width,
        string height,
        bool faceFrame = false,
        Hang hang = Hang.Inset,
        string reach = "1/2\"",
        string depth = "18\"",
        string shop = "shop: test",
        string asCut = "",
        IReadOnlyList<Direction>? openSides = null,
        params IReadOnlyList<Material> materials
    )
    {
        (_unit, _faceFrame) = (unit, faceFrame);
        Add("body", MaterialKind.Solid, "maple", unit == LengthUnit.Inch ? "3/4\"" : "19 mm", 700);
        foreach (var material in materials)
            _materials[material.Name] = material;
        Scope = new Scope(unit);
        Piece = new PieceBuilder(Scope, new Shop(Yaml(shop), unit), new Building.Materials(_materials), Own(asCut));
        Site = MakeSite(
            Given("opening width", width),
            Given("opening height", height),
            hang,
            reach,
            depth,
            openSides ?? []
        );
    }

    public Scope Scope { get; }

    public PieceBuilder Piece { get; }

    public FrontSite Site { get; }

    public static Material Stuff(string name, MaterialKind kind, string thickness, double density = 700) =>
        new(
            name,
            kind,
            name,
            Figure.Given(name, Exact(thickness), new TradeOrigin("test")),
            Called: null,
            StockWidth: null,
            HasGrain: kind == MaterialKind.Solid,
            density,
            "test",
            Line
        );

    /// <summary>A length as a maker writes it, with its unit; a minus before it makes it negative.</summary>
    public static Length Exact(string text) =>
        text[0] == '-' ? -Exact(text[1..]) : LengthText.Parse(text, LengthUnit.Inch).Length;

    public IReadOnlyList<Front> Doors(string said)
    {
        var value = Value("doors", said, DoorsWord.Shape);
        return DoorsWord.Build(Piece, Site, value, Scope);
    }

    public Front Drawer(string? said = null) =>
        DrawerWord.Build(Piece, Site, said is null ? null : Value("drawer", said, DrawerWord.Shape), Scope, "drawer 1");

    /// <summary>The one part of that name.</summary>
    public PartDraft this[string name] => Piece.Parts.Single(p => p.Name == name);

    public IEnumerable<PartDraft> PartsOf(Front front) => Piece.Parts.Where(p => p.Group.Id == front.Group);

    /// <summary>The smallest box around the parts that keep a front's gaps.</summary>
    public Extent Around(Front front) =>
        Piece
            .Parts.Where(p => front.Face.Contains(p.Id))
            .Select(p => p.Extent)
            .Aggregate(
                (a, b) =>
                    new Extent(
                        new(Length.Min(a.Min.X, b.Min.X), Length.Min(a.Min.Y, b.Min.Y), Length.Min(a.Min.Z, b.Min.Z)),
                        new(Length.Max(a.Max.X, b.Max.X), Length.Max(a.Max.Y, b.Max.Y), Length.Max(a.Max.Z, b.Max.Z))
                    )
            );

    public static Mapping Yaml(string text)
    {
        var read = RecipeReader.Read("test.dryfit.yaml", Encoding.UTF8.GetBytes(text));
        return read.Ok ? read.Value! : throw new ArgumentException(string.Join('\n', read.Errors), nameof(text));
    }

    private static Node Value(string word, string said, Shape shape)
    {
        var value = Yaml($"{word}: {said}\n")[word]!;
        var errors = ShapeCheck.Check(value, shape);
        return errors.Count == 0 ? value : throw new ArgumentException(string.Join('\n', errors), nameof(said));
    }

    private void Add(string name, MaterialKind kind, string stuff, string thickness, double density) =>
        _materials[name] = Stuff(name, kind, thickness, density) with { Stuff = stuff };

    private AsCut Own(string text)
    {
        var own = new AsCut();
        if (text.Length > 0)
        {
            foreach (var entry in Yaml(text).Entries)
                own.Add(entry.Key, entry.KeyPlace, new Fields((Mapping)entry.Value, Scope));
        }
        return own;
    }

    private static Figure Given(string name, string text) => Figure.Given(name, Exact(text), new TradeOrigin("test"));

    private FrontSite MakeSite(
        Figure width,
        Figure height,
        Hang hang,
        string reach,
        string depth,
        IReadOnlyList<Direction> openSides
    )
    {
        var body = _materials["body"];
        var thickness = body.Thickness.Length;
        var root = Piece.Group("test piece", GroupKind.Piece, null, Line);
        var carcase = Piece.Group("upper", GroupKind.Carcase, root, Line);
        var inside = Given("inside depth", depth);
        var frame = _faceFrame ? thickness : Length.Zero;
        // In a face frame the stiles stand in by a quarter of an inch, as they do where their outside is flush.
        var lap = _faceFrame ? Length.FromInches(0, 1, 4) : Length.Zero;
        var left = Upright("left side", Role.Side, -lap - thickness, frame, inside);
        var right = Upright("right side", Role.Side, width.Length + lap, frame, inside);
        var (hingeLeft, hingeRight) = _faceFrame
            ? (Stile("left frame stile", -Length.FromInches(2)), Stile("right frame stile", width.Length))
            : (left, right);
        var reached = Given("overlay", reach);
        return new FrontSite
        {
            Carcase = carcase,
            Prefix = "",
            Opening = new Opening(
                "opening-1",
                "upper opening",
                new Extent(default, new(width.Length, frame + inside.Length, height.Length)),
                new OpeningBounds([hingeLeft.Id], [hingeRight.Id], [], []),
                AsMeasured: null,
                Line
            ),
            Width = width,
            Height = height,
            UsualHang = hang,
            Reach = new SideFigures(reached, reached, reached, reached),
            OpenSides = openSides,
            FaceY = Length.Zero,
            InsideFrontY = frame,
            InsideBackY = frame + inside.Length,
            InsideDepth = inside,
            InsideLeft = left,
            InsideRight = right,
            HingeLeft = hingeLeft,
            HingeRight = hingeRight,
            Material = body,
        };

        PartDraft Upright(string name, Role role, Length x, Length y, Figure deep) =>
            Piece.Board(
                carcase,
                name,
                role,
                body,
                Lie.Of(Direction.Up, x.Sign < 0 ? Direction.Left : Direction.Right),
                height,
                deep,
                new(x, y, Length.Zero)
            );

        PartDraft Stile(string name, Length x) =>
            Piece.Board(
                carcase,
                name,
                Role.FrameStile,
                body,
                Lie.Of(Direction.Up, Direction.Front),
                height,
                Given("stile", "2\""),
                new(x, Length.Zero, Length.Zero)
            );
    }
}
