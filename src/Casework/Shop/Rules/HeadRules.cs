namespace Dryfit.Casework;

/// <summary>House rules: what goes round the head of a carcase.</summary>
public static class HeadRules
{
    private const string Section = "head";

    public static Rule FriezeHeight { get; } =
        new(Section, "frieze", "3\"", "75 mm", "Height of a frieze.", Rule.Practice) { Shape = Rule.AboveZero };

    public static Rule CorniceHeight { get; } =
        new(Section, "cornice", "2\"", "50 mm", "Height of a cornice.", Rule.Practice) { Shape = Rule.AboveZero };

    internal static IReadOnlyList<Rule> All { get; } = [FriezeHeight, CorniceHeight];
}
