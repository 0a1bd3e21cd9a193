using Dryfit.Casework.Building;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Shelving;

/// <summary><c>shelves:</c> fixed or adjustable, in every bay without drawers or in one.</summary>
internal static class ShelvesWord
{
    private static readonly ListShape Heights = new(new LengthShape(LengthSign.AboveZero), 1, 50);

    public static RecordShape Lip { get; } =
        new(
            "lip",
            "A strip of timber glued along the front edge of each shelf, its upper edge flush with the shelf. It counts in the shelf's width.",
            "lip: { material: oak 3/4, height: 1 1/2 }\n",
            () =>
                [
                    new(
                        "material",
                        new NameShape("material"),
                        "What it is made of; its thickness stands before the shelf.",
                        Required: true
                    ),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "From its upper to its lower edge.",
                        Required: true
                    ),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "shelves",
            "Shelves of a bay: jointed in, or loose on pins or strips, or both: the fixed ones part the bay and the others are shared among the spaces between. Said for a carcase they stand behind each of its openings that has no drawer.",
            "shelves: { fixed: 1, adjustable: 4 }",
            () =>
                [
                    new("adjustable", new CountShape(0, 50), "How many shelves that can be moved."),
                    new("fixed", new CountShape(0, 50), "How many shelves jointed in."),
                    new(
                        "on",
                        new ChoiceShape("pins", "strips", "planted strips"),
                        "What adjustable shelves lie on: pins in bored rows, or clips in metal strips that are let into the uprights or planted on them.",
                        Default: "pins"
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What they are made of.",
                        Default: "the material called shelves, or the carcase's own"
                    ),
                    new(
                        "at",
                        Heights,
                        "Heights from the floor of the bay to the underside of each, from the lowest; where there are shelves of both sorts, of the fixed ones.",
                        Default: "spread evenly"
                    ),
                    new(
                        "adjustable at",
                        Heights,
                        "The same for the adjustable ones, where there are fixed ones besides.",
                        Default: "spread evenly between the fixed ones"
                    ),
                    new(
                        "edging",
                        new NameShape("material"),
                        "The band on the front edges of shelves of sheet goods: a material as thick as the band.",
                        Default: "the carcase's edging"
                    ),
                    new("lip", Lip, "A strip along the front edge that hides and stiffens it.", Default: "none"),
                    new(
                        "edge",
                        EdgeWord.Shape,
                        "The shape run along their front edges, or along the lip.",
                        Default: "square"
                    ),
                    new(
                        "setback",
                        new LengthShape(),
                        "How far they stay behind the front of the inside; more lets the light of a strip above reach down before them.",
                        Default: "the shop's setback"
                    ),
                    new("behind", new LengthShape(), "Room left between them and the back.", Default: "0"),
                    new(
                        "between stiles",
                        new YesNoShape(),
                        "Whether they come forward between the stiles of a face frame to its front less the setback, notched round them.",
                        Default: "no"
                    ),
                ]
        );

    public static ShelvesPlan? Read(Fields owner, PieceBuilder piece)
    {
        if (owner.Map("shelves") is not { } fields)
            return null;
        var (hasFixed, hasAdjustable) = (fields.Has("fixed"), fields.Has("adjustable"));
        if (!hasFixed && !hasAdjustable)
            throw Refused(fields, fields.Place, "How many shelves is missing.", "adjustable: 2, or fixed: 2");
        if (fields.Has("adjustable at") && !(hasFixed && hasAdjustable))
            throw Refused(
                fields,
                fields.PlaceOf("adjustable at"),
                "Shelves of one sort have their heights under `at`.",
                "at:, or fixed and adjustable shelves"
            );
        var on = fields.Text("on") switch
        {
            "strips" => ShelfSupport.Strips,
            "planted strips" => ShelfSupport.PlantedStrips,
            _ => ShelfSupport.Pins,
        };
        if (fields.Has("on") && !hasAdjustable)
            throw Refused(
                fields,
                fields.PlaceOf("on"),
                "Fixed shelves lie on nothing but their joints.",
                "adjustable: with a count"
            );
        return new ShelvesPlan
        {
            Fixed = Counted("fixed", "at"),
            Adjustable = Counted("adjustable", hasFixed ? "adjustable at" : "at"),
            On = on,
            Material =
                fields.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material"))
                : piece.Materials.Has("shelves") ? piece.Materials.Get("shelves", fields.Place)
                : null,
            Edging = fields.Text("edging") is { } band ? piece.Materials.Get(band, fields.PlaceOf("edging")) : null,
            Lip = ReadLip(fields, piece),
            Edge = EdgeWord.Read(fields, "edge", piece.Scope, Direction.Front),
            Setback = fields.LengthOrNull("setback"),
            Behind = fields.LengthOrNull("behind", "room behind"),
            BetweenStiles = fields.YesNo("between stiles"),
            Place = fields.Place,
        };

        ShelfCount Counted(string key, string at) =>
            fields.Has(key)
                ? new(
                    fields.Count(key),
                    [
                        .. fields
                            .List(at)
                            .OfType<Scalar>()
                            .Select((s, n) => piece.Scope.Length(s, $"height of shelf {n + 1}")),
                    ],
                    fields.PlaceOf(key)
                )
                : new(0, [], fields.Place);
    }

    private static LipPlan? ReadLip(Fields owner, PieceBuilder piece) =>
        owner.Map("lip") is { } fields
            ? new(
                piece.Materials.Get(fields.Text("material")!, fields.PlaceOf("material")),
                fields.Length("height", "lip height"),
                fields.Place
            )
            : null;

    private static CannotBuildException Refused(Fields fields, SourcePlace? place, string message, string wanted) =>
        new(new InputError(message, place ?? fields.Place, wanted));
}
