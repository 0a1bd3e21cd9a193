using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Boards;

/// <summary>Works out where a loose board lies and how large it is, one way after the other.</summary>
internal sealed class BoardPlace(PieceBuilder piece, FaceFinder faces, Lines lines, BoardPlan plan)
{
    private readonly List<Found> _leansOn = [];

    /// <summary>The lower end of the board along an axis, and its size there.</summary>
    /// <param name="Low">The coordinate of the lower end.</param>
    /// <param name="Line">The same as a sum; null where it has none.</param>
    internal readonly record struct Stretch(Length Low, Figure Size, Line? Line);

    /// <summary>Where the board lies along an axis.</summary>
    public Stretch Along(Axis axis)
    {
        var (lowSaid, highSaid) = (plan.Said(Sides.Low(axis)), plan.Said(Sides.High(axis)));
        var size = plan.SizeAlong(axis);
        var row = plan.Repeat is { } repeat && repeat.Towards.Axis() == axis ? repeat : null;
        if (row is not null)
            RefuseRowAgainst(row, lowSaid, highSaid);
        if (row is { Every: null })
            return Evenly(row, axis, size ?? throw NoSize(axis));
        var low = lowSaid is null ? null : SpotOf(lowSaid, Sides.Low(axis));
        var high = highSaid is null ? null : SpotOf(highSaid, Sides.High(axis));
        if (low is not null && high is not null)
            return size is null ? new(low.At, Span(low, high, axis), low.Line) : throw SaidTwice(axis, highSaid!);
        var own = size ?? throw NoSize(axis);
        var (at, line) =
            low is not null ? (low.At, low.Line)
            : high is not null ? (high.At - own.Length, high.Line.Moved(own, -1))
            : (Middle(axis) - (own.Length / 2), null);
        if (row?.Every is { } every && plan.Number > 0)
        {
            at += every.Length * plan.Number * row.Towards.Sign();
            line = line?.Moved(every * plan.Number, row.Towards.Sign());
        }
        return new(at, own, line);
    }

    /// <summary>The sides to which the board keeps where it was cut to another size.</summary>
    public IEnumerable<Direction> Holds()
    {
        foreach (var axis in Enum.GetValues<Axis>())
        {
            if (plan.Said(Sides.Low(axis)) is not null)
                yield return Sides.Low(axis);
            else if (plan.Said(Sides.High(axis)) is not null)
                yield return Sides.High(axis);
        }
    }

    /// <summary>The carcase at whose angle in plan the board stands; null where it stands square in the piece.</summary>
    public GroupDraft? Home()
    {
        if (_leansOn.Find(found => found.Home?.Turn != _leansOn[0].Home?.Turn) is { } other)
            throw new CannotBuildException(
                new InputError(
                    $"The {plan.Name} is placed by the {_leansOn[0].Name} and by the {other.Name}, which stand at different angles.",
                    plan.Place,
                    "places told from what stands at one angle"
                )
            );
        return _leansOn.Count == 0 ? null : _leansOn[0].Home;
    }

    private Found Find(FaceSaid face)
    {
        var found = faces.Find(face);
        // The floor has no angle.
        if (found.Parts.Count > 0)
            _leansOn.Add(found);
        return found;
    }

    /// <summary>How deep a side goes into what it meets; null where it only touches.</summary>
    /// <param name="other">Size of what it goes into, that way.</param>
    /// <param name="own">Thickness of the board.</param>
    public static Figure? DepthOf(MeetsSaid meets, PieceBuilder piece, Figure? other, Figure own) =>
        meets.IsLetIn
            ? meets.Depth
                ?? meets.Tie switch
                {
                    Tie.Loose => piece.Shop.Length(JointRules.BackGrooveDepth, "groove depth"),
                    Tie.Tenon when other is not null => MortiseTenon.LengthOf(piece, own, other),
                    _ => piece.Shop.Length(JointRules.DadoDepth, "dado depth"),
                }
            : null;

