using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving;

/// <summary>Puts shelves in a bay: fixed ones jointed in, adjustable ones between them on pins or strips.</summary>
internal sealed class ShelfMaker(PieceBuilder piece, CarcasePlan plan)
{
    /// <param name="doors">How far doors in their opening reach in before the shelves; null where they do not.</param>
    /// <returns>The fixed ones, from the lowest.</returns>
    public IReadOnlyList<PartDraft> Make(Cell bay, ShelvesPlan shelves, Figure insideDepth, Figure? doors)
    {
        var thickness = (shelves.Material ?? plan.Body).Thickness;
        var board = new ShelfBoard(piece, plan, shelves, insideDepth, doors);
        RefuseCount(shelves.Fixed);
        RefuseCount(shelves.Adjustable);

        var fixedAt =
            shelves.Fixed.At.Count > 0
                ? shelves.Fixed.At
                : Spaces.Evenly(bay.InsideHeight, thickness, shelves.Fixed.Count);
        RefuseNoRoom(bay, fixedAt, thickness.Length, shelves.Fixed.Place);
        var spaces = Spaces.Between(bay.InsideHeight, thickness, fixedAt);
        var adjustableAt = shelves.Adjustable.At.Count > 0 ? shelves.Adjustable.At : Spread(spaces, thickness, shelves);
        // Those that leave no room say so one by one, with the fixed ones among them.
        RefuseNoRoom(
            bay,
            [.. fixedAt.Concat(adjustableAt).OrderBy(h => h.Length)],
            thickness.Length,
            shelves.Adjustable.Place
        );
        RefuseFalling(adjustableAt, shelves.Adjustable.Place);

        // Shelves are counted from the bottom.
        var fixedShelves = new List<PartDraft>();
        for (var n = 0; n < fixedAt.Count; n++)
            fixedShelves.Add(Fixed(board, bay, $"{Prefix(bay)}fixed shelf {n + 1}", fixedAt[n]));
        for (var n = 0; n < spaces.Count; n++)
        {
            if (shelves.On != ShelfSupport.Pins && adjustableAt.Any(h => IsIn(spaces[n], h)))
                ShelfStrips.Fit(piece, spaces[n].In(bay), shelves.On);
        }
        for (var n = 0; n < adjustableAt.Count; n++)
        {
            var space = spaces.First(s => IsIn(s, adjustableAt[n])).In(bay);
            Adjustable(board, bay, space, $"{Prefix(bay)}adjustable shelf {n + 1}", adjustableAt[n], shelves.On);
        }
        return fixedShelves;
    }

    /// <summary>Heights over the floor of the bay at which adjustable shelves part the spaces evenly.</summary>
    private static List<Figure> Spread(IReadOnlyList<Space> spaces, Figure thickness, ShelvesPlan shelves)
    {
        var shares = Spaces.Share(spaces, thickness.Length, shelves.Adjustable.Count);
        var heights = new List<Figure>();
        for (var n = 0; n < spaces.Count; n++)
        {
            var floor = spaces[n].FromFloor;
            heights.AddRange(
                Spaces
                    .Evenly(spaces[n].Height, thickness, shares[n])
                    .Select(height => floor is null ? height : floor + height)
            );
        }
        return heights;
    }

    private static bool IsIn(Space space, Figure height) => height.Length >= space.Bottom && height.Length < space.Top;

    private static void RefuseCount(ShelfCount sort)
    {
        if (sort.At.Count > 0 && sort.At.Count != sort.Count)
            throw new CannotBuildException(
                new InputError(
                    $"There are {sort.Count} shelves and {sort.At.Count} heights for them.",
                    sort.Place,
                    "a height for each shelf, or none"
                )
            );
    }

    private static void RefuseFalling(IReadOnlyList<Figure> heights, SourcePlace place)
    {
        for (var n = 1; n < heights.Count; n++)
        {
            if (heights[n].Length < heights[n - 1].Length)
                throw new CannotBuildException(
                    new InputError("The heights of the shelves fall.", place, "heights from the lowest to the highest")
                );
        }
    }

    /// <summary>Shelves lie one above the other, from the floor of the bay to its ceiling.</summary>
    private static void RefuseNoRoom(Cell bay, IReadOnlyList<Figure> heights, Length thickness, SourcePlace place)
    {
        for (var n = 0; n < heights.Count; n++)
        {
            var ceiling = n + 1 < heights.Count ? heights[n + 1].Length : bay.InsideHeight.Length;
            if (heights[n].Length > Length.Zero && heights[n].Length + thickness <= ceiling)
                continue;
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for shelf {n + 1} of {heights.Count}, which is {NoRoom.Show(thickness)} thick,"
                        + $" in a bay of {NoRoom.Show(bay.InsideHeight.Length)}.",
                    place,
                    "fewer or thinner shelves, or heights that rise from the floor of the bay"
                )
            );
        }
    }

    private static string Prefix(Cell bay) => bay.Bay.Length == 0 ? "" : $"{bay.Bay} ";

    private PartDraft Fixed(ShelfBoard board, Cell bay, string name, Figure height)
    {
        var depth = piece.Shop.Length(JointRules.DadoDepth, "dado depth");
        var dado = plan.IsLetIn;
        var shelf = board.Make(
            bay,
            name,
            dado ? bay.InsideWidth + depth + depth : bay.InsideWidth,
            bay.Inside.Min.X - (dado ? depth.Length : Length.Zero),
            height,
            isLoose: false,
            letIn: dado ? depth : null
        );
        PanelJoints.Tie(piece, plan.Joint, bay.InsideLeft, shelf, Direction.Left, Axis.Y);
        PanelJoints.Tie(piece, plan.Joint, bay.InsideRight, shelf, Direction.Right, Axis.Y);
        return shelf;
    }

    private void Adjustable(ShelfBoard board, Cell bay, Cell space, string name, Figure height, ShelfSupport on)
    {
        var play = piece.Shop.Length(ShelfRules.ShelfPlay, "play");
        if (on == ShelfSupport.PlantedStrips)
            play = (play + piece.Shop.Length(ShelfRules.StripDepth, "strip")).As("play beside the strips");
        var shelf = board.Make(
            bay,
            name,
            bay.InsideWidth - play - play,
            bay.Inside.Min.X + play.Length,
            height,
            isLoose: true,
            letIn: null
        );
        var underside = bay.Inside.Min.Z + height.Length;
        if (on == ShelfSupport.Pins)
            PinRows.Bore(piece, space, shelf, underside);
        else
            ShelfStrips.Carry(piece, space, shelf, underside);
    }
}
