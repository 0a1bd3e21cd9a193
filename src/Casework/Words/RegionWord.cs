using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Drawers;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Lights;
using Dryfit.Casework.Own;
using Dryfit.Casework.Shelving;
using Dryfit.Casework.Shelving.Racks;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>front:</c> a carcase's front, divided into columns and rows down to what fills each opening.</summary>
internal static class RegionWord
{
    private const int MostRegions = 500;
    private static readonly string[] Fillings = ["columns", "rows", "doors", "drawer", "false front", "open"];
    private static readonly ChoiceShape Bare = new("drawer", "false front", "open");

    public static RecordShape Equal { get; } =
        new(
            "equal regions",
            "Several regions of the same size.",
            "rows: { equal: 4, of: drawer }",
            () =>
                [
                    new("equal", new CountShape(1, 100), "How many.", Required: true),
                    new("of", new EitherShape(Bare, Word!, OwnWord.Use), "What each of them is.", Required: true),
                ]
        );

    public static RecordShape Graduated { get; } =
        new(
            "graduated regions",
            "Several regions that grow: from the top down, or from the left, each by a ratio or by a step.",
            "rows: { graduated: 4, ratio: 1.2, of: drawer }",
            () =>
                [
                    new("graduated", new CountShape(2, 20), "How many.", Required: true),
                    new("ratio", new NumberShape(), "How many times as large each is as the one before."),
                    new("step", new LengthShape(LengthSign.AboveZero), "How much larger each is than the one before."),
                    new("of", new EitherShape(Bare, Word!), "What each of them is.", Required: true),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "region",
            "A part of the front: divided into columns (left to right) or rows (top to bottom), or an opening with what fills it.",
            "front:\n  columns:\n    - { width: 16, rows: { equal: 4, of: drawer } }\n    - { doors: framed pair }\n",
            () =>
                [
                    new(
                        "width",
                        new LengthShape(LengthSign.AboveZero),
                        "Clear width of the opening, in a row of columns.",
                        Default: "a share of what is left"
                    ),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "Clear height of the opening, in a stack of rows.",
                        Default: "a share of what is left"
                    ),
                    new("share", new NumberShape(), "Its share of what is left, against the others.", Default: "1"),
                    new(
                        "columns",
                        Parts,
                        "Regions side by side, from the left, with a partition between two of them. Where the whole front is columns the partitions run through from bottom to top; in columns of a row they are fixed between its floor and its ceiling."
                    ),
                    new(
                        "rows",
                        Parts,
                        "Regions one above the other, from the top. A fixed shelf divides two of them where one is open or divided again, and in a frameless carcase where flaps or sliding doors want a board; else only the rail of a face frame, or a gap, does."
                    ),
                    new("doors", DoorsWord.Shape, "Doors that close the opening."),
                    new("drawer", DrawerWord.Shape, "A drawer that fills the opening."),
                    new("false front", FalseFront.Shape, "A front with no drawer behind it."),
                    new("open", new BareShape(), "Nothing: an open bay."),
                    new("shelves", ShelvesWord.Word, "Shelves behind it.", Default: "the carcase's shelves"),
                    new(
                        "pull outs",
                        PullOutsPlan.Shape,
                        "Trays on slides behind its doors or in its open bay, in place of shelves."
                    ),
                    new("lights", LightsWord.Word, "Lights in it."),
                    new("rack", RackWord.Word, "A rack behind it."),
                    new(
                        "clothes rail",
                        new EitherShape(ClothesRail.Word, new BareShape()),
                        "A rail for hangers behind it; the key alone is one by the shop's habits."
                    ),
                ]
        );

    private static EitherShape Parts =>
        new(new ListShape(new EitherShape(Bare, Word, OwnWord.Use), 1, 100), Equal, Graduated);

    public static Region Read(Mapping front, PieceBuilder piece)
    {
        var count = 0;
        return Read(front, piece, across: null, ref count);
    }

