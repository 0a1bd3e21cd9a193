using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>One of the recipe's <c>kept:</c> carcases: an old one that stays, as found and measured.</summary>
internal static class KeptWord
{
    public static RecordShape Outside { get; } =
        new(
            "kept outside",
            "The outside of a kept carcase as a tape reads it. Its left side is taken as plumb and its foot as level; what is out of square leans on the right and above.",
            "outside: { width: 812, width at top: 809, height: 760, depth: 430 }",
            () =>
                [
                    new("width", new LengthShape(LengthSign.AboveZero), "At the foot.", Required: true),
                    new("width at top", new LengthShape(LengthSign.AboveZero), "At the top.", Default: "as width"),
                    new("height", new LengthShape(LengthSign.AboveZero), "At the left end.", Required: true),
                    new(
                        "height at right",
                        new LengthShape(LengthSign.AboveZero),
                        "At the right end.",
                        Default: "as height"
                    ),
                    new("depth", new LengthShape(LengthSign.AboveZero), "From front to back.", Required: true),
                ]
        );

    public static RecordShape Inside { get; } =
        new(
            "kept inside",
            "The clear inside of a kept carcase, open to the front.",
            "inside: { width: 772, height: 690, depth: 400, from left: 20, from foot: 50 }",
            () =>
                [
                    new("width", new LengthShape(LengthSign.AboveZero), "Clear width.", Required: true),
                    new("height", new LengthShape(LengthSign.AboveZero), "Clear height.", Required: true),
                    new("depth", new LengthShape(LengthSign.AboveZero), "From the front.", Required: true),
                    new(
                        "from left",
                        new LengthShape(LengthSign.AboveZero),
                        "From the outside left to the inside.",
                        Required: true
                    ),
                    new(
                        "from foot",
                        new LengthShape(LengthSign.AboveZero),
                        "From the foot to the inside floor.",
                        Required: true
                    ),
                ]
        );

    public static RecordShape Doors { get; } =
        new(
            "kept doors",
            "The old doors, planted on the front and left as they are.",
            "doors: { leaves: 2, thickness: 18, lap: 12, gap: 3 }",
            () =>
                [
                    new("leaves", new CountShape(1, 2), "One or two.", Required: true),
                    new("thickness", new LengthShape(LengthSign.AboveZero), "As measured.", Required: true),
                    new("lap", new LengthShape(), "How far they lap over the edges of the inside.", Required: true),
                    new("gap", new LengthShape(), "Between the two.", Default: "the shop's pair gap"),
                ]
        );

    public static RecordShape Shelf { get; } =
        new(
            "kept shelf",
            "An old shelf, as found; it may be cut down at a named end.",
            "lower shelf: { length: 768, width: 380, thickness: 18, height: 240, cut down: right end, to: 650 }",
            () =>
                [
                    new("length", new LengthShape(LengthSign.AboveZero), "As found.", Required: true),
                    new("width", new LengthShape(LengthSign.AboveZero), "From front to back.", Required: true),
                    new("thickness", new LengthShape(LengthSign.AboveZero), "As measured.", Required: true),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "From the inside floor to its underside.",
                        Required: true
                    ),
                    new(
                        "from left",
                        new LengthShape(),
                        "From the inside left to its left end as found.",
                        Default: "centred as found"
                    ),
                    new(
                        "cut down",
                        new ChoiceShape("left end", "right end", "front edge", "back edge"),
                        "Where it is cut.",
                        Default: "not at all"
                    ),
                    new(
                        "to",
                        new LengthShape(LengthSign.AboveZero),
                        "What is left after the cut.",
                        Default: "as found"
                    ),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "kept carcase",
            "An old carcase that stays: one rigid body with a measured outside and inside. New work clears it.",
            "chest:\n  material: old pine\n  outside: { width: 812, height: 760, depth: 430 }\n  inside: { width: 772, height: 690, depth: 400, from left: 20, from foot: 50 }\n",
            () =>
                [
                    new("material", new NameShape("material"), "What it is made of, for its mass.", Required: true),
                    new("outside", Outside, "Its outside.", Required: true),
                    new("inside", Inside, "Its clear inside.", Required: true),
                    .. PlaceWord.Fields,
                    new("stands on", StandWord.Word, "A new plinth under it.", Default: "its own foot"),
                    new("doors", Doors, "Its doors.", Default: "none"),
                    new("shelves", new NamedShape(Shelf, "kept shelf"), "Its shelves."),
                ]
        );

    public static NamedShape Shape { get; } = new(Word, "kept carcase");

    /// <summary>The largest outside, with what it stands on.</summary>
    public static (Figure Width, Figure Height, Figure Depth) Size(Fields fields, Figure? lift)
    {
        var outside = fields.Map("outside")!;
        var height = Larger(outside.Length("height", "height at left"), outside.LengthOrNull("height at right"));
        return (
            Larger(outside.Length("width", "width at foot"), outside.LengthOrNull("width at top")),
            lift is null ? height : height + lift,
            outside.Length("depth")
        );
    }

    private static Figure Larger(Figure a, Figure? b) => b is null || b.Quantity == a.Quantity ? a : Figure.Max(a, b);
}
