namespace Dryfit.Solids;

/// <summary>Builds solids: a blank from 0 to <c>size</c>, minus its cuts in any order.</summary>
public static class SolidBuilder
{
    /// <param name="size">Length, width and thickness of the blank, each above zero.</param>
    /// <param name="cuts">What is taken away, in board coordinates.</param>
    public static Solid Build(Vec3 size, IReadOnlyList<Cut> cuts)
    {
        throw new NotSupportedException($"{size} {cuts.Count}");
    }
}
