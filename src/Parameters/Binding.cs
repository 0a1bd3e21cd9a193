using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>Finds the formulas of a tree.</summary>
public static class Binding
{
    /// <summary>
    /// Works out every length, count and number of the tree, and reports through the scope what cannot be read, uses a
    /// name nothing stands for, has the wrong dimension or is not what its place allows (signs of lengths, limits of
    /// counts). To be called once all names are defined; what is asked for later is then there and known to be right.
    /// </summary>
    /// <param name="node">The tree; where it does not fit the shape, nothing is looked at.</param>
    public static void CheckFormulas(Node node, Shape shape, Scope scope)
    {
        foreach (var (scalar, allowed) in ShapeWalk.Values(node, shape))
        {
            if (allowed is not (LengthShape or CountShape or NumberShape or QuantityShape))
                continue;
            scope.CheckNames(scope.SiteOf(scalar, allowed));
            WorkOut(scalar, allowed, scope);
        }
    }

    private static void WorkOut(Scalar scalar, Shape allowed, Scope scope)
    {
        switch (allowed)
        {
            case LengthShape:
                scope.Length(scalar, scalar.Text);
                break;
            case CountShape:
                scope.Count(scalar);
                break;
            case NumberShape:
                scope.Number(scalar, scalar.Text);
                break;
        }
    }
}
