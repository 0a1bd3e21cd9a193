using Dryfit.Casework;

namespace Dryfit.Inspection;

/// <summary>Which carcase something belongs to.</summary>
internal static class CarcaseOf
{
    /// <summary>The carcase that a group is or stands in; null where it is in none.</summary>
    public static Group? Group(InspectedPiece piece, string id)
    {
        var group = piece.Group(id);
        while (group is not null && group.Kind is not (GroupKind.Carcase or GroupKind.KeptCarcase))
            group = group.Parent is null ? null : piece.Group(group.Parent);
        return group;
    }
}
