using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving;

/// <summary>Makes one shelf of a bay: its board with edging or lip, notched round the stiles where it comes between them.</summary>
/// <param name="insideDepth">From the front of the inside to the back.</param>
/// <param name="doors">How far doors in their opening reach in before the shelves; null where they do not.</param>
internal sealed class ShelfBoard(
    PieceBuilder piece,
    CarcasePlan plan,
    ShelvesPlan shelves,
    Figure insideDepth,
    Figure? doors
)
{
    private readonly Material _material = shelves.Material ?? plan.Body;
    private readonly Figure _play = piece.Shop.Length(ShelfRules.ShelfPlay, "play");

    /// <param name="length">Overall, with what goes into the uprights.</param>
    /// <param name="x">Its left end.</param>
    /// <param name="height">From the floor of the bay to its underside.</param>
    /// <param name="isLoose">Whether its ends stay off the uprights by the house's play.</param>
    /// <param name="letIn">How far both ends go into the uprights; null for not at all.</param>
    public PartDraft Make(Cell bay, string name, Figure length, Length x, Figure height, bool isLoose, Figure? letIn)
    {
        var setback = Setback();
        var frame = shelves.BetweenStiles ? Frame(bay, height) : null;
        var front = plan.Face is not null && frame is not null ? plan.Envelope.Min.Y : bay.Inside.Min.Y;
        var deep = frame is null ? insideDepth - setback : insideDepth + frame - setback;
        if (shelves.Behind is not null)
            deep -= shelves.Behind;
        RefuseShallow(deep.Length);
        var at = new Point(x, front + setback.Length, bay.Inside.Min.Z + height.Length);
        var lip = shelves.Lip?.Material.Thickness.As("lip");
        var nose = shelves.BetweenStiles ? Nose(bay, isLoose, letIn) : Stops(letIn, letIn);
        var banded = Panels.Make(
            piece,
            shelves.Edging is null ? plan : plan with { Edging = shelves.Edging },
            name,
            Role.Shelf,
            _material,
            Lie.Of(Direction.Right, Direction.Up),
            length.As("shelf length"),
            (lip is null ? deep : deep - lip).As("shelf width"),
            lip is null ? at : at.Moved(Direction.Back, lip.Length),
            nose,
            isFree: lip is null
        );
        var board = banded.Panel;
        if (frame is not null)
            Notch(bay, board, nose);
        if (shelves.Lip is null)
        {
            shelves.Edge?.Cut(banded, Direction.Up, Free(board, nose));
            return board;
        }
        var strip = AddLip(shelves.Lip, board, length, at, nose);
        shelves.Edge?.Cut(strip, Direction.Up);
        return board;
    }

    private Figure Setback()
    {
        var setback = shelves.Setback ?? piece.Shop.Length(ShelfRules.ShelfSetback, "setback");
        return doors is null ? setback : setback + doors;
    }

    /// <summary>The thickness of the frame that shelves come forward through.</summary>
    private Figure Frame(Cell bay, Figure height)
    {
        if (plan.Face is not { } face)
            throw Refused("There is no face frame to come between the stiles of.", "a face frame, or leave it out");
        if (doors is not null)
            throw Refused("Doors stand where the shelves should come forward.", "an open bay, or leave it out");
        var z = bay.Inside.Min.Z + height.Length;
        if (z < bay.Z || z + _material.Thickness.Length > bay.Z + bay.Height.Length)
            throw Refused(
                "A shelf that comes between the stiles would meet a rail of the frame.",
                "heights between the rails"
            );
        return face.Material.Thickness.As("face frame");
    }

    private void RefuseShallow(Length deep)
    {
        if (deep <= (shelves.Lip?.Material.Thickness.Length ?? Length.Zero))
            throw Refused(
                "Setback, lip and room behind leave nothing of the shelves.",
                "less of them, or a deeper carcase"
            );
    }

    /// <summary>Cuts the corners behind the stiles away, with the house's play behind them.</summary>
    private void Notch(Cell bay, PartDraft board, List<(Direction End, Figure By)> nose)
    {
        var behind = bay.Inside.Min.Y + _play.Length;
        foreach (var (end, by) in nose)
        {
            var stop = board.Reckoned.Side(end) - (by.Length * end.Sign());
            board.CutAway(CutKind.Notch, board.Extent.With(end.Opposite(), stop).With(Direction.Back, behind));
        }
    }

    /// <summary>How far the front edge stays behind the ends of a shelf that comes between stiles.</summary>
    private List<(Direction End, Figure By)> Nose(Cell bay, bool isLoose, Figure? letIn)
    {
        var left = bay.InsetLeft;
        var right = bay.InsideWidth - bay.Width;
        if (left is not null)
            right -= left;
        return Stops(Past(left), Past(right));

        Figure? Past(Figure? stile)
        {
            if (stile is null || stile.Length < Length.Zero)
                return letIn;
            // A loose shelf is short of the upright already by what it stays off the stile.
            var by = isLoose ? stile : stile + _play;
            return letIn is null ? by : by + letIn;
        }
    }

    private static List<(Direction End, Figure By)> Stops(Figure? left, Figure? right)
    {
        var stops = new List<(Direction, Figure)>();
        if (left is not null)
            stops.Add((Direction.Left, left));
        if (right is not null)
            stops.Add((Direction.Right, right));
        return stops;
    }

    /// <summary>The stretch of the front edge that is seen: what is let in or stays behind a stile is left square.</summary>
    private static (Length From, Length To) Free(PartDraft board, List<(Direction End, Figure By)> nose)
    {
        var (from, to) = (board.Extent.Min.X, board.Extent.Max.X);
        foreach (var (end, by) in nose)
            (from, to) = end == Direction.Left ? (from + by.Length, to) : (from, to - by.Length);
        return (from, to);
    }

    private PartDraft AddLip(
        LipPlan lip,
        PartDraft board,
        Figure length,
        Point at,
        List<(Direction End, Figure By)> nose
    )
    {
        if (lip.Height.Length < board.Thickness.Length)
            throw new CannotBuildException(
                new InputError(
                    "The lip is lower than the shelf is thick.",
                    lip.Place,
                    "a height that covers the edge of the shelf"
                )
            );
        var (x, run) = (at.X, length);
        foreach (var (end, by) in nose)
        {
            run -= by;
            if (end == Direction.Left)
                x += by.Length;
        }
        var strip = piece.Board(
            board.Group,
            $"{board.Name[(board.Group.Name.Length + 1)..]} lip",
            Role.ShelfLip,
            lip.Material,
            Lie.Of(Direction.Right, Direction.Front),
            run.As("lip length"),
            lip.Height,
            new(x, at.Y, board.Reckoned.Max.Z - lip.Height.Length),
            shelves.Place
        );
        piece.Join(JointKind.Butt, board, strip, Direction.Back);
        return strip;
    }

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, shelves.Place, wanted));
}
