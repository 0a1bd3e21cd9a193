using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>The recipe's <c>hardware:</c>, and how hardware is chosen by name at a place.</summary>
internal static class HardwareWord
{
    /// <summary>Hinges by kind or by the name of a family of the shop file.</summary>
    public static Shape Hinge { get; } = new EitherShape(new ChoiceShape("cup", "butt"), new NameShape("hinge"));

    /// <summary>What a drawer may run on without a family named.</summary>
    public static ChoiceShape Running { get; } = new("side", "under", "runners", "side hung");

    /// <summary>Slides by kind or by the name of a family of the shop file, or wood.</summary>
    public static Shape Slide { get; } = new EitherShape(Running, new NameShape("slide"));

    /// <summary>Handles by kind or by the name of a family of the shop file.</summary>
    public static Shape Handle { get; } = new EitherShape(new ChoiceShape("pull", "knob"), new NameShape("handle"));

    public static RecordShape Word { get; } =
        new(
            "hardware",
            "Which hinges, slides and fittings are used where nothing else is said: by kind, or by the name that the shop file has them under.",
            "hardware: { slides: under, hinges: cup }\n",
            () =>
                [
                    new(
                        "hinges",
                        Hinge,
                        "The hinges of doors.",
                        Default: "cup hinges; butt hinges on inset doors in a face frame"
                    ),
                    new("slides", Slide, "The slides of drawers.", Default: "side slides by the house rules"),
                    new("pulls", Handle, "The handles of doors and drawers.", Default: "by the house rules"),
                    new(
                        "shelf pins",
                        new NameShape("shelf pin"),
                        "The pins under adjustable shelves.",
                        Default: "by the house rules"
                    ),
                    new(
                        "connectors",
                        new NameShape("connector"),
                        "The knock-down fittings of carcases.",
                        Default: "by the house rules"
                    ),
                ]
        );

    /// <summary>What each kind of name may stand for, as its shapes call it.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<HardwareKind>> Named { get; } =
        new Dictionary<string, IReadOnlyList<HardwareKind>>(StringComparer.Ordinal)
        {
            ["hinge"] = HardwareKinds.Hinges,
            ["slide"] = HardwareKinds.Slides,
            ["handle"] = HardwareKinds.Handles,
            ["shelf pin"] = [HardwareKinds.ShelfPin],
            ["connector"] = [HardwareKinds.Connector],
        };
}
