using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>The six sides of a board as it lies in the piece, in the words of the recipe.</summary>
internal static class Sides
{
    private static readonly (string Word, Direction Side)[] All =
    [
        ("left", Direction.Left),
        ("right", Direction.Right),
        ("front", Direction.Front),
        ("back", Direction.Back),
        ("bottom", Direction.Down),
        ("top", Direction.Up),
    ];

    public static IReadOnlyList<string> Words { get; } = [.. All.Select(a => a.Word)];

    public static ChoiceShape Shape { get; } = new(Words);

    /// <summary>The side of a word; null where it is none.</summary>
    public static Direction? Find(string word) =>
        All.Where(a => a.Word == word).Select(a => (Direction?)a.Side).FirstOrDefault();

    /// <summary>The side of a word that the check of shapes has seen.</summary>
    public static Direction Of(string word) => All.First(a => a.Word == word).Side;

    public static string Word(Direction side) => All.First(a => a.Side == side).Word;

    /// <summary>"from left to right", for errors.</summary>
    public static string Across(Axis axis) =>
        axis switch
        {
            Axis.X => "from left to right",
            Axis.Y => "from front to back",
            _ => "up and down",
        };

    public static Direction Low(Axis axis) => Directions.Along(axis, -1);

    public static Direction High(Axis axis) => Directions.Along(axis, 1);
}