    private static Region Read(Node node, PieceBuilder piece, string? across, ref int count)
    {
        if (++count > MostRegions)
            throw new CannotBuildException(
                new InputError($"The front has more than {MostRegions} regions.", node.Place, "fewer openings")
            );
        if (node is not Mapping mapping)
            return new Region
            {
                Share = Rational.One,
                Filling = (node as Scalar)?.Text switch
                {
                    "drawer" => Filling.Drawer,
                    "false front" => Filling.FalseFront,
                    _ => Filling.Open,
                },
                Place = node.Place,
            };
        var fields = new Fields(mapping, piece.Scope);
        RefuseTwo(fields);
        RefuseWrongSize(fields, across);
        RefuseRackInDrawer(fields);
        return new Region
        {
            Fixed = across is null ? null : fields.LengthOrNull(across, $"opening {across}"),
            Share = Share(fields),
            Columns = PartsOf(fields, "columns", "width", piece, ref count),
            Rows = PartsOf(fields, "rows", "height", piece, ref count),
            Filling =
                fields.Has("doors") ? Filling.Doors
                : fields.Has("drawer") ? Filling.Drawer
                : fields.Has("false front") ? Filling.FalseFront
                : PullOutsPlan.HasFront(fields) ? Filling.Drawer
                : Filling.Open,
            Said = fields.Node("doors") ?? fields.Node("drawer") ?? fields.Node("false front"),
            Shelves = ShelvesWord.Read(fields, piece),
            PullOuts = PullOutsPlan.Read(fields, piece),
            Lights = LightsWord.Read(fields),
            Rack = RackWord.Read(fields, piece),
            ClothesRail = ClothesRail.Read(fields),
            Place = mapping.Place,
        };
    }

    private static List<Region> PartsOf(Fields fields, string key, string across, PieceBuilder piece, ref int count)
    {
        var parts = new List<Region>();
        if (fields.Map(key) is { } graduated && graduated.Has("graduated"))
        {
            var each = graduated.Node("of")!;
            var many = graduated.Count("graduated");
            var growth = Growth.Read(graduated);
            for (var n = 0; n < many; n++)
                parts.Add(Read(each, piece, across, ref count) with { Growth = growth });
        }
        else if (fields.Map(key) is { } equal)
        {
            var each = equal.Node("of")!;
            for (var n = equal.Count("equal"); n > 0; n--)
                parts.Add(Read(each, piece, across, ref count));
        }
        foreach (var item in fields.List(key))
            parts.Add(Read(item, piece, across, ref count));
        return parts;
    }

    private static Rational Share(Fields fields)
    {
        var share = fields.NumberOrNull("share")?.Number ?? Rational.One;
        return share.Sign > 0
            ? share
            : throw new CannotBuildException(
                new InputError("A share is above zero.", fields.PlaceOf("share"), "a number such as 1 or 1/2")
            );
    }

    private static void RefuseTwo(Fields fields)
    {
        string[] said = [.. Fillings.Where(fields.Has)];
        if (said.Length > 1)
            throw new CannotBuildException(
                new InputError(
                    $"An opening cannot be both {said[0]} and {said[1]}.",
                    fields.PlaceOf(said[1]),
                    $"one of the two; divide the opening to have both"
                )
            );
    }

    private static void RefuseRackInDrawer(Fields fields)
    {
        foreach (var key in (string[])["rack", "clothes rail", "lights", "pull outs"])
        {
            foreach (
                var filling in ((string[])["columns", "rows", "drawer"]).Where(_ => fields.Has(key)).Where(fields.Has)
            )
                throw new CannotBuildException(
                    new InputError(
                        filling == "drawer"
                            ? $"There is no room for {Told(key)} behind a drawer."
                            : $"What is said of {Told(key)} is for one bay, and this region is divided into {filling}.",
                        fields.PlaceOf(key),
                        $"{key}: in an open bay or behind doors"
                    )
                );
        }
    }

    private static string Told(string key) => key is "lights" or "pull outs" ? key : $"a {key}";

    private static void RefuseWrongSize(Fields fields, string? across)
    {
        foreach (var size in (string[])["width", "height"])
        {
            if (size != across && fields.Has(size))
                throw new CannotBuildException(
                    new InputError(
                        across is null
                            ? $"The whole front takes its {size} from the carcase."
                            : $"A region among {(across == "width" ? "columns" : "rows")} takes its {size} from the whole.",
                        fields.PlaceOf(size),
                        across is null ? "columns or rows with sizes" : $"{across}:, or nothing"
                    )
                );
        }
    }
}
