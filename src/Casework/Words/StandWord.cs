using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Heads;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>stands on:</c> legs and rails, a plinth, a toe space, or the carcase's own sides.</summary>
internal static class StandWord
{
    private static readonly string[] Kinds = ["legs", "plinth", "brackets", "toe space"];

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
                        "joint",
                        new ChoiceShape("dowels", "mortise and tenon"),
                        "How the rails meet the legs.",
                        Default: "dowels"
                    ),
                    new(
                        "at",
                        new ChoiceShape("both ends", "left end", "right end"),
                        "Where there are legs; at the other end the side goes down to the floor.",
                        Default: "both ends"
                    ),
                    new("plinth", new LengthShape(LengthSign.AboveZero), "Height of a plinth."),
                    new(
                        "set",
                        new ChoiceShape("under", "let in", "planted"),
                        "How a plinth is set: a frame of boards on edge under the carcase; one board let in between sides that go down to the floor; or boards planted round the foot of such a carcase, mitred at the front.",
                        Default: "under"
                    ),
                    new(
                        "brackets",
                        new EitherShape(new LengthShape(LengthSign.AboveZero), BracketWord.Word, new BareShape()),
                        "Bracket feet: their height, or more."
                    ),
                    new(
                        "arch",
                        ArchWord.Shape,
                        "An arch in the lower edge of the rails between legs, or of a plinth: its rise, or more.",
                        Default: "straight"
                    ),
                    new(
                        "edge",
                        EdgeWord.Shape,
                        "The shape run along the upper edge of a planted plinth.",
                        Default: "square"
                    ),
                    HeadWord.Corners,
                    new(
                        "setback",
                        new LengthShape(),
                        "How far the plinth stays behind the front; no planted one does.",
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
                    "one of legs, plinth, brackets, toe space"
                )
            );
        RefuseUnasked(fields, said[0]);
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : body;
        return said[0] switch
        {
            "legs" => ReadLegs(fields, piece, material),
            "plinth" => ReadPlinth(fields, piece, material),
            "brackets" => BracketWord.Read(fields, piece, material),
            _ => new ToeSpacePlan(
                fields.Length("toe space", "toe space"),
                fields.LengthOrNull("toe depth") ?? piece.Shop.Length(StandRules.ToeDepth, "toe depth")
            ),
        };
    }

    /// <summary>What plays no part is refused, so that nobody waits for it.</summary>
    private static void RefuseUnasked(Fields fields, string kind)
    {
        var isPlinth = kind == "plinth";
        (string Key, bool Asked, string Wanted)[] keys =
        [
            ("set", isPlinth, "plinth: with its height"),
            ("corners", isPlinth && fields.Text("set") == "planted", "a plinth that is planted"),
            ("edge", isPlinth && fields.Text("set") == "planted", "a plinth that is planted"),
            ("arch", isPlinth || kind == "legs", "legs with rails, or a plinth"),
        ];
        foreach (var (key, asked, wanted) in keys)
        {
            if (fields.Has(key) && !asked)
                throw new CannotBuildException(
                    new InputError($"Nothing here takes '{key}'.", fields.PlaceOf(key), wanted)
                );
        }
    }

    /// <summary>How far a stand lifts a body, from what the recipe says of it; null for nothing or a toe space.</summary>
    public static Figure? Lift(Fields? fields, PieceBuilder piece)
    {
        if (fields is null || fields.Has("toe space"))
            return null;
        if (fields.Has("plinth"))
            return fields.Text("set") is "let in" or "planted" ? null : fields.Length("plinth", "plinth height");
        return fields.Has("brackets") ? BracketWord.Height(fields, piece) : LegHeight(fields, piece);
    }

    private static Figure LegHeight(Fields fields, PieceBuilder piece) =>
        fields.LengthOrNull("height", "leg height") ?? piece.Shop.Length(StandRules.StandHeight, "leg height");

    private static StandPlan ReadPlinth(Fields fields, PieceBuilder piece, Material material)
    {
        var height = fields.Length("plinth", "plinth height");
        var arch = ArchWord.Read(fields, height);
        switch (fields.Text("set"))
        {
            case "let in":
                return new LetInPlinthPlan(
                    material,
                    height,
                    fields.LengthOrNull("setback"),
                    arch,
                    fields.PlaceOf("plinth")
                );
            case "planted":
                var edge = EdgeWord.Read(fields, "edge", piece.Scope)?.Shape;
                return new PlantedPlinthPlan(
                    new SurroundPlan("plinth", material, height, edge, true, true, fields.PlaceOf("plinth"))
                    {
                        IsSplined = HeadWord.IsSplined(fields),
                    },
                    arch
                );
            default:
                return new PlinthPlan(
                    material,
                    height,
                    fields.LengthOrNull("setback") ?? piece.Shop.Length(StandRules.PlinthSetback),
                    arch
                );
        }
    }

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
        var arch = ArchWord.Read(fields, usual: null);
        var tenoned = fields.Text("joint") == "mortise and tenon";
        var at = fields.Text("at") ?? "both ends";
        var (left, right) = (at != "right end", at != "left end");
        if (fields.Map("legs") is not { } legs)
        {
            var square = fields.Length("legs", "leg width");
            return new LegsPlan(material, square, square, 1, material, rail, height, left, right)
            {
                Arch = arch,
                Tenoned = tenoned,
            };
        }
        var said = LegWords.Read(legs, piece, material);
        return new LegsPlan(said.Of, said.Width, said.Depth, said.Plies, material, rail, height, left, right)
        {
            Shape = said.Shape,
            Arch = arch,
            Tenoned = tenoned,
        };
    }
}
