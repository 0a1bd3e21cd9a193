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
        piece.Fit("screw", shared, count, enters, receives);
        return piece.Join(JointKind.Screwed, receives, enters, into, glued: glued);
    }
}
