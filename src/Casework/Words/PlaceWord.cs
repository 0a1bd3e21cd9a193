using Dryfit.Casework.Building;
using Dryfit.Casework.Corners;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>
/// Where a body stands: on, above or beside another, round the corner from it, or at a point. What says nothing stands right of the one before
/// it; the first at the origin. Bodies beside each other keep their backs in line, as along a wall.
/// </summary>
internal static class PlaceWord
{
    private static readonly ChoiceShape Across = new("centred", "left", "right");

    private static readonly string[] Keys = ["on", "above", "right of", "left of", "returns from", "between", "at"];

    /// <summary>Whether the recipe says where a body stands.</summary>
    public static bool SaysWhere(Fields fields) => Keys.Any(fields.Has);

    public static IReadOnlyList<Field> Fields { get; } =
    [
        new("on", new NameShape("carcase"), "The carcase it stands on."),
        new("above", new NameShape("carcase"), "The carcase it hangs over; `gap` is the height between."),
        new("right of", new NameShape("carcase"), "The carcase it stands right of."),
        new("left of", new NameShape("carcase"), "The carcase it stands left of."),
        new(
            "returns from",
            new NameShape("carcase"),
            "The carcase in a corner that it stands square before, as the return of an L: its back is flush with the end of that one, its own end against its front."
        ),
        new(
            "between",
            new NameShape("space between walls"),
            "The space of the room it stands in: in the middle of where the walls leave room, its front in the mouth, on the highest place of the floor."
        ),
        new(
            "at",
            new ListShape(new LengthShape(LengthSign.Any), 3, 3),
            "Left, front, lower corner, in the coordinates of the piece: to the right, to the back and up from their origin."
        ),
        new(
            "gap",
            new LengthShape(),
            "Room between it and the carcase it stands beside, before or over.",
            Default: "none; the shop's clearance beside a kept carcase; the shop's height over what it hangs above"
        ),
        new(
            "across",
            Across,
            "Where it stands across the one below, or at which end it returns from.",
            Default: "centred; a return at the right"
        ),
        new(
            "line up",
            new ChoiceShape("backs", "fronts", "middles"),
            "What is flush with the carcase below or beside it.",
            Default: "backs"
        ),
        new("turned", TurnedWord.Word, "Its angle to what it stands beside or on, in plan.", Default: "square to it"),
        new(
            "bolted",
            new YesNoShape(),
            "Whether it is bolted to what it stands on or beside, as a section that comes apart again to go through the door.",
            Default: "no: it rests on what is below, and is screwed to what is beside"
        ),
    ];

