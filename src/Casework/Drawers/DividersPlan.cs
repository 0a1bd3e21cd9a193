using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>Thin boards that divide a drawer, evenly.</summary>
/// <param name="Count">How many.</param>
/// <param name="FromSideToSide">Whether they run from side to side; else from front to back.</param>
internal sealed record DividersPlan(
    int Count,
    bool FromSideToSide,
    Material Material,
    Figure? Height,
    SourcePlace Place
)
{
    private static readonly CountShape Number = new(1, 30);

    private static RecordShape Written { get; } =
        new(
            "drawer dividers",
            "Boards that divide a drawer evenly, let into dados of its box. A number alone runs them from front to back.",
            "dividers: { count: 3, run: from side to side, material: backs }",
            () =>
                [
                    new("count", Number, "How many.", Required: true),
                    new(
                        "run",
                        new ChoiceShape("from front to back", "from side to side"),
                        "Which way they run.",
                        Default: "from front to back"
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What they are made of.",
                        Default: "the material called `dividers`, else that of the box"
                    ),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of them, from the bottom of the drawer.",
                        Default: "to the upper edge of the box"
                    ),
                ]
        );

    public static Shape Shape { get; } = new EitherShape(Number, Written);

    public static DividersPlan? Read(PieceBuilder piece, Fields? said, Material box)
    {
        if (said is null || !said.Has("dividers"))
            return null;
        var place = said.PlaceOf("dividers");
        var usual = piece.Materials.Has("dividers") ? piece.Materials.Get("dividers", place) : box;
        if (said.Map("dividers") is not { } fields)
            return new DividersPlan(said.Count("dividers"), FromSideToSide: false, usual, Height: null, place);
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : usual;
        return new DividersPlan(
            fields.Count("count"),
            fields.Text("run") == "from side to side",
            material,
            fields.LengthOrNull("height", "divider height"),
            place
        );
    }
}
