using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>shelves:</c> fixed or adjustable, in every bay without drawers or in one.</summary>
internal static class ShelvesWord
{
    public static RecordShape Word { get; } =
        new(
            "shelves",
            "Shelves of a bay: all jointed in, or all on pins in bored rows. Said for a carcase they stand behind each of its openings that has no drawer.",
            "shelves: { adjustable: 2 }",
            () =>
                [
                    new("adjustable", new CountShape(0, 50), "How many shelves on pins."),
                    new("fixed", new CountShape(0, 50), "How many shelves jointed in."),
                    new(
                        "material",
                        new NameShape("material"),
                        "What they are made of.",
                        Default: "the material called shelves, or the carcase's own"
                    ),
                    new(
                        "at",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 1, 50),
                        "Heights from the floor of the bay to the underside of each, from the lowest.",
                        Default: "spread evenly"
                    ),
                ]
        );

    public static ShelvesPlan? Read(Fields owner, PieceBuilder piece)
    {
        if (owner.Map("shelves") is not { } fields)
            return null;
        if (fields.Has("adjustable") == fields.Has("fixed"))
            throw new CannotBuildException(
                new InputError(
                    fields.Has("fixed") ? "Shelves are fixed or adjustable, not both." : "How many shelves is missing.",
                    fields.Place,
                    "adjustable: 2, or fixed: 2"
                )
            );
        var adjustable = fields.Has("adjustable");
        var count = fields.Count(adjustable ? "adjustable" : "fixed");
        var material =
            fields.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : piece.Materials.Has("shelves") ? piece.Materials.Get("shelves", fields.Place)
            : null;
        var heights = fields
            .List("at")
            .OfType<Scalar>()
            .Select((s, n) => piece.Scope.Length(s, $"height of shelf {n + 1}"))
            .ToList();
        return new ShelvesPlan(count, adjustable, material, heights, fields.Place);
    }
}
