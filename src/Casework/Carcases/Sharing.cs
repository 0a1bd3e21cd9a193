using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Shares a clear size among regions: fixed ones first, the rest in proportion, exactly.</summary>
internal static class Sharing
{
    /// <param name="piece">For the step to which graduated sizes are marked.</param>
    /// <param name="clear">The clear size of the whole.</param>
    /// <param name="dividers">What the parts between the regions take, in all.</param>
    /// <param name="what">"width" or "height", for sums and errors.</param>
    /// <returns>A size for each region, in order.</returns>
    public static IReadOnlyList<Figure> Of(
        PieceBuilder piece,
        Figure clear,
        Figure? dividers,
        IReadOnlyList<Region> regions,
        string what
    )
    {
        var left = dividers is null ? clear : clear - dividers;
        foreach (var region in regions)
        {
            if (region.Fixed is not null)
                left -= region.Fixed;
        }
        var flexible = regions.Where(r => r.Fixed is null).ToList();
        if (flexible.Count == 0)
        {
            if (left.Length != Length.Zero)
                throw new CannotBuildException(Mismatch(left.Length, regions, what));
            return [.. regions.Select(r => r.Fixed!)];
        }
        if (left.Length <= Length.Zero)
            throw new CannotBuildException(
                new InputError(
                    $"Nothing is left for the regions that share the {what}: the fixed ones take all of it and {Show(-left.Length)} more.",
                    regions[0].Place,
                    "fixed sizes that leave room for the others"
                )
            );
        left = left.As($"{what} to share");
        if (regions[0].Growth is { } growth)
            return growth.Share(piece, left, regions.Count, what, regions[0].Place);
        var shares = flexible.Aggregate(Rational.Zero, (sum, r) => sum + r.Share);
        return
        [
            .. regions.Select(r =>
                (r.Fixed ?? (flexible.Count == 1 ? left : left * (r.Share / shares))).As($"opening {what}")
            ),
        ];
    }

    private static InputError Mismatch(Length left, IReadOnlyList<Region> regions, string what) =>
        new(
            left > Length.Zero
                ? $"The regions leave {Show(left)} of the {what} over."
                : $"The regions take {Show(-left)} more than the {what} there is.",
            regions[0].Place,
            $"one region without a {what} of its own, to take what is left"
        );

    private static string Show(Length length) =>
        $"{LengthFormat.Inches.WriteWithUnit(length)} ({LengthFormat.Millimetres.WriteWithUnit(length)})";
}
