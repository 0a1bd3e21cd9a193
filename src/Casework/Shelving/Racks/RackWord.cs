using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary><c>rack:</c> what holds bottles, stemmed glasses, plates or jars in a bay.</summary>
internal static class RackWord
{
    private static readonly (string Key, RackKind Kind)[] Kinds =
    [
        ("bottles", RackKind.Bottles),
        ("stemware", RackKind.Stemware),
        ("plates", RackKind.Plates),
        ("jars", RackKind.Jars),
    ];

    public static RecordShape Word { get; } =
        new(
            "rack",
            "A rack in a bay. Bottles lie in cradles, neck to the front; stemmed glasses hang by their feet under what is above; plates stand between rods; jars stand on shelves with a guard before them. The carcase's shelves stay out of a bay that a rack fills.",
            "rack: { bottles: 4, material: oak }\n",
            () =>
                [
                    new("bottles", new CountShape(1, 40), "How many rows of cradles, one above the other."),
                    new("stemware", new BareShape(), "Hangers for stemmed glasses under the ceiling of the bay."),
                    new("plates", new CountShape(1, 20), "How many rows of plates, stood on edge."),
                    new(
                        "jars",
                        new CountShape(1, 40),
                        "How many shelves with a guard, the floor of the bay not counted."
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What rails, hangers or shelves are made of.",
                        Default: "the carcase's own"
                    ),
                    new(
                        "pitch",
                        new LengthShape(LengthSign.AboveZero),
                        "From one bottle, slot or plate to the next.",
                        Default: "by the shop's rules for racks"
                    ),
                ]
        );

    public static RackPlan? Read(Fields owner, PieceBuilder piece)
    {
        if (owner.Map("rack") is not { } fields)
            return null;
        var said = Kinds.Where(kind => fields.Has(kind.Key)).ToList();
        if (said.Count != 1)
            throw new CannotBuildException(
                new InputError(
                    said.Count == 0
                        ? "What the rack is for is missing."
                        : $"A rack is for {said[0].Key} or for {said[1].Key}, not for both.",
                    said.Count == 0 ? fields.Place : fields.PlaceOf(said[1].Key),
                    "bottles: 4, stemware, plates: 2 or jars: 3"
                )
            );
        var (key, kind) = said[0];
        return new RackPlan(
            kind,
            fields.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material")) : null,
            kind == RackKind.Stemware ? 1 : fields.Count(key),
            fields.LengthOrNull("pitch"),
            fields.Place
        );
    }
}
