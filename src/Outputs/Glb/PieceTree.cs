using Dryfit.Casework;

namespace Dryfit.Outputs.Glb;

/// <summary>A group with what is in it; groups without any part are left out.</summary>
/// <param name="Front">How it moves, where it is a front.</param>
/// <param name="Parts">Its own parts.</param>
/// <param name="Units">The groups in it.</param>
internal sealed record PieceTree(Group Group, Front? Front, IReadOnlyList<Part> Parts, IReadOnlyList<PieceTree> Units)
{
    /// <summary>The tree of a piece; null where there is no part at all.</summary>
    public static PieceTree? Of(Piece piece, IReadOnlyList<Part> parts)
    {
        var partsOf = parts.ToLookup(part => part.Group, StringComparer.Ordinal);
        var fronts = piece.Fronts.ToLookup(front => front.Group, StringComparer.Ordinal);
        var units = new Dictionary<string, List<PieceTree>>(StringComparer.Ordinal);
        PieceTree? tree = null;
        // Parents stand before their children, so from the end every group finds its own complete.
        foreach (var group in piece.Groups.Reverse())
        {
            var own = units.GetValueOrDefault(group.Id, []);
            own.Reverse();
            var made = new PieceTree(group, fronts[group.Id].FirstOrDefault(), [.. partsOf[group.Id]], own);
            tree = made.Parts.Count + made.Units.Count == 0 ? null : made;
            if (tree is null || group.Parent is null)
                continue;
            if (!units.TryGetValue(group.Parent, out var siblings))
                units.Add(group.Parent, siblings = []);
            siblings.Add(tree);
        }

        return tree;
    }
}
