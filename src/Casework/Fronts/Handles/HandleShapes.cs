using Dryfit.Casework.Words;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts.Handles;

/// <summary>What the recipe may say of the pull or knob of a front.</summary>
internal static class HandleShapes
{
    public static IReadOnlyList<Field> Fields { get; } =
    [
        new(
            "pull",
            new EitherShape(new ChoiceShape("none"), HardwareWord.Handle),
            "Its handle: pull or knob by the house rules, a family of the shop file by its name, or none.",
            Default: "the recipe's pulls; where it names none, none"
        ),
        new(
            "pull at",
            new ChoiceShape("top", "middle", "bottom"),
            "Where the handle of a door sits, top to bottom.",
            Default: "as near as it can be to the shop's height for handles"
        ),
    ];
}
