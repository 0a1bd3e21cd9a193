using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Measure;

namespace Dryfit.Casework.Heads;

/// <summary>Puts frieze and cornice round the head of a carcase, flush with the top of the box.</summary>
internal static class HeadMaker
{
    /// <param name="top">The height of the upper end of the sides.</param>
    public static void Make(PieceBuilder piece, CarcasePlan plan, HeadPlan head, Length top)
    {
        var (around, width, depth) = (plan.Envelope, plan.Width, plan.Depth);
        if (head.Frieze is { } frieze)
        {
            var planted = new SurroundMaker(piece, plan.Group, around, width, depth).Make(
                frieze,
                top - frieze.Height.Length,
                Direction.Down
            );
            (around, width, depth) = (planted.Around, planted.Width, planted.Depth);
        }
        if (head.Cornice is { } cornice)
            new SurroundMaker(piece, plan.Group, around, width, depth).Make(
                cornice,
                top - cornice.Height.Length,
                Direction.Down
            );
    }
}
