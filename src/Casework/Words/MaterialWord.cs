using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>The recipe's <c>materials:</c>: names of the maker's choosing for what is on the rack.</summary>
internal static class MaterialWord
{
    private static readonly string[] StuffKeys = ["solid", "sheet", "glass", "plastic", "dressed"];

    public static RecordShape Word { get; } =
        new(
            "material",
            "What parts are made of. One of solid, sheet, glass, plastic or dressed says the stuff; the thickness is what it really measures.",
            "backs: { sheet: birch plywood, called: 1/4, actual: 5.2 mm }",
            () =>
                [
                    new("solid", new TextShape(), "Solid timber, by its species: maple."),
                    new("sheet", new TextShape(), "A sheet, by its kind: birch plywood."),
                    new("glass", new TextShape(), "Glass, by its kind: float glass."),
                    new("plastic", new TextShape(), "A clear plastic: acrylic."),
                    new(
                        "dressed",
                        new TextShape(),
                        "Dressed softwood by species and the size it is sold by: spruce 2x4."
                    ),
                    new("thickness", new LengthShape(LengthSign.AboveZero), "What it measures across."),
                    new(
                        "called",
                        new LengthShape(LengthSign.AboveZero),
                        "The thickness it is sold by, where that is another."
                    ),
                    new(
                        "actual",
                        new LengthShape(LengthSign.AboveZero),
                        "What it really measures, where it is sold by another number."
                    ),
                    new(
                        "width",
                        new LengthShape(LengthSign.AboveZero),
                        "What stock of one width measures, such as dressed lumber."
                    ),
                    new(
                        "grain",
                        new YesNoShape(),
                        "Whether parts must follow its grain.",
                        Default: "as the stuff has it"
                    ),
                    new(
                        "good faces",
                        new ChoiceShape("one", "two"),
                        "How many of its faces are fit to be seen: with one, the cut list tells which way up each part is cut.",
                        Default: "two"
                    ),
                    new(
                        "varies by",
                        new LengthShape(LengthSign.ZeroOrMore),
                        "How much thicker or thinner the stock may be than it is said to be.",
                        Default: "as published for the stuff; little where `actual` says what it measures"
                    ),
                    new(
                        "density",
                        new CountShape(1, 25_000),
                        "kg in a cubic metre, for stuff that is not known.",
                        Default: "as published for the stuff"
                    ),
                ]
        );

    public static NamedShape Shape { get; } =
        new(new EitherShape(new SpokenShape("a kind and a thickness: maple 3/4, or spruce 2x4"), Word), "material");

    /// <summary>Reads one material; reports what is wrong with it and then returns null.</summary>
    public static Material? Read(Entry entry, Scope scope) =>
        entry.Value switch
        {
            Scalar spoken => Spoken(entry.Key, spoken, scope),
            Mapping written => Written(entry.Key, new Fields(written, scope), scope),
            _ => null,
        };

    /// <summary>The material with how far its stock varies: as the recipe says, or by the house rule for its stuff.</summary>
    public static Material Varying(Material material, Entry entry, Scope scope, Shop shop)
    {
        var said = entry.Value is Mapping written ? new Fields(written, scope) : null;
        var varies = said?.LengthOrNull("varies by", "stock varies by");
        var isMeasured = said?.Has("actual") ?? false;
        return material with
        {
            Varies =
                varies
                ?? shop.Length(
                    isMeasured ? StockRules.Measured : StockRules.For(material.Kind, material.Stuff),
                    "stock varies by"
                ),
            IsMeasured = isMeasured || varies is not null,
        };
    }

    private static Material? Spoken(string name, Scalar spoken, Scope scope)
    {
        var words = spoken.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var thicknessAt = Array.FindIndex(words, w => w.Length > 0 && LengthText.StartsNumber(w[0]));
        if (thicknessAt <= 0)
            return Refuse(
                scope,
                thicknessAt < 0 ? "The thickness is missing." : "The kind of stuff is missing.",
                spoken.Place,
                "a kind and a thickness: maple 3/4"
            );
        var stuff = string.Join(' ', words[..thicknessAt]);
        var size = string.Join(' ', words[thicknessAt..]);
        if (size.Contains('x', StringComparison.OrdinalIgnoreCase) || size.Contains('×', StringComparison.Ordinal))
            return Dressed(name, stuff, size, spoken.Place, scope);
        // The thickness keeps its own place, so that an error in it points there.
        var start = spoken.Text.IndexOf(words[thicknessAt], StringComparison.Ordinal);
        var place = spoken.Place with { Column = spoken.Place.Column + start, Length = Math.Max(1, size.Length) };
        var thickness = scope.Length(new Scalar(size, place), $"{stuff} thickness");
        return Make(name, stuff, kind: null, thickness, called: null, width: null, spoken.Place, fields: null, scope);
    }

