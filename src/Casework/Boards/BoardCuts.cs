using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>Makes the cuts that a loose board has of its own, measured from its ends and edges as it really is.</summary>
internal sealed class BoardCuts(BoardPlan plan, PartDraft board)
{
    private Scope Scope => plan.Fields.Scope;

    public void Make()
    {
        foreach (var item in plan.Fields.List("cuts").OfType<Mapping>())
        {
            var word = new Fields(item, Scope);
            string[] said = [.. item.Entries.Select(e => e.Key)];
            if (said.Length != 1)
                throw Refuse(
                    word.Place,
                    said.Length == 0 ? "What is cut is missing." : $"A {said[0]} and a {said[1]} are two cuts.",
                    "one cut an item: - groove: { in: bottom, from: back 10, wide: 6, deep: 8 }"
                );
            var fields = word.Map(said[0])!;
            switch (said[0])
            {
                case "rabbet":
                    Rabbet(fields);
                    break;
                case "bore":
                    Bore(fields);
                    break;
                case "bevel":
                    Bevel(fields);
                    break;
                case "taper" or "arch" or "outline":
                    new BoardShaping(plan, board).Cut(said[0], fields);
                    break;
                default:
                    Straight(said[0], fields);
                    break;
            }
        }
    }

    private void Straight(string word, Fields fields)
    {
        var into = Sides.Of(fields.Text("in")!);
        var (beside, from) = SidePhrase.ReadOffset((Scalar)fields.Node("from")!, Scope);
        var (wide, deep) = (fields.Length("wide").Length, fields.Length("deep").Length);
        RefuseSameWay(fields, "from", into, beside);
        var start = from?.Length ?? Length.Zero;
        if (start < Length.Zero || start + wide > board.Extent.Size(beside.Axis()))
            throw RunsOff(fields, word, beside.Axis());
        RefuseThrough(fields, word, into, deep);
        var near = board.Extent.Side(beside) - (start * beside.Sign());
        var room = Between(board.Extent, beside, near, near - (wide * beside.Sign()));
        room = room.With(into.Opposite(), board.Extent.Side(into) - (deep * into.Sign()));
        var run = Third(into.Axis(), beside.Axis());
        if (word == "notch" && into.Axis() != plan.Lie.Shows.Axis() && run != plan.Lie.Shows.Axis())
            throw Refuse(
                fields.PlaceOf("from"),
                $"A notch goes through the thickness; this one would run along the {plan.Name}.",
                "from: one of its ends; or a rabbet"
            );
        var kind = word switch
        {
            "notch" => CutKind.Notch,
            "dado" => fields.Has("stopped") ? CutKind.StoppedDado : CutKind.Dado,
            _ => CutKind.Groove,
        };
        board.CutAway(kind, Stop(fields, room, run));
    }

    private void Rabbet(Fields fields)
    {
        var (into, at, room) = CornerRoom(fields, "rabbet");
        board.CutAway(CutKind.Rabbet, Stop(fields, room, Third(into.Axis(), at.Axis())));
    }

    private void Bevel(Fields fields)
    {
        var (into, at, room) = CornerRoom(fields, "bevel");
        var run = Third(into.Axis(), at.Axis());
        var stretch = Stop(fields, room, run);
        ShapedEdge.Cut(
            board,
            at,
            into,
            EdgeShape.Chamfer(room.Size(at.Axis()), room.Size(into.Axis()), "bevel") with
            {
                Kind = CutKind.Bevel,
            },
            (stretch.Min[run], stretch.Max[run])
        );
    }

    private (Direction Into, Direction At, Extent Room) CornerRoom(Fields fields, string word)
    {
        var (into, at) = (Sides.Of(fields.Text("in")!), Sides.Of(fields.Text("at")!));
        RefuseSameWay(fields, "at", into, at);
        var (wide, deep) = (fields.Length("wide").Length, fields.Length("deep").Length);
        if (wide >= board.Extent.Size(at.Axis()))
            throw RunsOff(fields, word, at.Axis());
        RefuseThrough(fields, word, into, deep);
        var room = board
            .Extent.With(into.Opposite(), board.Extent.Side(into) - (deep * into.Sign()))
            .With(at.Opposite(), board.Extent.Side(at) - (wide * at.Sign()));
        return (into, at, room);
    }

