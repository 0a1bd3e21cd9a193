namespace Dryfit.Casework;

/// <summary>House rules: knock-down fittings.</summary>
public static class ConnectorRules
{
    private const string Section = "connectors";
    private const string Memory = "hardware literature, from memory";

    public static Rule Cam { get; } =
        new(Section, "cam", "15 mm", "15 mm", "Diameter of the cam.", Memory) { Shape = Rule.AboveZero };
    public static Rule CamDepth { get; } =
        new(
            Section,
            "cam depth",
            "13.5 mm",
            "13.5 mm",
            "Depth of the hole for the cam, in the face of the part that ends.",
            Memory
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CamIn { get; } =
        new(Section, "cam in", "34 mm", "34 mm", "From the end to the middle of the cam.", Memory)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Bolt { get; } =
        new(
            Section,
            "bolt",
            "8 mm",
            "8 mm",
            "Diameter of the hole in the end, through which the bolt comes to the cam.",
            Memory
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Seat { get; } =
        new(
            Section,
            "seat",
            "5 mm",
            "5 mm",
            "Diameter of the hole in the face of the other part, into which the bolt is driven.",
            Memory
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule SeatDepth { get; } =
        new(Section, "seat depth", "11 mm", "11 mm", "Depth of that hole.", Memory) { Shape = Rule.AboveZero };

    internal static IReadOnlyList<Rule> All { get; } = [Cam, CamDepth, CamIn, Bolt, Seat, SeatDepth];
}
