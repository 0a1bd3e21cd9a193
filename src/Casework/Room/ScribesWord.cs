using Dryfit.Casework.Building;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Room;

/// <summary><c>scribes:</c> and <c>floor scribe:</c> of a carcase between walls.</summary>
internal static class ScribesWord
{
    public static Shape Shape { get; } = new EitherShape(new BareShape(), new NameShape("material"));

    public static ScribePlan? Read(Fields carcase, PieceBuilder piece, Body body, Material fronts)
    {
        var (atWalls, alongFloor) = (Of("scribes"), Of("floor scribe"));
        if (atWalls is null && alongFloor is null)
            return null;
        if (body.Space is not { } name)
            throw new CannotBuildException(
                new InputError(
                    "Scribes close the gaps to the walls of a space, and the carcase stands in none.",
                    carcase.PlaceOf(atWalls is null ? "floor scribe" : "scribes"),
                    "between: with the name of a space of the room, for it or for what it stands on"
                )
            );
        return new ScribePlan(piece.Spaces[name], atWalls, alongFloor);

        Material? Of(string key) =>
            !carcase.Has(key) ? null
            : carcase.Text(key) is { Length: > 0 } said ? piece.Materials.Get(said, carcase.PlaceOf(key))
            : fronts;
    }
}
