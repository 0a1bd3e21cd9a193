using Dryfit.Casework;

namespace Dryfit.Slips;

/// <summary>One kind of slip: what goes wrong, in a maker's words.</summary>
/// <param name="Name">As it stands in the table.</param>
/// <param name="IsIn">Whether a piece has what can go wrong so.</param>
/// <param name="Make">Makes one; null where chance chose a size that this cannot happen to.</param>
internal sealed record SlipKind(string Name, Func<Piece, bool> IsIn, Func<SoundPiece, Random, Slip?> Make)
{
    /// <summary>Whether it stays inside every tolerance on purpose.</summary>
    public bool IsOfNoWeight { get; init; }
}
