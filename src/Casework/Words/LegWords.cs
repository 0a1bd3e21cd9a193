using Dryfit.Casework.Building;
using Dryfit.Casework.Feet;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>legs:</c> in the long form: what they are made of, and what is done to them.</summary>
internal static class LegWords
{
    public static RecordShape Taper { get; } =
        new(
            "taper",
            "Legs that get thinner towards the floor, straight, from the underside of the rails: on one face (the inside as seen from the front), on the two inside faces, or on all four.",
            "taper: { to: 1, faces: two }",
            () =>
                [
                    new("to", new LengthShape(LengthSign.AboveZero), "What is left at the floor.", Required: true),
                    new("faces", new ChoiceShape("one", "two", "four"), "On how many faces.", Default: "two"),
                    new("below", new LengthShape(), "How far under the rails it begins.", Default: "right under them"),
                ]
        );

    public static RecordShape Legs { get; } =
        new(
            "legs",
            "Legs made from a material: whole, or glued up of several plies; square, or with a taper.",
            "legs: { of: posts, plies: 2 }",
            () =>
                [
                    new(
                        "of",
                        new NameShape("material"),
                        "What they are made of; where nothing is said, square ones as wide as `width` of the material of the stand."
                    ),
                    new("plies", new CountShape(1, 6), "How many thicknesses are glued together.", Default: "1"),
                    new(
                        "width",
                        new LengthShape(LengthSign.AboveZero),
                        "Across the front.",
                        Default: "the width of the stock, or its thickness"
                    ),
                    new("taper", Taper, "How they get thinner towards the floor.", Default: "square all the way"),
                    new("turning", TurningWord.Word, "What is turned on them, on the lathe.", Default: "nothing"),
                    new(
                        "edge",
                        EdgeWord.Shape,
                        "The shape run along their four edges, from the floor to the rails.",
                        Default: "sharp"
                    ),
                ]
        );

    /// <summary>Width and depth of legs, of what they are, of how many plies, and their shape.</summary>
    internal sealed record Said(Material Of, Figure Width, Figure Depth, int Plies, LegShape Shape);

    public static Said Read(Fields legs, PieceBuilder piece, Material material)
    {
        var shape = ReadShape(legs, piece);
        if (legs.Text("of") is not { } name)
        {
            if (legs.LengthOrNull("width", "leg width") is not { } square || legs.Has("plies"))
                throw new CannotBuildException(
                    new InputError(
                        "What the legs are made of is missing.",
                        legs.Place,
                        "of: a material; or width: for square legs"
                    )
                );
            return new Said(material, square, square, 1, shape);
        }
        var stock = piece.Materials.Get(name, legs.PlaceOf("of"));
        var width = legs.LengthOrNull("width", "leg width") ?? (stock.StockWidth ?? stock.Thickness).As("leg width");
        var plies = Math.Max(1, legs.Count("plies"));
        return new Said(stock, width, (stock.Thickness * plies).As("leg depth"), plies, shape);
    }

    private static LegShape ReadShape(Fields legs, PieceBuilder piece)
    {
        var edge = EdgeWord.Read(legs, "edge", piece.Scope)?.Shape;
        var turning = TurningWord.Read(legs, piece);
        string[] said = [.. ((string[])["taper", "turning", "edge"]).Where(legs.Has)];
        if (said.Length > 1)
            throw new CannotBuildException(
                new InputError(
                    $"Legs have one of taper, turning and edge, not both {said[0]} and {said[1]}.",
                    legs.PlaceOf(said[1]),
                    "one of taper, turning, edge"
                )
            );
        if (turning is not null && legs.Count("plies") > 1)
            throw new CannotBuildException(
                new InputError(
                    "A turned leg is one piece of wood, not plies.",
                    legs.PlaceOf("plies"),
                    "a material as thick as the blank"
                )
            );
        if (legs.Map("taper") is not { } taper)
            return new LegShape(null, edge, turning);
        return new LegShape(
            new TaperPlan(
                taper.Length("to", "width at the floor"),
                taper.Text("faces") switch
                {
                    "one" => 1,
                    "four" => 4,
                    _ => 2,
                },
                taper.LengthOrNull("below", "start of the taper")
                    ?? Figure.Given("start of the taper", Length.Zero, new TradeOrigin("right under the rails")),
                taper.Place
            ),
            Edge: null,
            Turning: null
        );
    }
}
