using System.Numerics;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Solids;

namespace Dryfit.Inspection.Tests;

/// <summary>
/// Puts small pieces together by hand, in millimetres of the piece, so that what a check must find is known beforehand
/// and owes nothing to the code that builds real pieces.
/// </summary>
internal sealed class Bench
{
    private readonly List<Group> _groups = [];
    private readonly List<Board> _boards = [];
    private readonly List<Joint> _joints = [];
    private readonly List<Hardware> _hardware = [];
    private readonly List<Opening> _openings = [];
    private readonly List<Front> _fronts = [];
    private readonly List<Load> _loads = [];
    private readonly List<Bank> _banks = [];
    private readonly List<RoomThing> _room = [];
    private readonly List<AcceptedFinding> _accepted = [];

    public Bench() => Group("piece", GroupKind.Piece, null);

    public LengthFormat Format { get; set; } = LengthFormat.Millimetres;

    public static Length Mm(decimal mm) =>
        Length.FromMillimetres(new Rational((BigInteger)(mm * 1_000_000), 1_000_000));

    public static Extent Box(decimal x0, decimal y0, decimal z0, decimal x1, decimal y1, decimal z1) =>
        new(new(Mm(x0), Mm(y0), Mm(z0)), new(Mm(x1), Mm(y1), Mm(z1)));

    public void Group(string id, GroupKind kind, string? parent = "piece") =>
        _groups.Add(new(id, id.Replace('-', ' '), kind, parent, Line(_groups.Count + 1)));

    /// <summary>A board that fills a box of the piece, less the boxes cut from it.</summary>
    public Board Add(string id, Role role, string group, Extent extent, params Extent[] cuts)
    {
        var board = new Board(id, role, group, extent, cuts, _groups.Single(g => g.Id == group).Source);
        _boards.Add(board);
        return board;
    }

    public void Add(Load load) => _loads.Add(load);

    public void Add(Bank bank) => _banks.Add(bank);

    /// <summary>Something of the room that fills a box.</summary>
    public void AddRoom(string name, Extent extent, bool isUnderfoot = false)
    {
        var grid = new Grid(640);
        var (low, high) = (grid.ToUnits(extent.Min), grid.ToUnits(extent.Max));
        var solid = SolidBuilder.Build(high - low, []);
        _room.Add(new(name, new(solid, new(low, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1))), isUnderfoot, Line(800)));
    }

    public void Change(string id, Func<Board, Board> change)
    {
        var at = _boards.FindIndex(board => board.Id == id);
        _boards[at] = change(_boards[at]);
    }

    public void Remove(string id) => _boards.RemoveAll(board => board.Id == id);

    public Board this[string id] => _boards.Single(board => board.Id == id);

    public void Join(
        JointKind kind,
        string receives,
        string enters,
        Direction into,
        decimal engagement = 0,
        decimal play = 0,
        EdgeLine? line = null
    ) =>
        _joints.Add(
            new($"joint-{_joints.Count + 1}", kind, receives, enters, into, Mm(engagement), Mm(play), true, Line(500))
            {
                Lines = line is null ? [] : [line],
            }
        );

    public void Unjoin(string enters, string receives) =>
        _joints.RemoveAll(joint => joint.Enters == enters && joint.Receives == receives);

    public void Fit(string kind, params string[] ties) =>
        _hardware.Add(new($"fitting-{_hardware.Count + 1}", kind, ties, default));

    /// <summary>A hinge between a door's part and what it hangs on; gives its id, for the holes it bores.</summary>
    public string Hinge(string door, string post, HingeFit fit)
    {
        var id = $"fitting-{_hardware.Count + 1}";
        _hardware.Add(new(id, "hinge", [door, post], default) { Hinge = fit });
        return id;
    }

    /// <summary>A knob on the front of a part.</summary>
    public void Knob(string part, decimal x, decimal y, decimal z, decimal diameter) =>
        _hardware.Add(
            new($"fitting-{_hardware.Count + 1}", "knob", [part], new(Mm(x), Mm(y), Mm(z)))
            {
                Handle = new(Axis.X, Mm(diameter), Mm(diameter), Mm(25)),
            }
        );

    /// <summary>A slide between a part that moves and one that stays.</summary>
    public void Slide(string moves, string stays, decimal travel) =>
        _hardware.Add(new($"fitting-{_hardware.Count + 1}", "slide", [moves, stays], default) { Travel = Mm(travel) });

    public void Unfit(string kind) => _hardware.RemoveAll(hardware => hardware.Kind == kind);

    public void Add(Opening opening) => _openings.Add(opening);

    public void Add(Front front) => _fronts.Add(front);

    public void Change(Func<Front, Front> change)
    {
        for (var i = 0; i < _fronts.Count; i++)
            _fronts[i] = change(_fronts[i]);
    }

    public void Change(Func<Opening, Opening> change)
    {
        for (var i = 0; i < _openings.Count; i++)
            _openings[i] = change(_openings[i]);
    }

    public void Accept(string kind, string? parts, string reason) => _accepted.Add(new(kind, parts, reason, Line(900)));

    public Report Inspect() => Inspector.Inspect(Build());

    public Piece Build()
    {
        var grid = new Grid(640);
        return new Piece
        {
            Name = "piece",
            Format = Format,
            Grid = grid,
            Groups = _groups,
            Parts = [.. _boards.Select(board => board.ToPart(grid))],
            Joints = _joints,
            Hardware = _hardware,
            Openings = _openings,
            Fronts = _fronts,
            Loads = _loads,
            Banks = _banks,
            Room = _room,
            Finishes = [],
            Accepted = _accepted,
        };
    }

    /// <summary>The same piece seen in a mirror: left is right.</summary>
    public Bench Mirrored()
    {
        var mirrored = new Bench { Format = Format };
        mirrored._groups.Clear();
        mirrored._groups.AddRange(_groups);
        mirrored._boards.AddRange(_boards.Select(b => b.Mirrored()));
        mirrored._joints.AddRange(_joints.Select(j => j with { Into = Mirror.Of(j.Into) }));
        mirrored._hardware.AddRange(_hardware.Select(h => h with { At = h.At with { X = -h.At.X } }));
        mirrored._openings.AddRange(_openings.Select(Mirror.Of));
        mirrored._fronts.AddRange(_fronts.Select(Mirror.Of));
        mirrored._loads.AddRange(_loads);
        mirrored._accepted.AddRange(_accepted);
        return mirrored;
    }

    /// <summary>The same piece elsewhere.</summary>
    public Bench Moved(decimal x, decimal y, decimal z)
    {
        var by = new Point(Mm(x), Mm(y), Mm(z));
        var moved = new Bench { Format = Format };
        moved._groups.Clear();
        moved._groups.AddRange(_groups);
        moved._boards.AddRange(_boards.Select(b => b.Moved(by)));
        moved._joints.AddRange(_joints);
        moved._hardware.AddRange(_hardware.Select(h => h with { At = h.At + by }));
        moved._openings.AddRange(_openings.Select(o => o with { Clear = Shift(o.Clear, by) }));
        moved._fronts.AddRange(
            _fronts.Select(f => f with { Swing = f.Swing is { } swing ? swing with { Pin = swing.Pin + by } : null })
        );
        moved._loads.AddRange(_loads.Select(l => l with { Top = l.Top + by.Z }));
        moved._accepted.AddRange(_accepted);
        return moved;
    }

    internal static Extent Shift(Extent extent, Point by) => new(extent.Min + by, extent.Max + by);

    private static SourcePlace Line(int line) => new("bench.dryfit.yaml", line, 3, 4);
}

