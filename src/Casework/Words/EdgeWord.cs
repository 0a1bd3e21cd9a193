using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>edge:</c> the shape that is run along edges: chamfer, round, cove, ogee, bead, or points of the maker's own.</summary>
internal static class EdgeWord
{
    private static readonly string[] Shapes = ["chamfer", "round", "cove", "ogee", "bead"];

    private const string Spoken = "a shape and its size: chamfer 1/8, round 1/4, cove 1/2, ogee 1/2, bead 3/8";

    public static RecordShape Word { get; } =
        new(
            "edge",
            "The shape run along edges, in short `round 1/4`. Sizes are told as far as the shape reaches, in from the edge and down from the face: a round and a cove by their radius, an ogee (round above, hollow below) and a bead (with a quirk behind it, a quarter as wide) by their whole size.",
            "edge: { ogee: 1/2, along: front and ends }",
            () =>
                [
                    new("chamfer", new LengthShape(LengthSign.AboveZero), "A corner taken off straight."),
                    new("round", new LengthShape(LengthSign.AboveZero), "A corner rounded over, by its radius."),
                    new("cove", new LengthShape(LengthSign.AboveZero), "A corner hollowed out, by its radius."),
                    new("ogee", new LengthShape(LengthSign.AboveZero), "Round above and hollow below."),
                    new("bead", new LengthShape(LengthSign.AboveZero), "A half round behind a quirk."),
                    new(
                        "points",
                        new ListShape(new ListShape(new LengthShape(LengthSign.Any), 2, 3), 2, 24),
                        "A shape of your own: points from the face to the edge, each in from the edge and down from the face; a third number is the radius of the side that leads there, a hollow where it is below zero."
                    ),
                    new(
                        "down",
                        new LengthShape(LengthSign.AboveZero),
                        "How far a chamfer goes down from the face.",
                        Default: "as far as in from the edge"
                    ),
                    new(
                        "along",
                        new ChoiceShape("front", "front and ends", "front and left", "front and right", "all round"),
                        "Which edges get it.",
                        Default: "front and ends of tops, the front of shelves"
                    ),
                    new(
                        "from",
                        new ChoiceShape("above", "below", "both faces"),
                        "From which face it is run.",
                        Default: "above"
                    ),
                ]
        );

    public static EitherShape Shape { get; } = new(new SpokenShape(Spoken), Word);

    /// <summary>Reads the shape of edges; null where none is said.</summary>
    /// <param name="usual">The edges where the recipe does not say which.</param>
    public static EdgePlan? Read(Fields owner, string key, Scope scope, params IReadOnlyList<Direction> usual)
    {
        if (owner.Map(key) is { } fields)
        {
            RefuseUnasked(fields, "along", usual.Count < 3, "Which edges get the shape is settled here.");
            RefuseUnasked(fields, "from", usual.Count == 0, "From which face the shape is run is settled here.");
            return new EdgePlan(
                ReadShape(fields, scope),
                fields.Text("along") switch
                {
                    "front" => [Direction.Front],
                    "front and ends" => [Direction.Front, Direction.Left, Direction.Right],
                    "front and left" => [Direction.Front, Direction.Left],
                    "front and right" => [Direction.Front, Direction.Right],
                    "all round" => [Direction.Front, Direction.Left, Direction.Right, Direction.Back],
                    _ => usual,
                },
                fields.Text("from") is null or "above" or "both faces",
                fields.Text("from") is "below" or "both faces"
            );
        }
        return owner.Node(key) is Scalar spoken ? new EdgePlan(Say(spoken, scope), usual, true, false) : null;
    }

    /// <summary>What plays no part is refused, so that nobody waits for it.</summary>
    private static void RefuseUnasked(Fields fields, string key, bool isSettled, string message)
    {
        if (isSettled && fields.Has(key))
            throw new CannotBuildException(new InputError(message, fields.PlaceOf(key), $"no {key}:"));
    }

    /// <summary>A shape said in two words: <c>ogee 1/2</c>.</summary>
    private static EdgeShape Say(Scalar spoken, Scope scope)
    {
        var text = spoken.Text.Trim();
        var at = text.IndexOf(' ', StringComparison.Ordinal);
        var name = at < 0 ? text : text[..at];
        if (!Shapes.Contains(name, StringComparer.Ordinal))
            throw new CannotBuildException(
                new InputError($"No edge is shaped as '{name}'.", spoken.Place, Spoken, NearestWord.To(name, Shapes))
            );
        if (at < 0)
            throw new CannotBuildException(
                new InputError($"How large the {name} is is missing.", spoken.Place, Spoken)
            );
        var size = text[at..].Trim();
        var place = spoken.Place with
        {
            Column = spoken.Place.Column + spoken.Text.IndexOf(size, StringComparison.Ordinal),
            Length = size.Length,
        };
        var before = scope.Errors.Count;
        var length = scope.Length(new Scalar(size, place), name).Length;
        if (scope.Errors.Count > before)
            throw new CannotBuildException(scope.Errors[^1]);
        if (length <= Length.Zero)
            throw new CannotBuildException(new InputError($"A {name} has a size above zero.", place, Spoken));
        return Named(name, length, length, scope.Unit);
    }

    private static EdgeShape ReadShape(Fields fields, Scope scope)
    {
        string[] said = [.. Shapes.Append("points").Where(fields.Has)];
        if (said.Length != 1)
            throw new CannotBuildException(
                new InputError(
                    said.Length == 0
                        ? "The shape of the edge is missing."
                        : $"An edge cannot be both '{said[0]}' and '{said[1]}'.",
                    fields.Place,
                    "one of chamfer, round, cove, ogee, bead, points"
                )
            );
        if (said[0] != "points")
        {
            var size = fields.Length(said[0]).Length;
            return Named(said[0], size, fields.LengthOrNull("down")?.Length ?? size, scope.Unit);
        }
        var steps = fields
            .List("points")
            .OfType<Sequence>()
            .Select(point =>
                (
                    point.Place,
                    Numbers: point.Items.OfType<Scalar>().Select(n => scope.Length(n, "point").Length).ToList()
                )
            )
            .Select(point => new OwnShape.Step(
                point.Numbers[0],
                point.Numbers[1],
                point.Numbers.Count > 2 ? point.Numbers[2] : Length.Zero,
                point.Place
            ))
            .ToList();
        return OwnShape.Of(steps, "moulding", fields.PlaceOf("points"));
    }

    private static EdgeShape Named(string name, Length size, Length down, LengthUnit unit)
    {
        var format = LengthFormat.For(unit);
        var called = $"{name} {format.Write(size)}" + (down == size ? "" : $" x {format.Write(down)}");
        return name switch
        {
            "chamfer" => EdgeShape.Chamfer(size, down, called),
            "round" => EdgeShape.Round(size, called),
            "cove" => EdgeShape.Cove(size, called),
            "ogee" => EdgeShape.Ogee(size, called),
            _ => EdgeShape.Bead(size, called),
        };
    }
}
