using Dryfit.Casework.Building;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>The word <c>doors</c>: one door or a pair in an opening.</summary>
internal static class DoorsWord
{
    public static Shape Shape => DoorShapes.Shape;

    /// <summary>Builds the doors of an opening and adds them to the piece.</summary>
    /// <param name="value">What the recipe says: a phrase or keys, checked against <see cref="Shape"/>.</param>
    /// <returns>The fronts that were added, from left to right.</returns>
    /// <exception cref="CannotBuildException">The sizes leave no room for a part.</exception>
    public static IReadOnlyList<Front> Build(PieceBuilder piece, FrontSite site, Node value, Scope scope) =>
        throw new NotSupportedException("Comes with the door builders.");
}
