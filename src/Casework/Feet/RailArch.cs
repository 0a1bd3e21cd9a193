using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Feet;

/// <summary>An arch in the lower edges of rails or plinth boards.</summary>
/// <param name="Rise">How far its middle stands off the lower edge.</param>
/// <param name="Flat">What is left straight at each end.</param>
/// <param name="Ends">Whether the boards at the ends get it besides the front one.</param>
/// <param name="Rear">Whether the rear one gets it too.</param>
internal sealed record RailArch(Figure Rise, Figure Flat, bool Ends, bool Rear, SourcePlace Place)
{
    /// <summary>Cuts the arch into a board that lies along the front, an end or the back.</summary>
    /// <param name="tenons">What of the board stands in other parts at its left or front end, and at the other; the arch
    /// begins where it comes out of them.</param>
    public void Cut(PartDraft board, (Length Low, Length High) tenons = default)
    {
        var shows = board.Place.Lie.Shows;
        var wanted = shows switch
        {
            Direction.Front => true,
            Direction.Back => Rear,
            _ => Ends,
        };
        if (!wanted)
            return;
        var along = board.Place.Lie.Along.Axis();
        EdgeArch.Cut(
            board,
            Direction.Down,
            shows,
            Rise.Length,
            board.Extent.Min[along] + tenons.Low + Flat.Length,
            board.Extent.Max[along] - tenons.High - Flat.Length
        );
    }
}
