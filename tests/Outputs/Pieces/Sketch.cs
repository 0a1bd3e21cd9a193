using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Solids;

namespace Dryfit.Outputs.Tests.Pieces;

/// <summary>A piece put together by hand from plain boards in millimetres, for tests of what is drawn and listed.</summary>
internal sealed class Sketch
{
    public static readonly SourcePlace Somewhere = new("test.dryfit.yaml", 1, 1, 1);

    public static readonly Material Maple = Stuff("body", MaterialKind.Solid, "maple", 18);
    public static readonly Material Glass = Stuff("panes", MaterialKind.Glass, "float glass", 3);

    private readonly List<Part> _parts = [];
    private readonly List<Group> _groups;
    private readonly List<Front> _fronts = [];
    private readonly List<Opening> _openings = [];
    private readonly List<Joint> _joints = [];

    public Sketch(string name = "Test piece")
    {
        Name = name;
        _groups = [new("piece", name, GroupKind.Piece, null, Somewhere)];
    }

    public string Name { get; }

    public LengthFormat Format { get; set; } = LengthFormat.Millimetres;

    public Grid Grid { get; set; } = new(640);

    public List<Hardware> Hardware { get; } = [];

    public Sketch Group(string id, GroupKind kind, string? name = null, string parent = "piece")
    {
        _groups.Add(new(id, name ?? id, kind, parent, Somewhere));
        return this;
    }

    /// <summary>A board that fills a box of the piece, its length to the right and its show face to the front.</summary>
    public Sketch Board(
        string id,
        Role role,
        (Rational X, Rational Y, Rational Z) min,
        (Rational X, Rational Y, Rational Z) max,
        Material? material = null,
        string? name = null,
        string group = "piece"
    )
    {
        var size = (X: max.X - min.X, Y: max.Y - min.Y, Z: max.Z - min.Z);
        var solid = BoxSolid.Of(Units(size.X), Units(size.Z), Units(size.Y));
        var frame = new Frame(new(Units(min.X), Units(max.Y), Units(min.Z)), new(1, 0, 0), new(0, 0, 1), new(0, -1, 0));
        _parts.Add(
            new()
            {
                Id = id,
                Name = name ?? id.Replace('/', ' '),
                Role = role,
                Group = group,
                Material = material ?? Maple,
                Length = Size("length", size.X),
                Width = Size("width", size.Z),
                Thickness = Size("thickness", size.Y),
                Cuts = [],
                Place = new(new(Mm(min.X), Mm(max.Y), Mm(min.Z)), Lie.Of(Direction.Right, Direction.Front)),
                Source = Somewhere,
                Solid = solid,
                Placed = new(solid, frame),
            }
        );
        return this;
    }

    public Sketch Change(string id, Func<Part, Part> change)
    {
        var index = _parts.FindIndex(part => string.Equals(part.Id, id, StringComparison.Ordinal));
        _parts[index] = change(_parts[index]);
        return this;
    }

    public Sketch Opening(string id, (Rational X, Rational Y, Rational Z) min, (Rational X, Rational Y, Rational Z) max)
    {
        var clear = new Extent(new(Mm(min.X), Mm(min.Y), Mm(min.Z)), new(Mm(max.X), Mm(max.Y), Mm(max.Z)));
        _openings.Add(new(id, id, clear, new([], [], [], []), null, Somewhere));
        return this;
    }

    public Sketch Front(
        string group,
        string opening,
        FrontMotion motion,
        IReadOnlyList<string> face,
        Hang hang = Hang.Inset,
        params FrontNeighbour[] neighbours
    )
    {
        var gap = Mm(2);
        _fronts.Add(new(group, face, opening, hang, motion, default, new(gap, gap, gap, gap), neighbours, null));
        return this;
    }

    public Sketch Joint(JointKind kind, string receives, string enters, Direction into = Direction.Left)
    {
        var id = $"joint-{_joints.Count + 1}";
        _joints.Add(new(id, kind, receives, enters, into, default, default, Glued: true, Somewhere));
        return this;
    }

    public Piece Build() =>
        new()
        {
            Name = Name,
            Format = Format,
            Grid = Grid,
            Groups = _groups,
            Parts = _parts,
            Joints = _joints,
            Hardware = Hardware,
            Openings = _openings,
            Fronts = _fronts,
            Finishes = [],
            Accepted = [],
        };

    public static Length Mm(Rational millimetres) => Length.FromMillimetres(millimetres);

    public static Figure Size(string name, Rational millimetres) =>
        Figure.Given(name, Mm(millimetres), new TradeOrigin("a test"));

    private static Material Stuff(string name, MaterialKind kind, string stuff, int thickness) =>
        new(
            name,
            kind,
            stuff,
            Size("thickness", thickness),
            null,
            null,
            kind == MaterialKind.Solid,
            700,
            "a test",
            Somewhere
        );

    private double Units(Rational millimetres) => Grid.ToUnits(Mm(millimetres));
}
