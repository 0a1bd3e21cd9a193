using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Edges;

/// <summary>
/// Tells which fronts are cut from one board one after the other: those that stand in one line, with the room between them
/// for the saw. Their places in the board are their places in the piece, so that the figure runs on over the gaps too.
/// </summary>
internal static class GrainRuns
{
    /// <param name="across">True for rows, from the left; false for columns, from the top.</param>
    /// <param name="place">Where the recipe asks for it.</param>
    public static void Set(PieceBuilder piece, GroupDraft carcase, bool across, SourcePlace place)
    {
        var fronts = piece
            .Parts.Where(part => part.Role is Role.DrawerFront or Role.DoorSlab && IsOf(part.Group, carcase))
            .ToList();
        if (fronts.Find(front => !front.Material.HasGrain) is { } plain)
            throw new CannotBuildException(
                new InputError($"The {plain.Name} has no grain that could run on.", place, "fronts of timber or veneer")
            );
        var (line, run) = across ? (Axis.Z, Axis.X) : (Axis.X, Axis.Z);
        var rows = fronts
            .GroupBy(front => (front.Extent.Min[line], front.Extent.Max[line], front.Place.Lie, front.Material))
            .Where(row => row.Count() > 1)
            .OrderBy(row => across ? -row.Key.Item1 : row.Key.Item1)
            .ToList();
        if (rows.Count == 0)
            throw new CannotBuildException(
                new InputError(
                    $"No two fronts of the {carcase.Name} stand {(across ? "side by side" : "one over the other")} in one line.",
                    place,
                    "slab doors or drawer fronts in a row (across) or a column (down)"
                )
            );
        for (var n = 0; n < rows.Count; n++)
            SetRow([.. rows[n]], $"{carcase.Name} {(across ? "row" : "column")} {n + 1}", run, across);
    }

    private static void SetRow(List<PartDraft> row, string board, Axis run, bool across)
    {
        var begins = across ? Direction.Left : Direction.Up;
        var inOrder = row.OrderBy(front => front.Extent.Side(begins) * -begins.Sign()).ToList();
        var start = inOrder[0].Extent.Side(begins);
        var span = Length.Abs(inOrder[^1].Extent.Side(begins.Opposite()) - start);
        for (var n = 0; n < inOrder.Count; n++)
            inOrder[n].Run = new GrainRun(
                board,
                n + 1,
                inOrder.Count,
                span,
                Length.Abs(inOrder[n].Extent.Side(begins) - start),
                begins
            );
    }

    private static bool IsOf(GroupDraft? group, GroupDraft carcase) =>
        group is not null && (group == carcase || IsOf(group.Parent, carcase));
}
