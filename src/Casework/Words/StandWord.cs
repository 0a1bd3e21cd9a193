using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>stands on:</c> legs and rails, a plinth, a toe space, or the carcase's own sides.</summary>
internal static class StandWord
{
    private static readonly string[] Kinds = ["legs", "plinth", "toe space"];

    public static RecordShape Word { get; } =
        new(
            "stands on",
            "What carries a carcase. Its height counts in the height of the carcase.",
            "stands on: { legs: 2 1/4, rails: 3, height: 6 }",
            () =>
                [
                    new(
                        "legs",
                        new EitherShape(new LengthShape(LengthSign.AboveZero), LegWords.Legs),
                        "Square legs of this thickness, or legs made from a material."
                    ),
                    new(
                        "rails",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the rails between the legs.",
                        Default: "the shop's stand rails"
                    ),
                    new(
                        "at",
                        new ChoiceShape("both ends", "left end", "right end"),
                        "Where there are legs; at the other end the side goes down to the floor.",
                        Default: "both ends"
                    ),
                    new(
                        "plinth",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of a plinth: a frame of boards on edge."
                    ),
                    new(
                        "setback",
                        new LengthShape(),
                        "How far the plinth stays behind the front.",
                        Default: "the shop's plinth setback"
                    ),
                    new(
                        "toe space",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of a toe space cut out of the sides."
                    ),
                    new(
                        "toe depth",
                        new LengthShape(LengthSign.AboveZero),
                        "Depth of the toe space.",
                        Default: "the shop's toe depth"
                    ),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of the legs.",
                        Default: "the shop's stand height"
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What legs, rails or plinth are made of.",
                        Default: "the carcase's own"
                    ),
                ]
        );

    /// <summary>Reads what a body stands on.</summary>
    /// <param name="body">The material where nothing else is said.</param>
    public static StandPlan Read(Fields? fields, PieceBuilder piece, Material body)
    {
        if (fields is null)
            return new NoStand();
        var said = Kinds.Where(fields.Has).ToList();
        if (said.Count != 1)
            throw new CannotBuildException(
                new InputError(
                    said.Count == 0 ? "What it stands on is missing." : "It cannot stand on two things.",
                    fields.Place,
                    "one of legs, plinth, toe space"
                )
            );
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : body;
        return said[0] switch
        {
            "legs" => ReadLegs(fields, piece, material),
            "plinth" => new PlinthPlan(
                material,
                fields.Length("plinth", "plinth height"),
                fields.LengthOrNull("setback") ?? piece.Shop.Length(StandRules.PlinthSetback)
            ),
            _ => new ToeSpacePlan(
                fields.Length("toe space", "toe space"),
                fields.LengthOrNull("toe depth") ?? piece.Shop.Length(StandRules.ToeDepth, "toe depth")
            ),
        };
    }

    /// <summary>How far a stand lifts a body, from what the recipe says of it; null for nothing or a toe space.</summary>
    public static Figure? Lift(Fields? fields, PieceBuilder piece)
    {
        if (fields is null || fields.Has("toe space"))
            return null;
        return fields.Has("plinth") ? fields.Length("plinth", "plinth height") : LegHeight(fields, piece);
    }

    private static Figure LegHeight(Fields fields, PieceBuilder piece) =>
        fields.LengthOrNull("height", "leg height") ?? piece.Shop.Length(StandRules.StandHeight, "leg height");

    private static LegsPlan ReadLegs(Fields fields, PieceBuilder piece, Material material)
    {
        var height = LegHeight(fields, piece);
        var rail = fields.LengthOrNull("rails", "stand rail") ?? piece.Shop.Length(StandRules.StandRail, "stand rail");
        if (rail.Length > height.Length)
            throw new CannotBuildException(
                new InputError(
                    "The rails are wider than the legs are high.",
                    fields.PlaceOf("rails"),
                    "rails no wider than the height of the legs"
                )
            );
        var at = fields.Text("at") ?? "both ends";
        var (left, right) = (at != "right end", at != "left end");
        if (fields.Map("legs") is not { } legs)
        {
            var square = fields.Length("legs", "leg width");
            return new LegsPlan(material, square, square, 1, material, rail, height, left, right);
        }
        var said = LegWords.Read(legs, piece, material);
        return new LegsPlan(said.Of, said.Width, said.Depth, said.Plies, material, rail, height, left, right)
        {
            Shape = said.Shape,
        };
    }
}
