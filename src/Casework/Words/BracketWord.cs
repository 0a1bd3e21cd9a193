using Dryfit.Casework.Building;
using Dryfit.Casework.Feet;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>brackets:</c> bracket feet under a carcase.</summary>
internal static class BracketWord
{
    public static RecordShape Word { get; } =
        new(
            "brackets",
            "Bracket feet: boards on edge at the corners, mitred at the front, sawn to a curve on the inside, with a square block glued in behind each corner that carries the weight.",
            "brackets: { height: 5, length: 8, shape: ogee }",
            () =>
                [
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of the feet.",
                        Default: "the shop's stand height"
                    ),
                    new(
                        "length",
                        new LengthShape(LengthSign.AboveZero),
                        "Along the front and the ends.",
                        Default: "one and a half times the height"
                    ),
                    new(
                        "foot",
                        new LengthShape(LengthSign.AboveZero),
                        "What stands on the floor, from the corner.",
                        Default: "a third of the length"
                    ),
                    new(
                        "strip",
                        new LengthShape(LengthSign.AboveZero),
                        "What is left of the height at the inner end.",
                        Default: "a third of the height"
                    ),
                    new(
                        "shape",
                        new ChoiceShape("cove", "ogee", "straight"),
                        "How the inside is sawn.",
                        Default: "cove"
                    ),
                    new(
                        "block",
                        new LengthShape(LengthSign.AboveZero),
                        "Side of the square blocks behind the corners.",
                        Default: "as wide as the foot leaves behind the boards"
                    ),
                ]
        );

    public static BracketsPlan Read(Fields stand, PieceBuilder piece, Material material)
    {
        var fields = stand.Map("brackets");
        var height = Height(stand, piece);
        var length = fields?.LengthOrNull("length", "bracket length") ?? (height * 3 / 2).As("bracket length");
        var foot = fields?.LengthOrNull("foot", "foot") ?? (length / 3).As("foot");
        return new BracketsPlan(
            material,
            height,
            length,
            foot,
            fields?.LengthOrNull("strip", "strip") ?? (height / 3).As("strip"),
            fields?.LengthOrNull("block", "block") ?? (foot - material.Thickness).As("block"),
            fields?.Text("shape") switch
            {
                "ogee" => BracketShape.Ogee,
                "straight" => BracketShape.Straight,
                _ => BracketShape.Cove,
            },
            stand.PlaceOf("brackets")
        );
    }

    /// <summary>How high the feet are; also how far they lift what stands on them.</summary>
    public static Figure Height(Fields stand, PieceBuilder piece)
    {
        var said =
            stand.Map("brackets") is { } fields ? fields.LengthOrNull("height", "bracket height")
            : stand.Node("brackets") is Scalar { IsEmpty: false } ? stand.LengthOrNull("brackets", "bracket height")
            : null;
        return said ?? piece.Shop.Length(StandRules.StandHeight, "bracket height");
    }
}