    private void Bore(Fields fields)
    {
        var into = Sides.Of(fields.Text("in")!);
        var offsets = fields.List("at").OfType<Scalar>().Select(s => SidePhrase.ReadOffset(s, Scope)).ToList();
        if (offsets.Select(o => o.Side.Axis()).Append(into.Axis()).Distinct().Count() != 3)
            throw Refuse(
                fields.PlaceOf("at"),
                $"A hole in the {Sides.Word(into)} has its place from two sides that stand square to each other.",
                "at: [left 50, bottom 30]"
            );
        var diameter = fields.Length("across").Length;
        var depth = fields.LengthOrNull("deep")?.Length ?? board.Extent.Size(into.Axis());
        if (depth > board.Extent.Size(into.Axis()))
            throw Refuse(fields.PlaceOf("deep"), $"The hole is deeper than the {plan.Name}.", "less, or no deep:");
        var centre = board.Extent.Min.With(into.Axis(), board.Extent.Side(into));
        foreach (var (side, by) in offsets)
            centre = centre.With(side.Axis(), board.Extent.Side(side) - ((by?.Length ?? Length.Zero) * side.Sign()));
        var times = Math.Max(1, fields.Count("times"));
        var every = fields.LengthOrNull("every")?.Length;
        if (times > 1 && every is null)
            throw Refuse(fields.Place, "How far apart the holes are is missing.", "every: 32");
        var way = fields.Text("towards") is { } towards ? Sides.Of(towards) : offsets[0].Side.Opposite();
        if (way.Axis() == into.Axis())
            throw Refuse(fields.PlaceOf("towards"), "The row would go into the board.", "a side along its face");
        for (var n = 0; n < times; n++)
        {
            var at = centre.Moved(way, (every ?? Length.Zero) * n);
            RefuseOffTheBoard(fields, at, into, diameter / 2, n);
            board.Bore(CutKind.Bore, at, into.Opposite(), diameter, depth);
        }
    }

    private void RefuseOffTheBoard(Fields fields, Point at, Direction into, Length radius, int number)
    {
        foreach (var axis in Enum.GetValues<Axis>())
        {
            if (
                axis != into.Axis()
                && (at[axis] - radius < board.Extent.Min[axis] || at[axis] + radius > board.Extent.Max[axis])
            )
                throw Refuse(
                    fields.PlaceOf("at"),
                    number == 0
                        ? $"The hole runs off the {plan.Name} {Sides.Across(axis)}."
                        : $"Hole {number + 1} of the row runs off the {plan.Name} {Sides.Across(axis)}.",
                    "holes that lie wholly on the board"
                );
        }
    }

    /// <summary>The room of a cut that runs from end to end, or stops where it is said.</summary>
    private Extent Stop(Fields fields, Extent room, Axis run)
    {
        IReadOnlyList<Scalar> said = fields.Node("stopped") is Scalar one
            ? [one]
            : [.. fields.List("stopped").OfType<Scalar>()];
        foreach (var scalar in said)
        {
            var (end, by) = SidePhrase.ReadOffset(scalar, Scope);
            if (end.Axis() != run)
                throw Refuse(
                    scalar.Place,
                    $"The cut runs {Sides.Across(run)}; it has no end at the {Sides.Word(end)}.",
                    $"{Sides.Word(Sides.Low(run))} or {Sides.Word(Sides.High(run))}, and a distance"
                );
            room = room.With(end, board.Extent.Side(end) - ((by?.Length ?? Length.Zero) * end.Sign()));
        }
        return room.Min[run] < room.Max[run]
            ? room
            : throw Refuse(fields.PlaceOf("stopped"), "The cut stops before it begins.", "shorter stops");
    }

    /// <summary>Two words for one way leave the cut without a place.</summary>
    private static void RefuseSameWay(Fields fields, string key, Direction into, Direction other)
    {
        if (into.Axis() == other.Axis())
            throw Refuse(
                fields.PlaceOf(key),
                $"What is cut into the {Sides.Word(into)} is not placed from the {Sides.Word(other)}.",
                "a side square to it"
            );
    }

    private void RefuseThrough(Fields fields, string word, Direction into, Length deep)
    {
        if (deep >= board.Extent.Size(into.Axis()))
            throw Refuse(
                fields.PlaceOf("deep"),
                $"The {word} goes right through the {plan.Name}.",
                "less depth than the board has there"
            );
    }

    private CannotBuildException RunsOff(Fields fields, string word, Axis axis) =>
        Refuse(
            fields.PlaceOf("wide"),
            $"The {word} runs off the {plan.Name} {Sides.Across(axis)}.",
            "a narrower cut, or another place"
        );

    private static Extent Between(Extent box, Direction side, Length one, Length other) =>
        new(box.Min.With(side.Axis(), Length.Min(one, other)), box.Max.With(side.Axis(), Length.Max(one, other)));

    private static Axis Third(Axis a, Axis b) => (Axis)(3 - (int)a - (int)b);

    private static CannotBuildException Refuse(SourcePlace place, string message, string expected) =>
        new(new InputError(message, place, expected));
}
