using Dryfit.Casework.Joinery;
using Dryfit.Casework.Room;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>
/// Gathers groups, parts, joints and fittings while the words of the recipe are built. It keeps ids unique, lets the
/// maker's own numbers stand, and refuses sizes that cannot be.
/// </summary>
internal sealed class PieceBuilder
{
    /// <summary>More parts than any one-person shop builds in a piece; a recipe that asks for more is a slip.</summary>
    private const int MostParts = 5_000;

    /// <summary>Less than this is no part: a hair has five times as much.</summary>
    private static readonly Length Thinnest = Length.FromMillimetres(new Rational(1, 100));

    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> _names = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<GroupDraft> _groups = [];
    private readonly List<PartDraft> _parts = [];
    private readonly List<Joint> _joints = [];
    private readonly List<Hardware> _hardware = [];
    private readonly List<Opening> _openings = [];
    private readonly List<Front> _fronts = [];
    private readonly List<Load> _loads = [];
    private readonly List<Cover> _covers = [];
    private readonly List<Bank> _banks = [];

    public PieceBuilder(Scope scope, Shop shop, Materials materials, AsCut asCut)
    {
        Scope = scope;
        Shop = shop;
        Materials = materials;
        AsCut = asCut;
        Families = new Families(shop, chosen: null);
    }

    public Scope Scope { get; }

    public Shop Shop { get; }

    public Materials Materials { get; }

    public AsCut AsCut { get; }

    /// <summary>Which hardware is meant where it is asked for.</summary>
    public Families Families { get; init; }

    /// <summary>The spaces between walls that the room has.</summary>
    public IReadOnlyDictionary<string, WallSpace> Spaces { get; init; } =
        new Dictionary<string, WallSpace>(StringComparer.Ordinal);

    public IReadOnlyList<GroupDraft> Groups => _groups;

    public IReadOnlyList<PartDraft> Parts => _parts;

    public IReadOnlyList<Joint> Joints => _joints;

    public IReadOnlyList<Hardware> Hardware => _hardware;

    public IReadOnlyList<Opening> Openings => _openings;

    public IReadOnlyList<Front> Fronts => _fronts;

    public IReadOnlyList<Load> Loads => _loads;
    public IReadOnlyList<Cover> Covers => _covers;

    public IReadOnlyList<Bank> Banks => _banks;

    /// <summary>Opens a group under a parent; its name in the piece is the parent's and its own.</summary>
    /// <param name="turn">How it is turned, within its parent's own turn; null where it stands as its parent does.</param>
    public GroupDraft Group(string name, GroupKind kind, GroupDraft? parent, SourcePlace source, PlanTurn? turn = null)
    {
        var id = parent is null or { Kind: GroupKind.Piece } ? Slug.Of(name) : $"{parent.Id}/{Slug.Of(name)}";
        var full = parent is null ? name : parent.Full(name);
        var group = new GroupDraft(
            Unique(id),
            parent is null ? full : UniqueName(full),
            kind,
            parent,
            source,
            turn ?? parent?.Turn
        );
        _groups.Add(group);
        return group;
    }

    /// <summary>
    /// Adds a board. Where the maker cut it to another size, that size stands, and the part keeps to the sides named
    /// in <paramref name="holds"/> (left, front and bottom where nothing is said).
    /// </summary>
    /// <param name="at">The left, front, bottom corner of the blank as reckoned.</param>
    /// <param name="thickness">Left out: the material's own.</param>
    /// <param name="lean">A turn of the part's own, within that of its group.</param>
    public PartDraft Board(
        GroupDraft group,
        string name,
        Role role,
        Material material,
        Lie lie,
        Figure length,
        Figure width,
        Point at,
        SourcePlace? source = null,
        Figure? thickness = null,
        bool isKept = false,
        PlanTurn? lean = null,
        params ReadOnlySpan<Direction> holds
    )
    {
        var full = UniqueName(group.Full(name));
        var place = source ?? group.Source;
        var reckonedThickness = thickness ?? material.Thickness;
        var own = AsCut.ForPart(full, role);
        var reckoned = ExtentOf(at, lie, length, width, reckonedThickness);
        var (actualLength, actualWidth, actualThickness, _) = SizesAsCut(own, length, width, reckonedThickness);
        RefuseNothing(full, "length", actualLength, place);
        RefuseNothing(full, "width", actualWidth, place);
        RefuseNothing(full, "thickness", actualThickness, place);
        var extent = Hold(ExtentOf(at, lie, actualLength, actualWidth, actualThickness), reckoned, holds);
        var part = new PartDraft
        {
            Id = Unique($"{group.Id}/{Slug.Of(name)}"),
            Name = full,
            Role = role,
            Group = group,
            Material = material,
            Length = actualLength,
            Width = actualWidth,
            Thickness = actualThickness,
            Lean = lean,
            Place = new Placement(OriginOf(extent, lie), lie),
            Reckoned = reckoned,
            Extent = extent,
            IsKept = isKept,
            IsAsCut = own is not null,
            Source = own?.Place ?? place,
        };
        _parts.Add(part);
        if (_parts.Count > MostParts)
            throw new CannotBuildException(
                new InputError($"The recipe asks for more than {MostParts} parts.", place, "a piece for one shop")
            );
        return part;
    }