    private Spot SpotOf(SideSaid said, Direction side)
    {
        switch (said)
        {
            case AtSaid at:
                return new Spot(
                    at.At.Length,
                    new Line(Line.Corner, at.At.Length.Sign == 0 ? null : at.At),
                    "the corner of the piece"
                );
            case MeetsSaid meets:
                var met = Find(meets.Met);
                var face = meets.Met.Side ?? side.Opposite();
                if (face != side.Opposite())
                    throw new CannotBuildException(
                        new InputError(
                            $"The {Sides.Word(side)} of the {plan.Name} cannot meet the {Sides.Word(face)} of the {met.Name}: it looks the same way or another.",
                            meets.Met.Place,
                            $"the {Sides.Word(side.Opposite())} of something, or its name alone"
                        )
                    );
                var depth = DepthOf(
                    meets,
                    piece,
                    met.Parts.Count == 1 ? met.Parts[0].SizeAlong(side.Axis()) : null,
                    plan.Material.Thickness
                );
                var surface = met.Extent.Side(face);
                return new Spot(
                    depth is null ? surface : surface + (depth.Length * side.Sign()),
                    lines.Of(met, face).Moved(depth, side.Sign()),
                    met.Name
                );
            default:
                var off = (OffSaid)said;
                var from = Find(off.From);
                var plane = off.From.Side!.Value;
                if (plane.Axis() != side.Axis())
                    throw new CannotBuildException(
                        new InputError(
                            $"The {Sides.Word(side)} of the {plan.Name} is not told from the {Sides.Word(plane)} of something.",
                            off.From.Place,
                            $"the {Sides.Word(Sides.Low(side.Axis()))} or the {Sides.Word(Sides.High(side.Axis()))} of it"
                        )
                    );
                var level = from.Extent.Side(plane);
                return new Spot(
                    off.By is null ? level : level + (off.By.Length * off.Way.Sign()),
                    lines.Of(from, plane).Moved(off.By, off.Way.Sign()),
                    from.Name
                );
        }
    }

    private Figure Span(Spot low, Spot high, Axis axis)
    {
        if (high.At <= low.At)
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for the {plan.Name} {Sides.Across(axis)}: its {Sides.Word(Sides.High(axis))} would be before its {Sides.Word(Sides.Low(axis))}.",
                    plan.Said(Sides.High(axis))!.Place,
                    "sides with something between them"
                )
            );
        return Spot.Between(low, high).As(axis == plan.Lie.Along.Axis() ? "length" : "width");
    }

    /// <summary>One of a row that shares what lies between two parts: equal gaps before, between and behind them.</summary>
    private Stretch Evenly(RepeatPlan row, Axis axis, Figure size)
    {
        var ends = row.Between.Select(Find).OrderBy(found => found.Extent.Min[axis]).ToList();
        var (from, to) = (ends[0].Extent.Max[axis], ends[1].Extent.Min[axis]);
        var gap = (to - from - (size.Length * row.Times)) / (row.Times + 1);
        if (gap < Length.Zero)
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for {row.Times} of the {plan.Fields.Text("is") ?? "board"}s between the {ends[0].Name} and the {ends[1].Name}.",
                    row.Place,
                    "fewer of them, or narrower ones"
                )
            );
        var number = row.Towards.Sign() > 0 ? plan.Number : row.Times - 1 - plan.Number;
        return new(from + gap + ((gap + size.Length) * number), size, null);
    }

    private Length Middle(Axis axis)
    {
        if (plan.CentredOn is not { } centre)
            throw new CannotBuildException(
                new InputError(
                    $"Nothing says where the {plan.Name} is {Sides.Across(axis)}.",
                    plan.Place,
                    $"{Sides.Word(Sides.Low(axis))}:, {Sides.Word(Sides.High(axis))}: or centred on:"
                )
            );
        var on = Find(centre).Extent;
        return (on.Min[axis] + on.Max[axis]) / 2;
    }

    private void RefuseRowAgainst(RepeatPlan row, SideSaid? low, SideSaid? high)
    {
        if ((row.Every is null ? low ?? high : null) is { } placed)
            throw new CannotBuildException(
                new InputError(
                    $"The {plan.Name} has its place evenly between two parts already.",
                    placed.Place,
                    "every:, or no place that way"
                )
            );
        if ((low as MeetsSaid ?? high as MeetsSaid) is { } meets)
            throw new CannotBuildException(
                new InputError(
                    $"Only the first of a row could meet the {meets.Met.Name}; the others stand farther on.",
                    meets.Place,
                    "a distance: 40 right of; or evenly between:"
                )
            );
    }

    private CannotBuildException NoSize(Axis axis) =>
        new(
            new InputError(
                $"The {plan.Name} has no {(axis == plan.Lie.Along.Axis() ? "length" : "width")}.",
                plan.Place,
                $"{(axis == plan.Lie.Along.Axis() ? "length" : "width")}:, or both its {Sides.Word(Sides.Low(axis))} and its {Sides.Word(Sides.High(axis))}"
            )
        );

    private CannotBuildException SaidTwice(Axis axis, SideSaid second)
    {
        var size =
            axis == plan.Lie.Along.Axis() ? "length"
            : axis == plan.Lie.Across.Axis() ? "width"
            : "thickness";
        return new(
            new InputError(
                $"The {size} of the {plan.Name} is said, and so are both its sides {Sides.Across(axis)}.",
                second.Place,
                size == "thickness"
                    ? "one of the two sides; what else it meets goes under joined:"
                    : $"one of the two sides, or no {size}; what else it meets goes under joined:"
            )
        );
    }
}
