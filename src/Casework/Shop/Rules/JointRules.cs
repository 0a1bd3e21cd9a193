namespace Dryfit.Casework;

/// <summary>House rules: depths and play of joints.</summary>
public static class JointRules
{
    private const string Section = "joints";

    public static Rule DadoDepth { get; } =
        new(
            Section,
            "dado depth",
            "1/4\"",
            "6 mm",
            "Depth of dados that take panels.",
            "a third to half of the thickness: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule RabbetWidth { get; } =
        new(Section, "back rabbet", "3/8\"", "9 mm", "How far a rabbeted back laps into the side.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BackGrooveDepth { get; } =
        new(Section, "back groove depth", "1/4\"", "6 mm", "Depth of the groove for a slid-in back.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BackGrooveInset { get; } =
        new(
            Section,
            "back groove inset",
            "1/2\"",
            "12 mm",
            "From the back edge to the groove for a slid-in back.",
            Rule.Practice
        );
    public static Rule BackPlay { get; } =
        new(
            Section,
            "back play",
            "1/32\"",
            "0.5 mm",
            "Room at the bottom of a back's groove, each side.",
            Rule.Practice
        );
    public static Rule DowelDiameter { get; } =
        new(
            Section,
            "dowel",
            "3/8\"",
            "8 mm",
            "Diameter of dowels.",
            "a third to half of the thinner part: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DowelLength { get; } =
        new(Section, "dowel length", "2\"", "40 mm", "Length of dowels; half goes into each part.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DowelRoom { get; } =
        new(
            Section,
            "dowel room",
            "1/16\"",
            "1 mm",
            "How much deeper each dowel hole is than its dowel.",
            Rule.Practice
        );

    internal static IReadOnlyList<Rule> All { get; } =
    [DadoDepth, RabbetWidth, BackGrooveDepth, BackGrooveInset, BackPlay, DowelDiameter, DowelLength, DowelRoom];
}