/// <summary>A board of a hand-made piece, as boxes of the piece.</summary>
internal sealed record Board(
    string Id,
    Role Role,
    string Group,
    Extent Extent,
    IReadOnlyList<Extent> Cuts,
    SourcePlace Source
)
{
    public Lie Lie { get; init; } = Lie.Of(Direction.Right, Direction.Front);

    public bool IsAsCut { get; init; }

    /// <summary>The same board by the maker's own number, said in a line of its own.</summary>
    public Board AsCut() => this with { IsAsCut = true, Source = Source with { Line = 700 } };

    public bool IsKept { get; init; }

    public MaterialKind Stuff { get; init; } = MaterialKind.Solid;

    /// <summary>How far its stock varies; zero where it is as said.</summary>
    public Length Varies { get; init; }

    /// <summary>Wedges taken off besides, in board coordinates of the grid.</summary>
    public IReadOnlyList<PrismCut> Wedges { get; init; } = [];

    /// <summary>Round holes, bored after all else.</summary>
    public IReadOnlyList<Hole> Holes { get; init; } = [];

    /// <summary>The same board with one more hole.</summary>
    public Board Bored(Hole hole) => this with { Holes = [.. Holes, hole] };

    public Board Upright() => this with { Lie = Lie.Of(Direction.Up, Direction.Front) };

    public Board Moved(Point by) =>
        this with
        {
            Extent = Bench.Shift(Extent, by),
            Cuts = [.. Cuts.Select(cut => Bench.Shift(cut, by))],
            Holes = [.. Holes.Select(hole => hole with { Mouth = hole.Mouth + by })],
        };

    public Board Mirrored() =>
        this with
        {
            Extent = Mirror.Of(Extent),
            Cuts = [.. Cuts.Select(Mirror.Of)],
            Holes =
            [
                .. Holes.Select(hole =>
                    hole with
                    {
                        Mouth = hole.Mouth with { X = -hole.Mouth.X },
                        Into = Mirror.Of(hole.Into),
                    }
                ),
            ],
        };

    public Part ToPart(Grid grid)
    {
        var origin = Extent.Min;
        foreach (var way in (ReadOnlySpan<Direction>)[Lie.Along, Lie.Across, Lie.Shows])
            origin = origin.With(way.Axis(), Extent.Side(way.Opposite()));
        var place = new Placement(origin, Lie);
        var onBoard = Cuts.Select(place.ToBoard).ToList();
        var bored = Holes
            .Select(
                (hole, n) =>
                    new RoundCut(
                        $"bore-{n}",
                        hole.Kind,
                        hole.Joint,
                        place.ToBoard(hole.Mouth),
                        place.ToBoard(hole.Into),
                        hole.Diameter,
                        hole.Depth
                    )
            )
            .ToList();
        var size = new Point(
            Extent.Size(Lie.Along.Axis()),
            Extent.Size(Lie.Across.Axis()),
            Extent.Size(Lie.Shows.Axis())
        );
        var solid = SolidBuilder.Build(
            grid.ToUnits(size),
            [
                .. onBoard.Select(cut => new BoxCut(grid.ToUnits(cut.Min), grid.ToUnits(cut.Max))),
                .. bored.Select(hole => Drill(hole, grid)),
                .. Wedges,
            ]
        );
        return new Part
        {
            Id = Id,
            Name = Id.Replace('-', ' '),
            Role = Role,
            Group = Group,
            Material = Material(),
            Length = Given("length", size.X),
            Width = Given("width", size.Y),
            Thickness = Given("thickness", size.Z),
            Cuts = [.. onBoard.Select((cut, i) => new SquareCut($"cut-{i}", CutKind.Groove, null, cut)), .. bored],
            Place = place,
            IsAsCut = IsAsCut,
            IsKept = IsKept,
            Source = Source,
            Solid = solid,
            Placed = new(solid, new(grid.ToUnits(origin), Unit(Lie.Along), Unit(Lie.Across), Unit(Lie.Shows))),
        };
    }

    private static BoreCut Drill(RoundCut hole, Grid grid)
    {
        var into = Unit(hole.Into);
        var side = Unit(Directions.Along((Axis)(((int)hole.Into.Axis() + 1) % 3), 1));
        return new(
            new(grid.ToUnits(hole.From), side, Vec3.Cross(into, side), into),
            grid.ToUnits(hole.Diameter) / 2,
            grid.ToUnits(hole.Depth),
            24
        );
    }

    private Material Material() =>
        new("stuff", Stuff, "stuff", Given("thickness", Bench.Mm(20)), null, null, true, 700, "from memory", Source)
        {
            Varies = Given("stock varies by", Varies),
        };

    private static Figure Given(string name, Length length) => Figure.Given(name, length, new TradeOrigin("bench"));

    private static Vec3 Unit(Direction way) =>
        way.Axis() switch
        {
            Axis.X => new(way.Sign(), 0, 0),
            Axis.Y => new(0, way.Sign(), 0),
            _ => new(0, 0, way.Sign()),
        };
}

