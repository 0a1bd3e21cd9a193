using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>back:</c> what closes a carcase behind, and how it is let in.</summary>
internal static class BackWord
{
    public static RecordShape Word { get; } =
        new(
            "back",
            "The back of a carcase.",
            "back: { material: backs, set: grooved }",
            () =>
                [
                    new(
                        "material",
                        new NameShape("material"),
                        "What it is made of.",
                        Default: "the material called backs, or the carcase's own"
                    ),
                    new(
                        "set",
                        new ChoiceShape("rabbeted", "grooved", "planted"),
                        "Let into rabbets of the sides, slid into grooves all round, or planted on the rear edges.",
                        Default: "rabbeted behind a face frame, grooved without one"
                    ),
                ]
        );

    public static Shape Shape { get; } =
        new EitherShape(new ChoiceShape("none", "rabbeted", "grooved", "planted"), Word);

    public static BackPlan? Read(Fields carcase, PieceBuilder piece, Material body, bool framed)
    {
        var fields = carcase.Map("back");
        var spoken = fields is null ? carcase.Text("back") : null;
        if (spoken == "none")
            return null;
        var material =
            fields?.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : piece.Materials.Has("backs") ? piece.Materials.Get("backs", carcase.Place)
            : body;
        var set = (fields?.Text("set") ?? spoken) switch
        {
            "rabbeted" => BackSet.Rabbeted,
            "grooved" => BackSet.Grooved,
            "planted" => BackSet.Planted,
            _ => framed ? BackSet.Rabbeted : BackSet.Grooved,
        };
        return new BackPlan(material, set);
    }
}
