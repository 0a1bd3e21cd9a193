using Dryfit.Casework.Building;
using Dryfit.Casework.Facings;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Sides;

/// <summary><c>sides:</c> sides of a carcase that are frames with panels.</summary>
internal static class SidesWord
{
    private static readonly LengthShape Size = new(LengthSign.AboveZero);

    private static RecordShape Word { get; } =
        new(
            "sides",
            "Sides that are frames with panels, in place of boards: rails tenoned into stiles, panels loose in their grooves. What meets a side is jointed to its stiles and rails; nothing is fixed to a panel, so a drawer slide, a rack or a pole may ask for a muntin or a middle rail behind it.",
            "sides: { framed: both, stiles: 2 1/2, middle rails: 1, muntins: 1 }",
            () =>
                [
                    new(
                        "framed",
                        new ChoiceShape("both", "left", "right"),
                        "Which of them; the other is a board.",
                        Default: "both"
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What stiles, rails and muntins are made of.",
                        Default: "as the fronts"
                    ),
                    new(
                        "panel",
                        new NameShape("material"),
                        "What the panels are made of.",
                        Default: "the material called panels, or backs"
                    ),
                    new("stiles", Size, "Width of the stiles.", Default: "the shop's door stiles"),
                    new("rails", Size, "Width of the rails.", Default: "the shop's door rails"),
                    new("top rail", Size, "Width of the top rail, where it differs.", Default: "as the rails"),
                    new(
                        "bottom rail",
                        Size,
                        "Width of the bottom rail, where it differs.",
                        Default: "as the rails, and what the side goes down below the bottom"
                    ),
                    .. FrameShapes.Divisions.Where(field => field.Key != "bars"),
                    FrameShapes.Raised,
                    new(
                        "joint",
                        new ChoiceShape("mortise and tenon", "stub tenons"),
                        "How rails meet stiles: haunched tenons in mortises deeper than the groove, or stub tenons in the groove alone.",
                        Default: "mortise and tenon"
                    ),
                ]
        );

    public static Shape Shape { get; } =
        new EitherShape(new ChoiceShape("framed", "framed left", "framed right"), Word);

    public static SidesPlan? Read(Fields carcase, PieceBuilder piece, Material fronts)
    {
        if (!carcase.Has("sides"))
            return null;
        var place = carcase.PlaceOf("sides");
        Refuse(carcase, place);
        var said = carcase.Map("sides");
        var ends = said is null ? carcase.Text("sides")?.Split(' ')[^1] : said.Text("framed");
        var rail = said?.LengthOrNull("rails", "rail") ?? piece.Shop.Length(DoorRules.DoorRail, "rail");
        var bottom = said?.LengthOrNull("bottom rail");
        return new(
            ends != "right",
            ends != "left",
            new()
            {
                Called = "side",
                Material = said?.Text("material") is { } name
                    ? piece.Materials.Get(name, said.PlaceOf("material"))
                    : fronts,
                Panel = FacedWord.PanelOf(said, piece, fronts, place),
                Stile = said?.LengthOrNull("stiles", "stile") ?? piece.Shop.Length(DoorRules.DoorStile, "stile"),
                TopRail = said?.LengthOrNull("top rail") ?? rail,
                BottomRail = bottom ?? rail,
                MiddleRails = said is null ? null : Division.ReadRails(piece, said),
                Muntins = said is null ? null : Division.ReadMuntins(piece, said),
                Raised = RaisedPanel.Read(piece, said, null, DoorKind.Framed, place),
                IsTenoned = said?.Text("joint") != "stub tenons",
                Place = place,
            },
            bottom is not null
        );
    }

    private static void Refuse(Fields carcase, SourcePlace place)
    {
        foreach (var key in (ReadOnlySpan<string>)["diagonal", "canted"])
        {
            if (carcase.Has(key))
                throw Refused($"The ends of a {key} carcase are boards.", place, "no sides:");
        }
        if (carcase.Map("stands on")?.Has("toe space") == true)
            throw Refused(
                "A toe space would cut the feet off the stiles of a framed side.",
                carcase.PlaceOf("stands on"),
                "a plinth, a plinth let in or planted, or legs"
            );
        if (carcase.Text("joint") == "shouldered dado")
            throw Refused(
                "Panels go into a framed side in plain dados.",
                carcase.PlaceOf("joint"),
                "joint: dado, or one without a dado"
            );
        if (carcase.Map("faced") is { } faced && (faced.Has("ends") || faced.Has("left end") || faced.Has("right end")))
            throw Refused(
                "A side that is a frame itself is not faced as well.",
                carcase.PlaceOf("faced"),
                "faced: { back: framed }, or no sides:"
            );
    }

    private static CannotBuildException Refused(string message, SourcePlace place, string wanted) =>
        new(new InputError(message, place, wanted));
}
