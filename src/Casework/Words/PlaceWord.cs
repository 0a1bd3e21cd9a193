using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>
/// Where a body stands: on another, beside another, or at a point. What says nothing stands right of the one before
/// it; the first at the origin. Bodies beside each other keep their backs in line, as along a wall.
/// </summary>
internal static class PlaceWord
{
    private static readonly ChoiceShape Across = new("centred", "left", "right");

    private static readonly string[] Keys = ["on", "right of", "left of", "at"];

    /// <summary>Whether the recipe says where a body stands.</summary>
    public static bool SaysWhere(Fields fields) => Keys.Any(fields.Has);

    public static IReadOnlyList<Field> Fields { get; } =
    [
        new("on", new NameShape("carcase"), "The carcase it stands on."),
        new("right of", new NameShape("carcase"), "The carcase it stands right of."),
        new("left of", new NameShape("carcase"), "The carcase it stands left of."),
        new(
            "at",
            new ListShape(new LengthShape(LengthSign.Any), 3, 3),
            "Left, front, lower corner: to the right, to the back and up from the first carcase's."
        ),
        new(
            "gap",
            new LengthShape(),
            "Room between it and the carcase it stands beside.",
            Default: "none; the shop's clearance beside a kept carcase"
        ),
        new("across", Across, "Where it stands across the one below.", Default: "centred"),
        new(
            "line up",
            new ChoiceShape("backs", "fronts"),
            "What is flush with the carcase below or beside it.",
            Default: "backs"
        ),
        new("turned", TurnedWord.Word, "Its angle to what it stands beside or on, in plan.", Default: "square to it"),
    ];

    /// <summary>
    /// Finds the lower corner of a body from the bodies it refers to, in the frame of the one it stands on or beside, and
    /// how that frame is turned; null where it is the piece's own.
    /// </summary>
    /// <param name="before">The body before it in the recipe; null for the first.</param>
    /// <param name="other">Gives the settled place of another body.</param>
    public static (Point Corner, PlanTurn? Frame) Corner(
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
                    "one of on, right of, left of, at"
                )
            );
        var key = said.Length == 0 ? "" : said[0];
        if (key == "at")
        {
            var at = fields.List("at").OfType<Scalar>().Select(s => piece.Scope.Length(s, "at").Length).ToList();
            return (new(at[0], at[1], at[2]), null);
        }
        if (key == "" && before is null)
            return default;
        var neighbour = key == "" ? before! : other(fields.Text(key)!, fields.PlaceOf(key));
        var box = neighbour.Envelope;
        var y = fields.Text("line up") == "fronts" ? box.Min.Y : box.Max.Y - size.Depth;
        if (key == "on")
        {
            var x = fields.Text("across") switch
            {
                "left" => box.Min.X,
                "right" => box.Max.X - size.Width,
                _ => box.Min.X + ((box.Width - size.Width) / 2),
            };
            return (new(x, y, box.Max.Z), neighbour.Turn);
        }
        var gap =
            fields.LengthOrNull("gap")?.Length
            ?? (isKept || neighbour.IsKept ? piece.Shop.Length(CarcaseRules.Clearance).Length : Length.Zero);
        var side = key == "left of" ? box.Min.X - gap - size.Width : box.Max.X + gap;
        return (new(side, y, box.Min.Z), neighbour.Turn);
    }
}

/// <summary>A body of the recipe with its settled size and place: a carcase, or a kept one.</summary>
/// <param name="Envelope">Its outside in its own frame, before it is turned.</param>
/// <param name="Turn">How it is turned in plan; null where it stands square in the piece.</param>
internal sealed record Body(
    string Name,
    Figure Width,
    Figure Height,
    Figure Depth,
    Extent Envelope,
    bool IsKept,
    PlanTurn? Turn
);
