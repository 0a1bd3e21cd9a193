using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Puts shelves in a bay: fixed ones jointed in, adjustable ones on pins in bored rows.</summary>
internal sealed class ShelfMaker(PieceBuilder piece, CarcasePlan plan)
{
    /// <param name="doors">How far doors in their opening reach in before the shelves; null where they do not.</param>
    public void Make(Cell bay, ShelvesPlan shelves, Figure insideDepth, Figure? doors)
    {
        if (shelves.At.Count > 0 && shelves.At.Count != shelves.Count)
            throw new CannotBuildException(
                new InputError(
                    $"There are {shelves.Count} shelves and {shelves.At.Count} heights for them.",
                    shelves.Place,
                    "a height for each shelf, or none"
                )
            );
        var material = shelves.Material ?? plan.Body;
        var setback = piece.Shop.Length(ShelfRules.ShelfSetback, "setback");
        if (doors is not null)
            setback += doors;
        var width = (insideDepth - setback).As("shelf width");
        var spread = (bay.InsideHeight - (material.Thickness * shelves.Count)) / (shelves.Count + 1);
        IReadOnlyList<Figure> heights =
            shelves.At.Count > 0
                ? shelves.At
                : [.. Enumerable.Range(0, shelves.Count).Select(n => (spread * (n + 1)) + (material.Thickness * n))];
        RefuseNoRoom(bay, heights, material.Thickness.Length, shelves.Place);
        for (var n = 0; n < shelves.Count; n++)
        {
            // Shelves are counted from the bottom.
            var height = heights[n];
            var name = $"{Prefix(bay)}{(shelves.Adjustable ? "adjustable" : "fixed")} shelf {n + 1}";
            var y = bay.Inside.Min.Y + setback.Length;
            if (shelves.Adjustable)
                Adjustable(bay, material, width, name, y, height);
            else
                Fixed(bay, material, width, name, y, height);
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

    private void Fixed(Cell bay, Material material, Figure width, string name, Length y, Figure height)
    {
        var depth = piece.Shop.Length(JointRules.DadoDepth, "dado depth");
        var dado = plan.Joint == PanelJoint.Dado;
        var shelf = Panels
            .Make(
                piece,
                plan,
                name,
                Role.Shelf,
                material,
                Lie.Of(Direction.Right, Direction.Up),
                (dado ? bay.InsideWidth + depth + depth : bay.InsideWidth).As("shelf length"),
                width,
                new(bay.Inside.Min.X - (dado ? depth.Length : Length.Zero), y, bay.Inside.Min.Z + height.Length),
                letIn: dado ? depth : null,
                isFree: true
            )
            .Panel;
        PanelJoints.Tie(piece, plan.Joint, bay.InsideLeft, shelf, Direction.Left, Axis.Y);
        PanelJoints.Tie(piece, plan.Joint, bay.InsideRight, shelf, Direction.Right, Axis.Y);
    }

    private void Adjustable(Cell bay, Material material, Figure width, string name, Length y, Figure height)
    {
        var play = piece.Shop.Length(ShelfRules.ShelfPlay, "play");
        var z = bay.Inside.Min.Z + height.Length;
        var shelf = Panels
            .Make(
                piece,
                plan,
                name,
                Role.Shelf,
                material,
                Lie.Of(Direction.Right, Direction.Up),
                (bay.InsideWidth - play - play).As("shelf length"),
                width,
                new(bay.Inside.Min.X + play.Length, y, z),
                isFree: true
            )
            .Panel;
        PinRows.Bore(piece, bay, shelf, z);
    }
}