/// <summary>A round hole in a board of a hand-made piece.</summary>
/// <param name="Mouth">The middle of its mouth, in the piece.</param>
/// <param name="Joint">What it is bored for: a joint or a fitting by its id.</param>
internal sealed record Hole(CutKind Kind, Point Mouth, Direction Into, Length Diameter, Length Depth, string? Joint)
{
    public static Hole At(
        CutKind kind,
        decimal x,
        decimal y,
        decimal z,
        Direction into,
        decimal diameter,
        decimal depth,
        string? joint = null
    ) => new(kind, new(Bench.Mm(x), Bench.Mm(y), Bench.Mm(z)), into, Bench.Mm(diameter), Bench.Mm(depth), joint);
}

/// <summary>Left for right.</summary>
internal static class Mirror
{
    public static Direction Of(Direction way) => way.Axis() == Axis.X ? way.Opposite() : way;

    public static Extent Of(Extent extent) =>
        new(extent.Min with { X = -extent.Max.X }, extent.Max with { X = -extent.Min.X });

    public static Opening Of(Opening opening) =>
        opening with
        {
            Clear = Of(opening.Clear),
            Bounds = opening.Bounds with { Left = opening.Bounds.Right, Right = opening.Bounds.Left },
            AsMeasured = opening.AsMeasured is { } found
                ? found with
                {
                    HeightAtLeft = found.HeightAtRight,
                    HeightAtRight = found.HeightAtLeft,
                }
                : null,
        };

    public static Front Of(Front front) =>
        front with
        {
            Motion = front.Motion switch
            {
                FrontMotion.TurnsOnLeftEdge => FrontMotion.TurnsOnRightEdge,
                FrontMotion.TurnsOnRightEdge => FrontMotion.TurnsOnLeftEdge,
                _ => front.Motion,
            },
            Pivot = front.Pivot with { X = -front.Pivot.X },
            Swing = front.Swing is { } swing ? swing with { Pin = swing.Pin with { X = -swing.Pin.X } } : null,
            Wanted = front.Wanted with { Left = front.Wanted.Right, Right = front.Wanted.Left },
            Neighbours = [.. front.Neighbours.Select(n => n with { Side = Of(n.Side) })],
            Drawer = front.Drawer is { } drawer
                ? drawer with
                {
                    RunsBetween = (drawer.RunsBetween.Right, drawer.RunsBetween.Left),
                }
                : null,
        };
}
