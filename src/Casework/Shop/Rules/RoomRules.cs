namespace Dryfit.Casework;

/// <summary>House rules: fitting to a room.</summary>
public static class RoomRules
{
    private const string Section = "room";

    public static Rule FloorStripPlay { get; } =
        new(
            Section,
            "floor strip play",
            "1/16\"",
            "2 mm",
            "Room at each wall for a strip along the floor to go in.",
            Rule.Practice
        );

    internal static IReadOnlyList<Rule> All { get; } = [FloorStripPlay];
}
