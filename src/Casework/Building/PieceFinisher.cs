using Dryfit.Solids;

namespace Dryfit.Casework.Building;

/// <summary>Turns drafts into finished parts: picks the grid, cuts every solid, puts it in its place.</summary>
internal static class PieceFinisher
{
    public static IReadOnlyList<Part> Finish(PieceBuilder builder, Grid grid, FinishPlan finishes) =>
        [.. builder.Parts.Select(draft => Finish(draft, grid, finishes))];

    private static Part Finish(PartDraft draft, Grid grid, FinishPlan finishes)
    {
        var size = new Point(draft.Length.Length, draft.Width.Length, draft.Thickness.Length);
        var solid = SolidBuilder.Build(grid.ToUnits(size), [.. draft.Cuts.Select(cut => SolidCuts.Of(cut, grid))]);
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
            Cuts = draft.Cuts,
            Place = draft.Place,
            Finishes = finishes.For(draft),
            IsKept = draft.IsKept,
            IsAsCut = draft.IsAsCut,
            Source = draft.Source,
            Solid = solid,
            Placed = new Placed(solid, FrameOf(draft.Place, grid)),
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
