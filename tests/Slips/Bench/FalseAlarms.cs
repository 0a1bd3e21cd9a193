using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Kit;

namespace Dryfit.Slips;

/// <summary>
/// What sound pieces raise under parameters drawn within their own ranges. What the maker cut already only fits the piece
/// that it was cut for: recipes that say so are left out.
/// </summary>
internal static class FalseAlarms
{
    /// <summary>How many pieces were built, and what was raised on which.</summary>
    /// <param name="draws">So many of each recipe.</param>
    public static (int Built, IReadOnlyList<(SoundPiece On, Finding Finding)> Raised) Count(SlipBench bench, int draws)
    {
        var built = 0;
        var raised = new List<(SoundPiece, Finding)>();
        foreach (
            var sound in bench.Sound.Where(s => s.Recipe["as cut"] is null && ParameterDraw.Ranged(s.Recipe).Any())
        )
        {
            for (var seed = 1; seed <= draws; seed++)
            {
                if (sound.DrawnBy(seed) is not { } drawn)
                    continue;
                built++;
                raised.AddRange(SoundPiece.Faults(Inspector.Inspect(drawn.Piece)).Select(finding => (drawn, finding)));
            }
        }
        return (built, raised);
    }
}
