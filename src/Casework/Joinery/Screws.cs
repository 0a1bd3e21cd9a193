using Dryfit.Casework.Building;

namespace Dryfit.Casework.Joinery;

/// <summary>Face against face, held by screws.</summary>
internal static class Screws
{
    /// <summary>Plain screws: counted, and driven where the maker finds room.</summary>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        int count,
        bool glued = false
    )
    {
        var shared = Meeting.Centre(enters.Reckoned, into);
        var carrying = receives.Carrying(enters.Reckoned, into, enters.Name, enters.Source);
        foreach (var part in carrying)
            piece.Fit("screw", shared, Math.Max(1, count / carrying.Count), enters, part);
        return piece.Join(JointKind.Screwed, receives, enters, into, glued: glued);
    }
}
