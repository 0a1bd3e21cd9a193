using Dryfit.Casework;

namespace Dryfit.Mending;

/// <summary>How much of a piece an edit changes.</summary>
internal static class Changes
{
    /// <summary>Whether some parts have stayed as and where they were.</summary>
    public static bool AreNone(Piece before, Piece after, IReadOnlyList<string> ids)
    {
        var (old, now) = (ById(before), ById(after));
        return ids.All(id => old.TryGetValue(id, out var a) && now.TryGetValue(id, out var b) && IsSame(a, b));
    }

    /// <summary>How many parts have another size; those that are new or gone count too.</summary>
    public static int Count(Piece before, Piece after)
    {
        var old = ById(before);
        var kept = after.Parts.Count(part => old.TryGetValue(part.Id, out var a) && IsSameSize(a, part));
        return Math.Max(before.Parts.Count, after.Parts.Count) - kept;
    }

    private static Dictionary<string, Part> ById(Piece piece) =>
        piece.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);

    private static bool IsSame(Part a, Part b) =>
        IsSameSize(a, b) && a.Extent == b.Extent && a.Cuts.SequenceEqual(b.Cuts) && a.Turn == b.Turn;

    private static bool IsSameSize(Part a, Part b) =>
        a.Length.Length == b.Length.Length
        && a.Width.Length == b.Width.Length
        && a.Thickness.Length == b.Thickness.Length;
}
