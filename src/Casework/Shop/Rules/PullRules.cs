namespace Dryfit.Casework;

/// <summary>House rules: pulls on two screws.</summary>
public static class PullRules
{
    private const string Section = "pulls";

    public static Rule Centres { get; } =
        new(Section, "centres", "3\"", "96 mm", "Between the two screws of a pull.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Length { get; } =
        new(Section, "length", "3 1/2\"", "106 mm", "Length of a pull over all.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Thickness { get; } =
        new(Section, "thickness", "3/8\"", "10 mm", "How thick a pull is, across its length.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule StandsOff { get; } =
        new(Section, "stands off", "1 1/8\"", "30 mm", "How far a pull stands off the front.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Hole { get; } =
        new(Section, "hole", "3/16\"", "5 mm", "Diameter of the holes for the screws of a pull.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } = [Centres, Length, Thickness, StandsOff, Hole];
}
