using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>blind:</c> the end of a corner carcase that stands behind another run.</summary>
internal static class BlindWord
{
    public static RecordShape Word { get; } =
        new(
            "blind",
            "An end of the front that stands behind another run and is closed by a panel; the inside goes on behind it, and the doors take the rest.",
            "blind: { right: 640 }",
            () =>
                [
                    new(
                        "left",
                        new LengthShape(LengthSign.AboveZero),
                        "From the outside of the left end to the opening."
                    ),
                    new(
                        "right",
                        new LengthShape(LengthSign.AboveZero),
                        "From the outside of the right end to the opening."
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What the panel is made of.",
                        Default: "the carcase's own"
                    ),
                ]
        );

    public static BlindPlan? Read(Fields carcase, PieceBuilder piece, Material material)
    {
        if (carcase.Map("blind") is not { } fields)
            return null;
        if (fields.Has("left") == fields.Has("right"))
            throw new CannotBuildException(
                new InputError(
                    fields.Has("left")
                        ? "A carcase stands blind at one end, not at both."
                        : "How much of the front is blind is missing.",
                    fields.Place,
                    "blind: { right: 640 }, or left"
                )
            );
        var isLeft = fields.Has("left");
        return new(
            isLeft ? Direction.Left : Direction.Right,
            fields.Length(isLeft ? "left" : "right", "blind end"),
            fields.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material")) : material,
            fields.Place
        );
    }
}
