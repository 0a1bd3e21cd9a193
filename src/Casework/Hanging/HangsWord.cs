using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Hanging;

/// <summary><c>hangs on:</c> what a wall carcase hangs by.</summary>
internal static class HangsWord
{
    public static RecordShape Word { get; } =
        new(
            "hangs on",
            "How a carcase hangs on a wall: rails behind its back, or a pair of bevelled cleats. What the wall bears, and which fixings it takes, is for the wall itself, the maker of the fixings and local practice to say.",
            "hangs on: { rails: 80 }",
            () =>
                [
                    new(
                        "rails",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of the two rails behind the back, under the top and over the bottom, that are screwed to the wall."
                    ),
                    new(
                        "cleat",
                        new LengthShape(LengthSign.AboveZero),
                        "Width of a bevelled cleat behind the back that hooks over one on the wall."
                    ),
                    new("material", new NameShape("material"), "What they are made of.", Default: "the carcase's own"),
                ]
        );

    public static HangPlan? Read(Fields carcase, PieceBuilder piece, Material body)
    {
        if (carcase.Map("hangs on") is not { } fields)
            return null;
        if (fields.Has("rails") == fields.Has("cleat"))
            throw new CannotBuildException(
                new InputError(
                    fields.Has("rails") ? "It hangs on rails or on a cleat." : "What it hangs on is missing.",
                    fields.Place,
                    "one of rails, cleat"
                )
            );
        if (carcase.Has("stands on"))
            throw new CannotBuildException(
                new InputError(
                    "A carcase that hangs on the wall stands on nothing.",
                    carcase.PlaceOf("stands on"),
                    "one of hangs on, stands on"
                )
            );
        var isCleat = fields.Has("cleat");
        var width = isCleat ? fields.Length("cleat", "cleat width") : fields.Length("rails", "hanging rail width");
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : body;
        if (width.Length <= material.Thickness.Length * 2)
            throw new CannotBuildException(
                new InputError(
                    "That is too narrow to hold a carcase: screws and bevel want wood around them.",
                    fields.PlaceOf(isCleat ? "cleat" : "rails"),
                    "more than twice its thickness"
                )
            );
        return new(isCleat, width, material);
    }
}
