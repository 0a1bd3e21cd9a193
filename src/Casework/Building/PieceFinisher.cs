using Dryfit.Solids;

namespace Dryfit.Casework.Building;

/// <summary>Turns drafts into finished parts: picks the grid, cuts every solid, puts it in its place.</summary>
internal static class PieceFinisher
{
    public static IReadOnlyList<Part> Finish(PieceBuilder builder, Grid grid, FinishPlan finishes)
    {
        var boards = builder.Parts.Select(draft => new Board(draft)).ToList();
        // Cutting takes most of the time of a build: equal boards are cut once, different ones side by side.
        var solids = boards.Distinct().AsParallel().Select(board => (board, board.Build(grid))).ToDictionary();
        return [.. builder.Parts.Select((draft, n) => Finish(draft, solids[boards[n]], grid, finishes))];
    }

    private static Part Finish(PartDraft draft, Solid solid, Grid grid, FinishPlan finishes)
    {
        var own = FrameOf(draft.Place, grid);
        return new Part
        {
            Id = draft.Id,
            Name = draft.Name,
            Role = draft.Role,
            Group = draft.Group.Id,
            Material = draft.Material,
            Length = draft.Length,
            Width = draft.Width,
            Thickness = draft.Thickness,
            ShoulderLength = draft.ShoulderLength,
            ShoulderWidth = draft.ShoulderWidth,
            FinishedLength = draft.FinishedLength,
            FinishedWidth = draft.FinishedWidth,
            Run = draft.Run,
            Cuts = draft.Cuts,
            Place = draft.Place,
            Finishes = finishes.For(draft),
            IsKept = draft.IsKept,
            IsAsCut = draft.IsAsCut,
            Source = draft.Source,
            Solid = solid,
            Turn = draft.Turn,
            Unturned = new Placed(solid, own),
            Placed = new Placed(solid, own.Seen(draft.Turn, null, grid.UnitsPerMm)),
        };
    }

    private static Frame FrameOf(Placement place, Grid grid) =>
        new(
            grid.ToUnits(place.Origin),
            SolidCuts.Unit(place.Lie.Along),
            SolidCuts.Unit(place.Lie.Across),
            SolidCuts.Unit(place.Lie.Shows)
        );
}
