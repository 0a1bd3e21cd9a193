using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary><c>lies:</c> how a board lies: where its grain runs and where its show face looks, in a maker's words.</summary>
internal static class LieWords
{
    private static readonly (string Word, Direction Way)[] Facings =
    [
        ("facing front", Direction.Front),
        ("facing back", Direction.Back),
        ("facing left", Direction.Left),
        ("facing right", Direction.Right),
        ("facing up", Direction.Up),
        ("facing down", Direction.Down),
    ];

    public static PhraseShape Shape { get; } =
        new(
            new ChoiceShape("flat", "on edge", "upright"),
            new ChoiceShape([.. Facings.Select(f => f.Word)]),
            new ChoiceShape("grain left to right", "grain front to back")
        );

    /// <summary>Reads it; a board of which nothing is said lies flat, its grain from left to right.</summary>
    public static Lie Read(Fields fields)
    {
        var words = fields.Phrase("lies", Shape);
        var place = fields.PlaceOf("lies");
        var posture = words[0] ?? (words[1] is "facing up" or "facing down" or null ? "flat" : "on edge");
        Direction? facing = words[1] is { } word ? Facings.First(f => f.Word == word).Way : null;
        var grain = words[2] switch
        {
            "grain left to right" => Direction.Right,
            "grain front to back" => Direction.Back,
            _ => (Direction?)null,
        };
        if (posture == "flat")
        {
            var up = facing ?? Direction.Up;
            if (up.Axis() != Axis.Z)
                throw AtOdds(place, "What lies flat faces up or down.", "flat, facing down; or on edge");
            return Lie.Of(grain ?? Direction.Right, up);
        }
        var shows = facing ?? (grain == Direction.Back ? Direction.Left : Direction.Front);
        if (shows.Axis() == Axis.Z)
            throw AtOdds(place, $"What stands {posture} does not face {Spoken.Of(shows)}.", "flat; or facing front");
        if (posture == "upright")
            return grain is null
                ? Lie.Of(Direction.Up, shows)
                : throw AtOdds(place, "The grain of what stands upright runs up.", "on edge, or no word of the grain");
        var along = shows.Axis() == Axis.Y ? Direction.Right : Direction.Back;
        if (grain is { } said && said != along)
            throw AtOdds(
                place,
                "The grain of a board on edge runs along it.",
                along == Direction.Right ? "grain left to right" : "grain front to back"
            );
        return Lie.Of(along, shows);
    }

    private static CannotBuildException AtOdds(SourcePlace place, string message, string expected) =>
        new(new InputError(message, place, expected));
}
