using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Casework.Words;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>What the recipe may say of a drawer.</summary>
internal static class DrawerShapes
{
    private static readonly ChoiceShape Joints = new(
        "rabbeted",
        "dadoed",
        "dovetailed",
        "half-blind dovetailed",
        "box jointed",
        "screwed"
    );

    /// <summary>The words of the short form.</summary>
    public static PhraseShape Spoken { get; } = new(FrontShapes.Hangs, Joints, HardwareWord.Running);

    public static RecordShape Written { get; } =
        new(
            "drawer",
            "A drawer: a box on slides with a front screwed to it. `drawer` alone, or `drawer: dovetailed, inset`, says enough.",
            "drawer:\n  front: cherry\n  box: birch\n  joint: dovetailed\n  bottom: backs\n  slides: under\n",
            () =>
                [
                    FrontShapes.Hang,
                    FrontShapes.Gap,
                    FrontShapes.Overlay,
                    new(
                        "front",
                        new NameShape("material"),
                        "Material of the front.",
                        Default: "the material called `fronts`, else the carcase's own"
                    ),
                    new(
                        "own front",
                        new YesNoShape(),
                        "Whether the front of the box itself closes the opening, with no front screwed to it: inset, dovetailed or box jointed, on wooden runners.",
                        Default: "no"
                    ),
                    new(
                        "box",
                        new NameShape("material"),
                        "Material of the sides, box front and back.",
                        Default: "the material called `boxes`, else the carcase's own"
                    ),
                    new(
                        "joint",
                        Joints,
                        "How the corners of the box are made. Half-blind dovetails are cut at the front, through ones at the back.",
                        Default: "rabbeted"
                    ),
                    new(
                        "bottom",
                        new NameShape("material"),
                        "Material of the bottom.",
                        Default: "the material called `bottoms`, else `backs`, else that of the box"
                    ),
                    new(
                        "bottom set",
                        new ChoiceShape("grooved", "slid in", "planted"),
                        "The bottom in a groove all round, slid in under the back and screwed to it, or screwed on from below.",
                        Default: "grooved"
                    ),
                    new(
                        "box height",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of the box.",
                        Default: "the opening less the room above and below, rounded down to the shop's step"
                    ),
                    new("old box", OldBoxPlan.Shape, "An old box that is used again.", Default: "a new box"),
                    new("dividers", DividersPlan.Shape, "Dividers in the box.", Default: "none"),
                    new(
                        "slides",
                        HardwareWord.Slide,
                        "What it runs on: side or under slides by the house rules, a family of the shop file by its name, wooden runners, or side hung on strips in grooves of its sides.",
                        Default: "the recipe's slides, else side"
                    ),
                    new(
                        "slide length",
                        new LengthShape(LengthSign.AboveZero),
                        "Length of the slides; the box is as long.",
                        Default: "the longest that the depth takes"
                    ),
                    HandleShapes.Fields[0],
                    FrontShapes.Edging("the applied front"),
                ]
        );

    public static Shape Shape { get; } = new EitherShape(new BareShape(), Spoken, Written);
}
