using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Facings;

/// <summary><c>faced:</c> ends and back that are seen, as of an island in the room.</summary>
internal static class FacedWord
{
    private static readonly ChoiceShape Kind = new("slab", "framed");

    public static RecordShape Word { get; } =
        new(
            "faced",
            "What is planted on the ends and the back of a carcase that is seen from there: a slab, or a frame with panels. It counts in the size of the carcase and goes down to the floor, or to legs.",
            "faced: { ends: framed, back: framed, muntins: 1 }",
            () =>
                [
                    new("ends", Kind, "Both ends.", Default: "not faced"),
                    new("left end", Kind, "The left end.", Default: "as ends"),
                    new("right end", Kind, "The right end.", Default: "as ends"),
                    new("back", Kind, "The back.", Default: "not faced"),
                    new(
                        "material",
                        new NameShape("material"),
                        "What slabs, stiles and rails are made of.",
                        Default: "as the fronts"
                    ),
                    new(
                        "panel",
                        new NameShape("material"),
                        "What the panels of frames are made of.",
                        Default: "the material called panels, or backs"
                    ),
                    new(
                        "stiles",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of stiles and muntins.",
                        Default: "the shop's door stiles"
                    ),
                    new(
                        "rails",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the rails.",
                        Default: "the shop's door rails"
                    ),
                    new(
                        "muntins",
                        new CountShape(0, 12),
                        "Uprights between the rails of each frame, with a panel on both sides.",
                        Default: "none: one panel"
                    ),
                ]
        );

    public static FacingPlan? Read(Fields carcase, PieceBuilder piece, Material fronts)
    {
        if (carcase.Map("faced") is not { } fields)
            return null;
        var ends = KindOf("ends");
        var (left, right, back) = (KindOf("left end") ?? ends, KindOf("right end") ?? ends, KindOf("back"));
        if (left is null && right is null && back is null)
            throw new CannotBuildException(
                new InputError("What is faced is missing.", fields.Place, "ends, left end, right end or back")
            );
        foreach (var key in (ReadOnlySpan<string>)["head", "scribes", "filler"])
        {
            if (carcase.Has(key))
                throw new CannotBuildException(
                    new InputError(
                        $"A carcase with faced ends or back takes no '{key}'.",
                        carcase.PlaceOf(key),
                        $"one of faced, {key}"
                    )
                );
        }
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : fronts;
        var stile =
            fields.LengthOrNull("stiles", "facing stile") ?? piece.Shop.Length(DoorRules.DoorStile, "facing stile");
        var rail = fields.LengthOrNull("rails", "facing rail") ?? piece.Shop.Length(DoorRules.DoorRail, "facing rail");
        var muntins = fields.Count("muntins");
        return new(
            left,
            right,
            back,
            material,
            new()
            {
                Called = "facing",
                Material = material,
                Panel = PanelOf(fields, piece, fronts, fields.Place),
                Stile = stile,
                TopRail = rail,
                BottomRail = rail,
                Muntins = muntins == 0 ? null : new(muntins, stile),
                Place = fields.Place,
            },
            fields.Place
        );

        FacingKind? KindOf(string key) =>
            fields.Text(key) switch
            {
                "slab" => FacingKind.Slab,
                "framed" => FacingKind.Framed,
                _ => null,
            };
    }

    /// <summary>What panels are made of where nothing is said.</summary>
    public static Material PanelOf(Fields? fields, PieceBuilder piece, Material fronts, SourcePlace place)
    {
        if (fields?.Text("panel") is { } name)
            return piece.Materials.Get(name, fields.PlaceOf("panel"));
        foreach (var usual in (ReadOnlySpan<string>)["panels", "backs"])
        {
            if (piece.Materials.Has(usual))
                return piece.Materials.Get(usual, place);
        }
        return fronts;
    }
}
