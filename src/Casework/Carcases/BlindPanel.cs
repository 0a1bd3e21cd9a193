using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// The panel that closes the end of a corner carcase which stands behind the return of the run: between floor and ceiling,
/// flush with their front edges. The inside goes on behind it.
/// </summary>
internal static class BlindPanel
{
    public static PartDraft Make(PieceBuilder piece, CarcasePlan plan, BlindPlan blind, Box box)
    {
        var side = plan.SideThickness(blind.End);
        var width = (blind.Width - side).As("blind panel width");
        if (width.Length <= Length.Zero || width.Length >= box.InsideWidth.Length)
            throw new CannotBuildException(
                new InputError(
                    "The blind end takes all of the front, or nothing of it.",
                    blind.Place,
                    "a width between the side of the carcase and its other side"
                )
            );
        var x = blind.End == Direction.Left ? box.Inside.Min.X : box.Inside.Max.X - width.Length;
        var panel = piece.Board(
            plan.Group,
            "blind panel",
            Role.BlindPanel,
            blind.Material,
            Lie.Of(Direction.Up, Direction.Front),
            box.InsideHeight.As("blind panel height"),
            width,
            new(x, box.Inside.Min.Y, box.Inside.Min.Z),
            blind.Place
        );
        Screws.Between(piece, box.Bottom, panel, Direction.Down, 3);
        Screws.Between(piece, box.Closing[0], panel, Direction.Up, 3);
        Screws.Between(piece, blind.End == Direction.Left ? box.Left : box.Right, panel, blind.End, 3);
        return panel;
    }

    /// <summary>The part of the front beside the panel; what is behind it goes on over the whole width.</summary>
    public static Cell Beside(Cell whole, BlindPlan blind, PartDraft panel, Figure side)
    {
        var closed = blind.Width - side;
        var cell = whole with { Width = (whole.Width - closed).As("width beside the blind end") };
        return blind.End == Direction.Left
            ? cell with
            {
                X = panel.Reckoned.Max.X,
                InsetLeft = closed,
                Left = panel,
            }
            : cell with
            {
                Right = panel,
            };
    }

    /// <summary>How far shelves stay behind the front for the panel, or for doors that reach in farther.</summary>
    public static Figure? Before(PartDraft? panel, Figure? doors)
    {
        if (panel is null)
            return doors;
        var thickness = panel.Thickness.As("blind panel");
        return doors is null || doors.Length < thickness.Length ? thickness : doors;
    }

    public static CannotBuildException NoDrawer(BlindPlan blind) =>
        new(
            new InputError(
                "A drawer beside a blind end has nothing to run on: the side is far behind the panel.",
                blind.Place,
                "doors beside the blind end, or a bay of its own for the drawer"
            )
        );
}