    /// <summary>
    /// The sizes a part will really have when it is added: its own where the maker cut it to other numbers. For units
    /// that are put together from what was cut.
    /// </summary>
    public CutSizes SizesAsCut(
        GroupDraft group,
        string name,
        Role role,
        Figure length,
        Figure width,
        Figure thickness
    ) => SizesAsCut(AsCut.ForPart(group.Full(name), role), length, width, thickness);

    /// <summary>Ties two parts; the cuts of the joint carry the id it returns.</summary>
    public Joint Join(
        JointKind kind,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Length engagement = default,
        Length play = default,
        bool glued = true
    )
    {
        var carrying = receives.Carrying(enters.Reckoned, into, enters.Name, enters.Source);
        if (carrying is not [var one] || one != receives)
            return carrying.Select(part => Join(kind, part, enters, into, engagement, play, glued)).ToList()[0];
        var joint = new Joint(
            $"joint-{_joints.Count + 1}",
            kind,
            receives.Id,
            enters.Id,
            into,
            engagement,
            play,
            glued,
            enters.Source
        )
        {
            Lines = Meeting.Lines(receives, enters, into),
        };
        _joints.Add(joint);
        return joint;
    }

    /// <summary>The id the next joint will get, for cuts that are made before it.</summary>
    public string NextJointId => $"joint-{_joints.Count + 1}";

    public Hardware Fit(string kind, Point at, int count, params IReadOnlyList<PartDraft> ties)
    {
        var fitting = new Hardware(
            $"fitting-{_hardware.Count + 1}",
            kind,
            [.. ties.Select(t => t.At(at).Id)],
            at,
            count
        );
        _hardware.Add(fitting);
        return fitting;
    }

    /// <summary>Fits hardware of a family, under the words it is asked for by, with what it carries.</summary>
    /// <param name="size">What is said of it besides its name: "16 in"; null for nothing.</param>
    public Hardware Fit(HardwareFamily family, string? size, Point at, int count, params IReadOnlyList<PartDraft> ties)
    {
        var fitting = Fit(size is null ? family.Called : $"{family.Called} {size}", at, count, ties) with
        {
            LoadKg = family.LoadKg,
        };
        _hardware[^1] = fitting;
        return fitting;
    }

    /// <summary>Fits a slide of a family.</summary>
    /// <param name="travel">How far it lets its drawer come out.</param>
    public Hardware FitSlide(
        HardwareFamily family,
        string size,
        Length travel,
        Point at,
        params IReadOnlyList<PartDraft> ties
    )
    {
        var fitting = Fit(family, size, at, 1, ties) with { Travel = travel };
        _hardware[^1] = fitting;
        return fitting;
    }

    /// <summary>Says what is known of the hinge that was fitted last.</summary>
    public void IsHinge(HingeFit hinge) => _hardware[^1] = _hardware[^1] with { Hinge = hinge };

    /// <summary>Fits what holds parts to the wall.</summary>
    public Hardware FitToWall(string kind, Point at, int count, params IReadOnlyList<PartDraft> ties)
    {
        var fitting = Fit(kind, at, count, ties) with { IsInWall = true };
        _hardware[^1] = fitting;
        return fitting;
    }

    /// <summary>Fits what electricity flows through.</summary>
    public Hardware FitElectric(string kind, Point at, int count, params IReadOnlyList<PartDraft> ties)
    {
        var fitting = Fit(kind, at, count, ties) with { IsElectric = true };
        _hardware[^1] = fitting;
        return fitting;
    }

