using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// Makes a kept carcase: one rigid body with its hollow, out of square as measured, its old doors and shelves.
/// </summary>
internal sealed class KeptMaker(PieceBuilder piece, GroupDraft group, Material material, Fields fields)
{
    /// <param name="at">Left, front, lower corner of the body itself.</param>
    public PartDraft Make(Point at)
    {
        var outside = fields.Map("outside")!;
        var width = outside.Length("width", "width at foot");
        var widthAtTop = outside.LengthOrNull("width at top") ?? width;
        var height = outside.Length("height", "height at left");
        var heightAtRight = outside.LengthOrNull("height at right") ?? height;
        var depth = outside.Length("depth");
        var body = piece.Board(
            group,
            "body",
            Role.Kept,
            material,
            // Board x is up, y runs from the right side to the left, z from the back to the front.
            Lie.Of(Direction.Up, Direction.Front),
            Larger(height, heightAtRight),
            Larger(width, widthAtTop),
            at,
            thickness: depth,
            isKept: true
        );
        Lean(body, width.Length, widthAtTop.Length);
        Slope(body, height.Length, heightAtRight.Length);
        var outline = new KeptOutline(width.Length, widthAtTop.Length, height.Length, heightAtRight.Length);
        var inside = Hollow(body, fields.Map("inside")!, at, outline);
        if (fields.Map("doors") is { } doors)
            Doors(body, doors, inside);
        foreach (var shelf in fields.Named("shelves"))
            Shelf(body, shelf, inside);
        return body;
    }

    private static Figure Larger(Figure a, Figure b) => a.Length >= b.Length ? a : b;

    /// <summary>Takes the wedge off the right side where top and foot differ in width.</summary>
    private static void Lean(PartDraft body, Length foot, Length top)
    {
        var (zero, up, off) = (Length.Zero, body.Length.Length, Length.Abs(foot - top));
        if (foot == top)
            return;
        OutlineCorner[] wedge =
            top < foot ? [(zero, zero), (up, zero), (up, off)] : [(zero, zero), (up, zero), (zero, off)];
        body.Sweep(CutKind.Bevel, Axis.Z, wedge, zero, body.Thickness.Length);
    }

    /// <summary>Takes the wedge off the top where its two ends differ in height.</summary>
    private static void Slope(PartDraft body, Length left, Length right)
    {
        if (left == right)
            return;
        var (zero, across) = (Length.Zero, body.Width.Length);
        OutlineCorner[] wedge =
            right > left
                ? [(right, zero), (right, across), (left, across)]
                : [(right, zero), (left, zero), (left, across)];
        body.Sweep(CutKind.Bevel, Axis.Z, wedge, zero, body.Thickness.Length);
    }

    private Extent Hollow(PartDraft body, Fields inside, Point at, KeptOutline outline)
    {
        var left = at.X + inside.Length("from left").Length;
        var floor = at.Z + inside.Length("from foot").Length;
        var hollow = new Extent(
            new(left, at.Y, floor),
            new(
                left + inside.Length("width").Length,
                at.Y + inside.Length("depth").Length,
                floor + inside.Length("height").Length
            )
        );
        if (hollow.Max.Y > body.Extent.Max.Y || !outline.Holds(hollow.Max.X - at.X, hollow.Max.Z - at.Z))
            throw new CannotBuildException(
                new InputError(
                    $"The inside of the {group.Name} reaches out of its outside.",
                    inside.Place,
                    "an inside that leaves walls all round"
                )
            );
        body.CutAway(CutKind.Hollow, hollow);
        return hollow;
    }

    private void Doors(PartDraft body, Fields doors, Extent inside)
    {
        var thickness = doors.Length("thickness");
        var lap = doors.Length("lap").Length;
        var leaves = doors.Count("leaves");
        var gap = leaves == 1 ? Length.Zero : (doors.LengthOrNull("gap") ?? piece.Shop.Length(GapRules.PairGap)).Length;
        var place = new WrittenOrigin(doors.Place);
        var width = Figure.Given("door width as found", (inside.Width + lap + lap - gap) / leaves, place);
        var height = Figure.Given("door height as found", inside.Height + lap + lap, place);
        var opening = new Opening(
            piece.Unique($"{group.Id}/opening"),
            group.Full("opening"),
            inside,
            new OpeningBounds([body.Id], [body.Id], [body.Id], [body.Id]),
            AsMeasured: null,
            doors.Place
        );
        piece.Add(opening);
        var hung = new List<GroupDraft>();
        for (var n = 0; n < leaves; n++)
        {
            var name =
                leaves == 1 ? "door"
                : n == 0 ? "left door"
                : "right door";
            var (isFirst, isLast) = (n == 0, n == leaves - 1);
            var door = piece.Board(
                piece.Group(name, GroupKind.Door, group, doors.Place),
                "leaf",
                Role.Kept,
                material,
                Lie.Of(Direction.Up, Direction.Front),
                height,
                width,
                new(
                    inside.Min.X - lap + ((width.Length + gap) * n),
                    inside.Min.Y - thickness.Length,
                    inside.Min.Z - lap
                ),
                thickness: thickness,
                isKept: true
            );
            piece.Fit("old hinge", door.Extent.Min, 2, door, body);
            piece.Add(
                new Front(
                    door.Group.Id,
                    [door.Id],
                    opening.Id,
                    Hang.Overlay,
                    isFirst ? FrontMotion.TurnsOnLeftEdge : FrontMotion.TurnsOnRightEdge,
                    new(isFirst ? door.Extent.Min.X : door.Extent.Max.X, door.Extent.Max.Y, door.Extent.Min.Z),
                    new WantedSides(isFirst ? lap : null, isLast ? lap : null, lap, lap),
                    [],
                    Drawer: null
                )
            );
            hung.Add(door.Group);
        }
        if (hung is [var left, var right])
            piece.MakeNeighbours(left.Id, Direction.Right, right.Id, gap);
    }

    private void Shelf(PartDraft body, Entry entry, Extent inside)
    {
        var shelf = new Fields((Mapping)entry.Value, piece.Scope);
        var length = shelf.Length("length", "length as found");
        var width = shelf.Length("width", "width as found");
        var left = shelf.LengthOrNull("from left")?.Length ?? ((inside.Width - length.Length) / 2);
        var board = piece.Board(
            group,
            entry.Key,
            Role.Kept,
            material,
            Lie.Of(Direction.Right, Direction.Up),
            length,
            width,
            new(inside.Min.X + left, inside.Max.Y - width.Length, inside.Min.Z + shelf.Length("height").Length),
            source: entry.KeyPlace,
            thickness: shelf.Length("thickness"),
            isKept: true
        );
        CutDown(board, shelf);
        piece.Fit("shelf cleat", board.Extent.Min, 2, board, body);
    }

    private static void CutDown(PartDraft board, Fields shelf)
    {
        if (!shelf.Has("cut down"))
            return;
        var end = shelf.Text("cut down") switch
        {
            "left end" => Direction.Left,
            "right end" => Direction.Right,
            "front edge" => Direction.Front,
            _ => Direction.Back,
        };
        var found = board.Extent.Size(end.Axis());
        var left = shelf.LengthOrNull("to")?.Length ?? found;
        if (left >= found)
            throw new CannotBuildException(
                new InputError(
                    "A cut down part must come out smaller than it was found.",
                    shelf.PlaceOf(shelf.Has("to") ? "to" : "cut down"),
                    "to: less than what is there"
                )
            );
        board.CutAway(
            CutKind.CutDown,
            board.Extent.With(end.Opposite(), board.Extent.Side(end) - ((found - left) * end.Sign()))
        );
    }
}
