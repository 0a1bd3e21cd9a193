using Dryfit.Casework.Fronts;
using Dryfit.Casework.Words;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>What the recipe may say of a drawer.</summary>
internal static class DrawerShapes
{
    /// <summary>The words of the short form.</summary>
    public static PhraseShape Spoken { get; } = new(FrontShapes.Hangs);

    public static RecordShape Written { get; } =
        new(
            "drawer",
            "A drawer: a box on slides with a front screwed to it. `drawer` alone, or `drawer: inset`, says enough.",
            "drawer:\n  front: cherry\n  box: birch\n  bottom: backs\n  box height: 4\n",
            () =>
                [
                    FrontShapes.Hang,
                    FrontShapes.Gap,
                    FrontShapes.Overlay,
                    new(
                        "front",
                        new NameShape("material"),
                        "Material of the applied front.",
                        Default: "the material called `fronts`, else the carcase's own"
                    ),
                    new(
                        "box",
                        new NameShape("material"),
                        "Material of the sides, box front and back.",
                        Default: "the material called `boxes`, else the carcase's own"
                    ),
                    new(
                        "bottom",
                        new NameShape("material"),
                        "Material of the bottom.",
                        Default: "the material called `bottoms`, else `backs`, else that of the box"
                    ),
                    new(
                        "box height",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of the box.",
                        Default: "the opening less the shop's room above and below, rounded down"
                    ),
                    new(
                        "slides",
                        HardwareWord.Slide,
                        "Its slides: side or under by the house rules, or a family of the shop file by its name.",
                        Default: "the recipe's slides, else side"
                    ),
                    new(
                        "slide length",
                        new LengthShape(LengthSign.AboveZero),
                        "Length of the slides; the box is as long.",
                        Default: "the longest that the depth takes"
                    ),
                    FrontShapes.Edging("the applied front"),
                ]
        );

    public static Shape Shape { get; } = new EitherShape(new BareShape(), Spoken, Written);
}