    /// <summary>Fits rods or rails that are bought by the length.</summary>
    /// <param name="bars">What is seen of each.</param>
    public Hardware FitBars(string kind, Point at, IReadOnlyList<Extent> bars, params IReadOnlyList<PartDraft> ties)
    {
        var fitting = Fit(kind, at, bars.Count, ties) with { Bars = bars };
        _hardware[^1] = fitting;
        return fitting;
    }

    /// <summary>Fits a pull or knob.</summary>
    public Hardware FitHandle(HardwareFamily family, Point at, HandleSize size, PartDraft part)
    {
        var fitting = Fit(family, null, at, 1, part) with { Handle = size };
        _hardware[^1] = fitting;
        return fitting;
    }

    public string NextFittingId => $"fitting-{_hardware.Count + 1}";

    public void Add(Cover cover) => _covers.Add(cover);

    public void Add(Bank bank) => _banks.Add(bank);

    public void Add(Opening opening) => _openings.Add(opening);

    public void Add(Front front) => _fronts.Add(front);

    public void Add(Load load) => _loads.Add(load);

    /// <summary>Makes two fronts neighbours, each to the other: between them is a gap and no part.</summary>
    /// <param name="group">Group id of the one.</param>
    /// <param name="side">On which side of it the other stands.</param>
    /// <param name="other">Group id of the other.</param>
    /// <param name="gap">The gap wanted between them.</param>
    /// <param name="isRebated">Whether they meet in a rebate.</param>
    public void MakeNeighbours(string group, Direction side, string other, Length gap, bool isRebated = false)
    {
        AddNeighbour(group, new FrontNeighbour(other, side, gap, isRebated));
        AddNeighbour(other, new FrontNeighbour(group, side.Opposite(), gap, isRebated));
    }

    private void AddNeighbour(string group, FrontNeighbour neighbour)
    {
        var index = _fronts.FindIndex(f => f.Group == group);
        var front = _fronts[index];
        _fronts[index] = front with { Neighbours = [.. front.Neighbours, neighbour] };
    }

    /// <summary>A name nothing else has; a second of the same name counts as the second.</summary>
    private string UniqueName(string wish)
    {
        var name = wish;
        for (var n = 2; !_names.Add(name); n++)
            name = $"{wish} no {n}";
        return name;
    }

    /// <summary>An id nothing else has: the wish itself, or the wish with a number.</summary>
    public string Unique(string wish)
    {
        var id = wish;
        for (var n = 2; !_ids.Add(id); n++)
            id = $"{wish}-{n}";
        return id;
    }

    private static CutSizes SizesAsCut(Own? own, Figure length, Figure width, Figure thickness) =>
        new(own?.Length ?? length, own?.Width ?? width, own?.Thickness ?? thickness, own?.Place);

    private static void RefuseNothing(string part, string size, Figure figure, SourcePlace place)
    {
        if (figure.Length < Thinnest)
            throw new CannotBuildException(
                new InputError(
                    $"The {part} would have a {size} of {LengthFormat.Millimetres.WriteWithUnit(figure.Length)}: there is no room for it.",
                    place,
                    "sizes that leave something of every part"
                )
            );
    }

    private static Extent ExtentOf(Point at, Lie lie, Figure length, Figure width, Figure thickness)
    {
        var max = at;
        max = max.With(lie.Along.Axis(), at[lie.Along.Axis()] + length.Length);
        max = max.With(lie.Across.Axis(), at[lie.Across.Axis()] + width.Length);
        max = max.With(lie.Shows.Axis(), at[lie.Shows.Axis()] + thickness.Length);
        return new Extent(at, max);
    }

    private static Extent Hold(Extent actual, Extent reckoned, ReadOnlySpan<Direction> holds)
    {
        foreach (var side in holds)
        {
            var by = reckoned.Side(side) - actual.Side(side);
            actual = new Extent(
                actual.Min.With(side.Axis(), actual.Min[side.Axis()] + by),
                actual.Max.With(side.Axis(), actual.Max[side.Axis()] + by)
            );
        }
        return actual;
    }

    private static Point OriginOf(Extent extent, Lie lie)
    {
        var origin = extent.Min;
        foreach (var direction in (ReadOnlySpan<Direction>)[lie.Along, lie.Across, lie.Shows])
            origin = origin.With(direction.Axis(), extent.Side(direction.Opposite()));
        return origin;
    }
}
