namespace Dryfit.Casework;

/// <summary>House rules: worktops over a run.</summary>
public static class WorktopRules
{
    private const string Section = "worktops";
    private const string Memory = "hardware literature, from memory";

    public static Rule Pocket { get; } =
        new(
            Section,
            "bolt pocket",
            "1\"",
            "25 mm",
            "Diameter of the pocket for the nut of a worktop bolt, in the underside.",
            Memory
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PocketIn { get; } =
        new(Section, "bolt pocket in", "2 1/2\"", "65 mm", "From the joint to the middle of that pocket.", Memory)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Channel { get; } =
        new(Section, "bolt channel", "3/8\"", "10 mm", "Width of the channel from the pocket to the joint.", Memory)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CutOutCorner { get; } =
        new(
            Section,
            "cut-out corners",
            "1/2\"",
            "12 mm",
            "Radius of the corners of a cut-out: at least that of the router's cutter.",
            Rule.Practice
        );

    internal static IReadOnlyList<Rule> All { get; } = [Pocket, PocketIn, Channel, CutOutCorner];
}
