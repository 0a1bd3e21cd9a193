namespace Dryfit.Casework;

/// <summary>House rules: knobs on one screw.</summary>
public static class KnobRules
{
    private const string Section = "knobs";

    public static Rule Diameter { get; } =
        new(Section, "diameter", "1 1/4\"", "32 mm", "Diameter of a knob.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule StandsOff { get; } =
        new(Section, "stands off", "1\"", "25 mm", "How far a knob stands off the front.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Hole { get; } =
        new(Section, "hole", "3/16\"", "5 mm", "Diameter of the hole for the screw of a knob.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } = [Diameter, StandsOff, Hole];
}
