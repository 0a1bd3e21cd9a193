using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>top:</c> a board that lies on the carcase, with its overhangs.</summary>
internal static class TopWord
{
    public static RecordShape Overhang { get; } =
        new(
            "overhang",
            "How far a top reaches past the outside of its carcase on each side; overlaid fronts stand before that outside, by their thickness and a little more.",
            "overhang: { front: 3/4, ends: 3/4 }",
            () =>
                [
                    new("front", new LengthShape(), "Past the front.", Default: "0"),
                    new("ends", new LengthShape(), "Past both ends.", Default: "0"),
                    new("left", new LengthShape(), "Past the left end.", Default: "as ends"),
                    new("right", new LengthShape(), "Past the right end.", Default: "as ends"),
                    new("back", new LengthShape(), "Past the back.", Default: "0"),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "top",
            "A top on the carcase, screwed from below. Its thickness counts in the height of the carcase, its overhang not.",
            "top: { material: tops, overhang: { front: 3/4, ends: 3/4 } }",
            () =>
                [
                    new(
                        "material",
                        new NameShape("material"),
                        "What it is made of.",
                        Default: "the material called tops, or the carcase's own"
                    ),
                    new(
                        "overhang",
                        new EitherShape(new LengthShape(), Overhang),
                        "One for front and ends, or by side.",
                        Default: "none"
                    ),
                    new(
                        "edging",
                        new NameShape("material"),
                        "The bands on its front and ends, for a top of sheet goods: a material as thick as the bands; they count in its size.",
                        Default: "none"
                    ),
                    new("edge", EdgeWord.Shape, "The shape run along its front and ends.", Default: "square"),
                ]
        );

    public static TopPlan? Read(Fields carcase, PieceBuilder piece, Material body)
    {
        if (!carcase.Has("top") || carcase.Text("top") == "none")
            return null;
        var fields = carcase.Map("top");
        var material =
            fields?.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : piece.Materials.Has("tops") ? piece.Materials.Get("tops", carcase.Place)
            : body;
        return ReadOverhang(fields, material) with
        {
            Edging = fields?.Text("edging") is { } bands ? piece.Materials.Get(bands, fields.PlaceOf("edging")) : null,
            Edge = fields is null
                ? null
                : EdgeWord.Read(fields, "edge", piece.Scope, Direction.Front, Direction.Left, Direction.Right),
        };
    }

    /// <summary>A top of a material with the overhangs that are said under <c>overhang</c>.</summary>
    public static TopPlan ReadOverhang(Fields? fields, Material material)
    {
        var none = Figure.Given("no overhang", Length.Zero, new TradeOrigin("nothing said"));
        if (fields?.Map("overhang") is { } sides)
        {
            var ends = sides.LengthOrNull("ends", "end overhang") ?? none;
            return new TopPlan(
                material,
                sides.LengthOrNull("front", "front overhang") ?? none,
                sides.LengthOrNull("left", "left overhang") ?? ends,
                sides.LengthOrNull("right", "right overhang") ?? ends,
                sides.LengthOrNull("back", "back overhang") ?? none
            );
        }
        var all = fields?.LengthOrNull("overhang", "overhang") ?? none;
        return new TopPlan(material, all, all, all, none);
    }
}