    private static Material? Written(string name, Fields fields, Scope scope)
    {
        var said = StuffKeys.Where(fields.Has).ToList();
        if (said.Count != 1)
            return Refuse(
                scope,
                said.Count == 0 ? "What the material is made of is missing." : "The material is said to be two things.",
                fields.Place,
                "one of solid, sheet, glass, plastic, dressed"
            );
        var stuff = fields.Text(said[0])!;
        if (said[0] == "dressed")
        {
            var at = stuff.LastIndexOf(' ');
            return at < 0
                ? Refuse(scope, "The size is missing.", fields.PlaceOf("dressed"), "a species and a size: spruce 2x4")
                : Dressed(name, stuff[..at], stuff[(at + 1)..], fields.PlaceOf("dressed"), scope);
        }
        var thickness =
            fields.LengthOrNull("actual", $"{stuff} thickness")
            ?? fields.LengthOrNull("thickness", $"{stuff} thickness");
        if (thickness is null)
            return Refuse(scope, "The thickness is missing.", fields.Place, "thickness:, or called: and actual:");
        var kind = said[0] switch
        {
            "solid" => MaterialKind.Solid,
            "sheet" => MaterialKind.Sheet,
            "glass" => MaterialKind.Glass,
            _ => MaterialKind.Plastic,
        };
        return Make(
            name,
            stuff,
            kind,
            thickness,
            fields.LengthOrNull("called")?.Length,
            fields.LengthOrNull("width", $"{stuff} width"),
            fields.Place,
            fields,
            scope
        );
    }

    private static Material? Dressed(string name, string stuff, string size, SourcePlace place, Scope scope)
    {
        var section = DressedLumber.Find(size);
        if (section is null)
            return Refuse(
                scope,
                $"No dressed lumber is sold as {size}.",
                place,
                "a size it is sold by, in inches: 1x4, 2x4, 2x6"
            );
        var origin = new TradeOrigin($"dressed {size}: softwood lumber standard PS 20");
        return Make(
            name,
            stuff,
            MaterialKind.Solid,
            Figure.Given($"{size} thickness", section.Thickness, origin),
            called: null,
            Figure.Given($"{size} width", section.Width, origin),
            place,
            fields: null,
            scope
        );
    }

    private static Material? Make(
        string name,
        string stuff,
        MaterialKind? kind,
        Figure thickness,
        Length? called,
        Figure? width,
        SourcePlace place,
        Fields? fields,
        Scope scope
    )
    {
        if (thickness.Quantity.IsLength && thickness.Length <= Length.Zero)
            return Refuse(scope, $"The {stuff} has no thickness.", place, "a thickness above zero: maple 3/4");
        var known = KnownStuff.Find(stuff);
        var density = fields?.Count("density") ?? 0;
        if (known is null && (density == 0 || kind is null))
            return Refuse(
                scope,
                $"'{stuff}' is no timber, sheet, glass or plastic that is known here.",
                place,
                "a known kind, or the long form with its density",
                NearestWord.To(stuff, KnownStuff.Names)
            );
        if (known is not null && kind is not null && known.Kind != kind)
            return Refuse(
                scope,
                $"'{stuff}' is {Kind(known.Kind)}, not {Kind(kind.Value)}.",
                place,
                $"{Key(known.Kind)}: {stuff}"
            );
        return new Material(
            name,
            known?.Kind ?? kind!.Value,
            known?.Name ?? stuff,
            thickness,
            called,
            width,
            fields?.YesNo("grain", known?.HasGrain ?? kind == MaterialKind.Solid) ?? known?.HasGrain ?? true,
            density > 0 ? density : known!.DensityKgPerM3,
            density > 0 ? "the recipe" : known!.DensitySource,
            place
        )
        {
            HasOneGoodFace = fields?.Text("good faces") == "one",
        };
    }

    private static string Kind(MaterialKind kind) =>
        kind switch
        {
            MaterialKind.Solid => "solid timber",
            MaterialKind.Sheet => "a sheet",
            MaterialKind.Glass => "glass",
            _ => "a plastic",
        };

    private static string Key(MaterialKind kind) => kind.ToString().ToLowerInvariant();

    private static Material? Refuse(
        Scope scope,
        string message,
        SourcePlace place,
        string expected,
        string? suggestion = null
    )
    {
        scope.Report(new InputError(message, place, expected, suggestion));
        return null;
    }
}