    /// <summary>
    /// Finds the lower corner of a body from the bodies it refers to, in the frame of the one it stands on or beside, and
    /// how that frame is turned.
    /// </summary>
    /// <param name="before">The body before it in the recipe; null for the first.</param>
    /// <param name="other">Gives the settled place of another body.</param>
    public static Spot Find(
        Fields fields,
        PieceBuilder piece,
        (Length Width, Length Height, Length Depth) size,
        bool isKept,
        Body? before,
        Func<string, SourcePlace, Body> other
    )
    {
        string[] said = [.. Keys.Where(fields.Has)];
        if (said.Length > 1)
            throw new CannotBuildException(
                new InputError(
                    $"It cannot stand both '{said[0]}' and '{said[1]}'.",
                    fields.PlaceOf(said[1]),
                    $"one of {string.Join(", ", Keys)}"
                )
            );
        var key = said.Length == 0 ? "" : said[0];
        if (key == "at")
        {
            var at = fields.List("at").OfType<Scalar>().Select(s => piece.Scope.Length(s, "at").Length).ToList();
            return new(new(at[0], at[1], at[2]), null, null, null);
        }
        if (key == "between")
        {
            var (left, right) = piece.Spaces[fields.Text(key)!].Tightest(size.Height);
            return new(new((left + right - size.Width) / 2, Length.Zero, Length.Zero), null, null, null);
        }
        if (key == "" && before is null)
            return new(default, null, null, null);
        var neighbour = key == "" ? before! : other(fields.Text(key)!, fields.PlaceOf(key));
        var box = neighbour.Envelope;
        var y = fields.Text("line up") switch
        {
            "fronts" => box.Min.Y,
            "middles" => (box.Min.Y + box.Max.Y - size.Depth) / 2,
            _ => box.Max.Y - size.Depth,
        };
        if (key is "on" or "above")
        {
            var x = fields.Text("across") switch
            {
                "left" => box.Min.X,
                "right" => box.Max.X - size.Width,
                _ => box.Min.X + ((box.Width - size.Width) / 2),
            };
            if (key == "on")
                return new(new(x, y, box.Max.Z), neighbour.Turn, neighbour.Name, Direction.Down);
            var over = (fields.LengthOrNull("gap") ?? piece.Shop.Length(CarcaseRules.Above)).Length;
            return new(new(x, y, box.Max.Z + over), neighbour.Turn, null, null);
        }
        var gap =
            fields.LengthOrNull("gap")?.Length
            ?? (isKept || neighbour.IsKept ? piece.Shop.Length(CarcaseRules.Clearance).Length : Length.Zero);
        return key switch
        {
            "left of" => new(
                new(box.Min.X - gap - size.Width, y, box.Min.Z),
                neighbour.Turn,
                neighbour.Name,
                Direction.Right
            ),
            "returns from" => Return(fields, neighbour, size, gap),
            _ => new(new(box.Max.X + gap, y, box.Min.Z), neighbour.Turn, neighbour.Name, Direction.Left),
        };
    }

    /// <summary>Before a carcase in a corner and square to it: a quarter turned about its front corner nearest to that one.</summary>
    private static Spot Return(Fields fields, Body corner, (Length Width, Length Height, Length Depth) size, Length gap)
    {
        var box = corner.Envelope;
        var front = box.Min.Y - gap;
        if (fields.Text("across") == "left")
        {
            var pivot = new Point(box.Min.X + size.Depth, front, box.Min.Z);
            return new(
                pivot.Moved(Direction.Left, size.Width),
                new PlanTurn(pivot, 90, corner.Turn),
                corner.Name,
                Direction.Right,
                gap.Sign == 0
            );
        }
        var start = new Point(box.Max.X - size.Depth, front, box.Min.Z);
        return new(start, new PlanTurn(start, -90, corner.Turn), corner.Name, Direction.Left, gap.Sign == 0);
    }
}

/// <summary>Where a body stands.</summary>
/// <param name="Corner">Its left, front, lower corner in its frame.</param>
/// <param name="Frame">How that frame is turned; null where it is the piece's own.</param>
/// <param name="Neighbour">The body it stands on, beside or before; null for none.</param>
/// <param name="Towards">The way from it to its neighbour, in its own frame; null for none.</param>
/// <param name="Touches">Whether it stands against its neighbour, with no gap.</param>
internal sealed record Spot(Point Corner, PlanTurn? Frame, string? Neighbour, Direction? Towards, bool Touches = false);

/// <summary>A body of the recipe with its settled size and place: a carcase, or a kept one.</summary>
/// <param name="Envelope">Its outside in its own frame, before it is turned.</param>
/// <param name="Turn">How it is turned in plan; null where it stands square in the piece.</param>
/// <param name="Spot">Where it was put, and beside what.</param>
internal sealed record Body(
    string Name,
    Figure Width,
    Figure Height,
    Figure Depth,
    Extent Envelope,
    bool IsKept,
    PlanTurn? Turn,
    Spot Spot
)
{
    /// <summary>The space between walls that it stands in, itself or on another that does; null for none.</summary>
    public string? Space { get; init; }

    /// <summary>Its front across a corner; null for a square one.</summary>
    public DiagonalPlan? Diagonal { get; init; }

    /// <summary>Whether it is bolted to its neighbour.</summary>
    public bool IsBolted { get; init; }
}
