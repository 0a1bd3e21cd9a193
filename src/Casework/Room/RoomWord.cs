using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Room;

/// <summary><c>room:</c> the spaces between walls that the piece must go into, as they were measured.</summary>
internal static class RoomWord
{
    private static readonly ListShape Readings = new(new ListShape(new LengthShape(LengthSign.Any), 2, 2), 1, 40);

    public static RecordShape Skirting { get; } =
        new(
            "skirting",
            "The boards at the foot of the walls, all round.",
            "skirting: { height: 120, thickness: 18 }\n",
            () =>
                [
                    new("height", new LengthShape(LengthSign.AboveZero), "From the floor.", Required: true),
                    new("thickness", new LengthShape(LengthSign.AboveZero), "Off the wall.", Required: true),
                ]
        );

    public static RecordShape Fitting { get; } =
        new(
            "on a wall",
            "Something on a wall that stays there: a socket, a pipe, a radiator.",
            "socket: { wall: back, along: 300, height: 250, size: [150, 90], out: 12 }\n",
            () =>
                [
                    new("wall", new ChoiceShape("left", "right", "back"), "The wall it is on.", Required: true),
                    new(
                        "along",
                        new LengthShape(),
                        "To its nearer edge: from the left wall along the back one, from the mouth along the others.",
                        Required: true
                    ),
                    new("height", new LengthShape(), "From the floor to its lower edge.", Required: true),
                    new(
                        "size",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 2, 2),
                        "Width along the wall, and height.",
                        Required: true
                    ),
                    new(
                        "out",
                        new LengthShape(LengthSign.AboveZero),
                        "How far it stands out from the wall, with the air it wants.",
                        Required: true
                    ),
                ]
        );

    /// <summary>What a tape and a level tell of a space; `as measured` may say the same anew.</summary>
    public static IReadOnlyList<Field> Measurements { get; } =
    [
        new(
            "widths",
            Readings,
            "From wall to wall at several heights: pairs of height and width, from the floor up to over what goes in."
        ),
        new(
            "left wall",
            Readings,
            "How far the left wall leans in from a plumb line at its foot, at several heights: pairs of height and distance, below zero where it leans away.",
            Default: "plumb"
        ),
        new(
            "floor",
            Readings,
            "How high the floor lies over a level line, at several distances from the left wall: pairs of distance and height.",
            Default: "level"
        ),
        new(
            "ceiling",
            Readings,
            "How high the ceiling hangs over the highest place of the floor, at several distances from the left wall: pairs of distance and height. Trim goes up to it.",
            Default: "not measured"
        ),
        new(
            "depth",
            new LengthShape(LengthSign.AboveZero),
            "From the mouth, where the front stands, to the wall behind.",
            Default: "no wall behind"
        ),
    ];

    public static RecordShape Space { get; } =
        new(
            "space between walls",
            "A space between two walls, as measured with tape, plumb line and level; `dryfit survey` writes a sheet to fill in. Straight lines are taken from each reading to the next. Formulas know its `narrowest`, `widest`, `depth` and `ceiling` at its lowest: `alcove.narrowest - 40`.",
            "room:\n  alcove:\n    widths: [[0, 1812], [900, 1806], [1800, 1801]]\n    left wall: [[0, 0], [1800, 4]]\n    floor: [[0, 0], [1812, 8]]\n    depth: 420\n",
            () =>
                [
                    .. Measurements,
                    new("skirting", Skirting, "The boards at the foot of its walls.", Default: "none"),
                    new(
                        "walls go on",
                        new LengthShape(),
                        "How far its walls go on before the mouth, where doors swing and drawers come out.",
                        Default: "they end at the mouth"
                    ),
                    new("on the walls", new NamedShape(Fitting, "thing"), "What is on its walls and stays there."),
                ]
        );

    public static NamedShape Shape { get; } = new(Space, "space between walls");

    /// <summary>Reads the spaces of the recipe, with what `as measured` says of them in place of what stands in `room`.</summary>
    public static IReadOnlyDictionary<string, WallSpace> Read(Mapping recipe, Scope scope)
    {
        var spaces = new Dictionary<string, WallSpace>(StringComparer.Ordinal);
        foreach (var entry in (recipe["room"] as Mapping)?.Entries ?? [])
        {
            var said = new Fields((Mapping)entry.Value, scope);
            var measured = (recipe["as measured"] as Mapping)?[entry.Key] is Mapping anew
                ? new Fields(anew, scope)
                : said;
            spaces[entry.Key] = Read(entry, said, key => measured.Has(key) ? measured : said);
        }
        return spaces;
    }

    /// <summary>Makes <c>alcove.narrowest</c> and the like known to formulas.</summary>
    public static void DefineNames(Scope scope, IReadOnlyDictionary<string, WallSpace> spaces)
    {
        foreach (var space in spaces.Values)
        {
            var name = space.Name.Replace(' ', '_').Replace('-', '_');
            scope.Define(
                $"{name}.narrowest",
                space.Place,
                () => space.Widths.Least.As($"{space.Name} at its narrowest")
            );
            scope.Define($"{name}.widest", space.Place, () => space.Widths.Most.As($"{space.Name} at its widest"));
            if (space.Ceiling is { } ceiling)
                scope.Define(
                    $"{name}.ceiling",
                    space.Place,
                    () => ceiling.Least.As($"{space.Name} ceiling at its lowest")
                );
            if (space.Depth is { } depth)
                scope.Define($"{name}.depth", space.Place, () => depth.As($"{space.Name} depth"));
        }
    }

    private static WallSpace Read(Entry entry, Fields said, Func<string, Fields> of)
    {
        var place = entry.KeyPlace;
        var widths =
            ReadingsOf(of("widths"), "widths", entry.Key)
            ?? throw new CannotBuildException(
                new InputError(
                    $"The width of the {entry.Key} is missing.",
                    place,
                    "widths: pairs of height and width, here or under `as measured`"
                )
            );
        return new WallSpace(
            entry.Key,
            widths,
            ReadingsOf(of("left wall"), "left wall", entry.Key),
            ReadingsOf(of("floor"), "floor", entry.Key),
            ReadingsOf(of("ceiling"), "ceiling", entry.Key),
            of("depth").LengthOrNull("depth", $"{entry.Key} depth"),
            said.Map("skirting") is { } skirting
                ? new(skirting.Length("height").Length, skirting.Length("thickness").Length)
                : null,
            [.. FittingsOf(said)],
            place
        )
        {
            GoesOn = said.LengthOrNull("walls go on")?.Length ?? Length.Zero,
        };
    }

    private static Readings? ReadingsOf(Fields fields, string key, string space)
    {
        if (!fields.Has(key))
            return null;
        var points = new List<(Length At, Figure Value)>();
        foreach (var pair in fields.List(key).OfType<Sequence>())
        {
            var (at, value) = ((Scalar)pair.Items[0], (Scalar)pair.Items[1]);
            var place = fields.Scope.Length(at, $"{space} {key}").Length;
            if (points.Count > 0 && place <= points[^1].At)
                throw new CannotBuildException(
                    new InputError(
                        $"The readings of the {space} do not rise.",
                        at.Place,
                        "pairs from the lowest or leftmost place to the last"
                    )
                );
            points.Add((place, fields.Scope.Length(value, $"{space} {key} {points.Count + 1}")));
        }
        return new Readings(points);
    }

    private static IEnumerable<WallFitting> FittingsOf(Fields said)
    {
        foreach (var entry in (said.Node("on the walls") as Mapping)?.Entries ?? [])
        {
            var fields = new Fields((Mapping)entry.Value, said.Scope);
            var size = fields.List("size").OfType<Scalar>().Select(s => said.Scope.Length(s, "size").Length).ToList();
            yield return new WallFitting(
                entry.Key,
                fields.Text("wall") switch
                {
                    "left" => Direction.Left,
                    "right" => Direction.Right,
                    _ => Direction.Back,
                },
                fields.Length("along").Length,
                fields.Length("height").Length,
                size[0],
                size[1],
                fields.Length("out").Length,
                entry.KeyPlace
            );
        }
    }
}
