using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>face frame:</c> stiles, rails and mullions on the front of a carcase.</summary>
internal static class FaceFrameWord
{
    public static RecordShape Word { get; } =
        new(
            "face frame",
            "A frame on the front of the carcase, flush with its outside. Without it the carcase is frameless.",
            "face frame: { stiles: 1 3/4, rails: 1 1/2 }",
            () =>
                [
                    new(
                        "stiles",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the stiles.",
                        Default: "the shop's stiles"
                    ),
                    new(
                        "rails",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the rails.",
                        Default: "the shop's rails"
                    ),
                    new(
                        "mullions",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the uprights between openings.",
                        Default: "the shop's mullions"
                    ),
                    new("material", new NameShape("material"), "What it is made of.", Default: "the carcase's own"),
                    new(
                        "joint",
                        new ChoiceShape(
                            "pocket screws",
                            "dowels",
                            "mortise and tenon",
                            "through mortise and tenon",
                            "half laps"
                        ),
                        "How it is put together.",
                        Default: "the shop's joint"
                    ),
                ]
        );

    public static FacePlan? Read(Fields carcase, PieceBuilder piece, Material body)
    {
        if (!carcase.Has("face frame") || carcase.Text("face frame") == "none")
            return null;
        var fields = carcase.Map("face frame");
        var material = fields?.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : body;
        return new FacePlan(
            material,
            fields?.LengthOrNull("stiles", "frame stile")
                ?? piece.Shop.Length(FaceFrameRules.StileWidth, "frame stile"),
            fields?.LengthOrNull("rails", "frame rail")
                ?? piece.Shop.Length(FaceFrameRules.FrameRailWidth, "frame rail"),
            fields?.LengthOrNull("mullions", "mullion") ?? piece.Shop.Length(FaceFrameRules.MullionWidth, "mullion"),
            (fields?.Text("joint") ?? piece.Shop.Choice(FaceFrameRules.FrameJoint)) switch
            {
                "dowels" => FrameJoint.Dowels,
                "mortise and tenon" => FrameJoint.MortiseAndTenon,
                "through mortise and tenon" => FrameJoint.ThroughTenons,
                "half laps" => FrameJoint.HalfLaps,
                _ => FrameJoint.PocketScrews,
            }
        );
    }
}
