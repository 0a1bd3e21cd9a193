using Dryfit.Casework.Building;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>The word <c>drawer</c>: a box on slides with an applied front.</summary>
internal static class DrawerWord
{
    public static Shape Shape => DrawerShapes.Shape;

    /// <summary>Builds one drawer and adds it to the piece.</summary>
    /// <param name="value">What the recipe says: nothing, a phrase or keys, checked against <see cref="Shape"/>.</param>
    /// <param name="name">What it is called within its bay: "drawer 1".</param>
    /// <returns>The front that was added.</returns>
    /// <exception cref="CannotBuildException">The sizes leave no room for a part.</exception>
    public static Front Build(PieceBuilder piece, FrontSite site, Node? value, Scope scope, string name) =>
        throw new NotSupportedException("Comes with the drawer builders.");
}
