namespace Dryfit.Casework;

/// <summary>House rules: doors: their members, grooves and the play of what they hold.</summary>
public static class DoorRules
{
    private const string Section = "doors";

    public static Rule DoorStile { get; } =
        new(
            Section,
            "stiles",
            "2 1/4\"",
            "60 mm",
            "Width of the stiles of framed and glazed doors.",
            "1 1/2 to 3 in: published shop guide"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DoorRail { get; } =
        new(
            Section,
            "rails",
            "2 1/4\"",
            "60 mm",
            "Width of the rails of framed and glazed doors.",
            "1 1/2 to 3 in: published shop guide"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DoorGrooveDepth { get; } =
        new(
            Section,
            "groove depth",
            "3/8\"",
            "10 mm",
            "Depth of the groove in stiles and rails; the stub tenon is as long.",
            "3/8 in: published cope-and-stick rail arithmetic"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DoorGrooveWidth { get; } =
        new(
            Section,
            "groove width",
            "1/4\"",
            "6 mm",
            "Width of that groove; the stub tenon is as thick.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PanelPlaySide { get; } =
        new(
            Section,
            "panel play across",
            "1/8\"",
            "2 mm",
            "Room for a panel in its groove, each side across its grain.",
            "1/8 in: published raised-panel tutorial"
        );
    public static Rule PanelPlayEnd { get; } =
        new(
            Section,
            "panel play along",
            "1/16\"",
            "1 mm",
            "Room for a panel in its groove, each end along its grain.",
            "1/16 in: published raised-panel tutorial"
        );
    public static Rule PanelPlaySheet { get; } =
        new(
            Section,
            "sheet panel play",
            "1/32\"",
            "1 mm",
            "Room for a panel of sheet goods in its groove, each side; it hardly moves.",
            Rule.Practice
        );
    public static Rule GlassPlay { get; } =
        new(Section, "glass play", "1/16\"", "1.5 mm", "Room around a pane in its rabbet, each side.", Rule.Practice);
    public static Rule DoorLip { get; } =
        new(Section, "lip", "1/4\"", "6 mm", "Thickness of the wood in front of the groove.", Rule.Practice);
    public static Rule BarWidth { get; } =
        new(Section, "bars", "7/8\"", "22 mm", "Width of the bars of a barred door.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BarRabbet { get; } =
        new(
            Section,
            "bar rabbet",
            "1/4\"",
            "6 mm",
            "How far each pane lies on a bar of a barred door, its play included.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule RaiseBevel { get; } =
        new(
            Section,
            "bevel",
            "1 1/2\"",
            "35 mm",
            "Width of the bevel of a raised panel, from its tongue to its field.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule RaiseFillet { get; } =
        new(
            Section,
            "fillet",
            "1/16\"",
            "1.5 mm",
            "Height of the step between the bevel and the field of a raised panel.",
            Rule.Practice
        );
    public static Rule MeetingRebate { get; } =
        new(
            Section,
            "meeting rebate",
            "3/8\"",
            "10 mm",
            "How far the doors of a pair lap over each other where they meet in a rebate.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule MeetingRoom { get; } =
        new(
            Section,
            "meeting room",
            "1/32\"",
            "0.5 mm",
            "Room between the two in such a rebate, front to back.",
            Rule.Practice
        );

    internal static IReadOnlyList<Rule> All { get; } =
    [
        DoorStile,
        DoorRail,
        DoorGrooveDepth,
        DoorGrooveWidth,
        PanelPlaySide,
        PanelPlayEnd,
        PanelPlaySheet,
        GlassPlay,
        DoorLip,
        BarWidth,
        BarRabbet,
        RaiseBevel,
        RaiseFillet,
        MeetingRebate,
        MeetingRoom,
    ];
}
