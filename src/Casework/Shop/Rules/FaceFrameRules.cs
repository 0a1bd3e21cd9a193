using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>House rules: face frames.</summary>
public static class FaceFrameRules
{
    private const string Section = "face frame";

    public static Rule StileWidth { get; } =
        new(
            Section,
            "stiles",
            "1 1/2\"",
            "40 mm",
            "Width of face frame stiles.",
            "1 1/2 in: trade association bulletin on face frames"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule FrameRailWidth { get; } =
        new(
            Section,
            "rails",
            "1 1/2\"",
            "40 mm",
            "Width of face frame rails.",
            "1 1/2 in: trade association bulletin on face frames"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule MullionWidth { get; } =
        new(Section, "mullions", "1 1/2\"", "40 mm", "Width of the upright members between the stiles.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule FrameJoint { get; } =
        new(Section, "joint", "pocket screws", "pocket screws", "How face frames are put together.", Rule.Practice)
        {
            Shape = new ChoiceShape(
                "pocket screws",
                "dowels",
                "mortise and tenon",
                "through mortise and tenon",
                "half laps"
            ),
        };

    internal static IReadOnlyList<Rule> All { get; } = [StileWidth, FrameRailWidth, MullionWidth, FrameJoint];
}
