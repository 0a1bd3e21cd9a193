using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>turned:</c> a body at an angle to what it stands beside or on, turned about one of its corners in plan.</summary>
internal static class TurnedWord
{
    private const string LeftFront = "left front corner";
    private const string RightFront = "right front corner";
    private const string LeftRear = "left rear corner";
    private const string RightRear = "right rear corner";
    private const string Middle = "middle";

    /// <summary>No run in a room turns more often; each turn more is reckoned with for every part behind it.</summary>
    private const int MostTurns = 40;

    public static RecordShape Word { get; } =
        new(
            "turned",
            "An angle in plan: the carcase is built square and turned as a whole, with all that stands beside or on it in turn.",
            "turned: { left: 45 }",
            () =>
                [
                    new("left", new NumberShape(), "Degrees, above 0 and up to 180; its front then looks to the left."),
                    new("right", new NumberShape(), "Degrees; its front then looks to the right."),
                    new(
                        "about",
                        new ChoiceShape(LeftFront, RightFront, LeftRear, RightRear, Middle),
                        "What stays where it is.",
                        Default: "the corner beside its neighbour that keeps the two clear of each other; the middle of what stands on another; else the left front corner"
                    ),
                ]
        );

    /// <summary>Reads how a body is turned; null where nothing is said.</summary>
    /// <param name="envelope">The body before it is turned.</param>
    /// <param name="frame">The frame it stands in.</param>
    /// <param name="isFirst">Whether it is the first of the recipe, with none to stand beside.</param>
    public static PlanTurn? Read(Fields body, Extent envelope, PlanTurn? frame, bool isFirst)
    {
        if (body.Map("turned") is not { } fields)
            return null;
        if (fields.Has("left") == fields.Has("right"))
            throw new CannotBuildException(
                new InputError(
                    fields.Has("left") ? "It cannot be turned both ways." : "How far it is turned is missing.",
                    fields.Place,
                    "turned: { left: 45 }, in degrees"
                )
            );
        var turns = 0;
        for (var around = frame; around is not null; around = around.Within)
            turns++;
        if (turns >= MostTurns)
            throw new CannotBuildException(
                new InputError(
                    $"The run turns more than {MostTurns} times, one carcase after the other.",
                    fields.Place,
                    "a run that goes round a room"
                )
            );
        var toTheRight = fields.Has("right");
        var key = toTheRight ? "right" : "left";
        var degrees = fields.NumberOrNull(key, "angle")!.Number;
        if (degrees <= Rational.Zero || degrees > 180)
            throw new CannotBuildException(
                new InputError(
                    "That is no angle to turn a carcase by.",
                    fields.PlaceOf(key),
                    "degrees above 0 and up to 180"
                )
            );
        var pivot = (fields.Text("about") ?? Usual(body, toTheRight, isFirst)) switch
        {
            RightFront => new Point(envelope.Max.X, envelope.Min.Y, Length.Zero),
            LeftRear => new Point(envelope.Min.X, envelope.Max.Y, Length.Zero),
            RightRear => new Point(envelope.Max.X, envelope.Max.Y, Length.Zero),
            Middle => new Point(
                (envelope.Min.X + envelope.Max.X) / 2,
                (envelope.Min.Y + envelope.Max.Y) / 2,
                Length.Zero
            ),
            _ => new Point(envelope.Min.X, envelope.Min.Y, Length.Zero),
        };
        return new PlanTurn(pivot, toTheRight ? degrees : -degrees, frame);
    }

    /// <summary>Of the two corners beside a neighbour one opens a wedge between the two, the other drives them into each other.</summary>
    private static string Usual(Fields body, bool toTheRight, bool isFirst)
    {
        if (body.Has("left of"))
            return toTheRight ? RightFront : RightRear;
        if (body.Has("on"))
            return Middle;
        return isFirst || body.Has("at") || !toTheRight ? LeftFront : LeftRear;
    }
}
