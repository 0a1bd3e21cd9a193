using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>Reads the sections of the recipe that stand beside the carcases.</summary>
internal sealed class Sections(Mapping recipe, Scope scope)
{
    /// <param name="shop">For how far stock varies; null where only what is wrong with the recipe is asked for.</param>
    public Materials Materials(Shop? shop = null)
    {
        var materials = new Dictionary<string, Material>(StringComparer.Ordinal);
        foreach (var entry in Entries("materials"))
        {
            if (MaterialWord.Read(entry, scope) is { } material)
                materials[entry.Key] = shop is null ? material : MaterialWord.Varying(material, entry, scope, shop);
        }
        return new Materials(materials);
    }

    public AsCut Cut()
    {
        var cut = new AsCut();
        foreach (var entry in Entries("as cut"))
            cut.Add(entry.Key, entry.KeyPlace, new Fields((Mapping)entry.Value, scope));
        return cut;
    }

    public AsMeasured Measured()
    {
        var measured = new AsMeasured();
        var spaces = Entries("room").Select(entry => entry.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var entry in Entries("as measured").Where(entry => !spaces.Contains(entry.Key)))
        {
            RefuseReadings((Mapping)entry.Value, entry.Key);
            var fields = new Fields((Mapping)entry.Value, scope);
            if (fields.Has("warp") || fields.Has("diagonals"))
            {
                measured.Add(entry.Key, entry.KeyPlace, Door(fields, entry));
                continue;
            }
            var (width, widthAtTop) = OneOrTwo(fields, "width");
            var (height, heightAtRight) = OneOrTwo(fields, "height");
            measured.Add(
                entry.Key,
                entry.KeyPlace,
                new MeasuredSizes(
                    width,
                    widthAtTop,
                    height,
                    heightAtRight,
                    fields.LengthOrNull("depth", "depth as measured")
                )
            );
        }
        return measured;
    }

    private DoorAsFound Door(Fields fields, Entry entry)
    {
        foreach (var key in (string[])["width", "height", "depth"])
        {
            if (fields.Has(key))
                throw new CannotBuildException(
                    new InputError(
                        $"Warp and diagonals are of a door, its {key} is not asked for here.",
                        fields.PlaceOf(key),
                        "warp and diagonals alone; what a door was cut to stands under as cut:"
                    )
                );
        }
        (Length, Length)? diagonals = fields.List("diagonals") is [Scalar rising, Scalar falling]
            ? (
                scope.Length(rising, "diagonal as measured").Length,
                scope.Length(falling, "diagonal as measured").Length
            )
            : null;
        return new DoorAsFound(fields.LengthOrNull("warp", "warp as measured")?.Length, diagonals, entry.KeyPlace);
    }

    private static void RefuseReadings(Mapping said, string name)
    {
        foreach (var key in (string[])["widths", "left wall", "floor"])
        {
            if (said[key] is { } readings)
                throw new CannotBuildException(
                    new InputError(
                        $"The room has no space called '{name}' that readings of walls and floor belong to.",
                        readings.Place,
                        "the name of a space under room:, or width and height of an opening"
                    )
                );
        }
    }

    public FinishPlan Finishes() =>
        new([
            .. Entries("finishes")
                .Select(entry => new FinishPlan.Scheme(
                    new FinishScheme(entry.Key, entry.KeyPlace),
                    [
                        .. ((Mapping)entry.Value).Entries.Select(line =>
                            (line.Key, ((Scalar)line.Value).Text, line.KeyPlace)
                        ),
                    ]
                )),
        ]);

    public IReadOnlyList<AcceptedFinding> Accepted() =>
        [
            .. (recipe["accept"] as Sequence)
                ?.Items.OfType<Mapping>()
                .Select(item => new Fields(item, scope))
                .Select(fields => new AcceptedFinding(
                    fields.Text("finding")!,
                    fields.Text("parts"),
                    fields.Text("because")!,
                    fields.Place
                ))
                ?? [],
        ];

    /// <summary>How lengths are written: in the recipe's unit and step, or in another unit that was asked for.</summary>
    public LengthFormat Format(LengthUnit? asked)
    {
        var format = LengthFormat.For(asked ?? scope.Unit);
        if (asked is not null && asked != scope.Unit)
            return format;
        return recipe["show"] is Scalar step ? new LengthFormat(scope.Unit, scope.Length(step, "show").Length) : format;
    }

    private IReadOnlyList<Entry> Entries(string section) => (recipe[section] as Mapping)?.Entries ?? [];

    private (Figure? First, Figure? Second) OneOrTwo(Fields fields, string key)
    {
        if (fields.List(key) is [Scalar first, Scalar second])
            return (scope.Length(first, $"{key} as measured"), scope.Length(second, $"{key} as measured"));
        return (fields.LengthOrNull(key, $"{key} as measured"), null);
    }
}
