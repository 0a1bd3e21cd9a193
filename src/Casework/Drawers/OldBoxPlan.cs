using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>An old drawer box as found, and where it is cut down.</summary>
internal sealed record OldBoxPlan
{
    private static readonly ChoiceShape Cuts = new(
        "left end",
        "right end",
        "front end",
        "back end",
        "top edge",
        "bottom edge"
    );

    public static RecordShape Shape { get; } =
        new(
            "old box",
            "An old drawer box that is used again, as found: its outside, what its corners are, and where it is cut down. Joints that are cut off are made anew.",
            "old box: { width: 460, height: 120, length: 440, sides: 12, joint: dovetailed, cut down: right end, to: 380, joined anew: rabbeted }",
            () =>
                [
                    new("width", Size, "Outside, from side to side.", Required: true),
                    new("height", Size, "Outside, without what is planted on it.", Required: true),
                    new("length", Size, "Outside, from front to back.", Required: true),
                    new("sides", Size, "Thickness of its walls.", Default: "that of the box's material"),
                    new(
                        "joint",
                        new ChoiceShape("dovetailed", "rabbeted", "screwed"),
                        "What its corners are.",
                        Default: "dovetailed"
                    ),
                    new("cut down", Cuts, "The end or edge at which it is cut down.", Default: "not at all"),
                    new("to", Size, "What is left of it that way.", Default: "what the opening and its slides ask for"),
                    new(
                        "joined anew",
                        new ChoiceShape("rabbeted", "screwed"),
                        "How the corners whose joint was cut off are made anew.",
                        Default: "screwed"
                    ),
                ]
        );

    public required Figure Width { get; init; }

    public required Figure Height { get; init; }

    public required Figure Length { get; init; }

    public required Figure Side { get; init; }

    public required DrawerJoint Found { get; init; }

    public required DrawerJoint Anew { get; init; }

    /// <summary>Where it is cut down; null for not at all.</summary>
    public required Direction? CutAt { get; init; }

    /// <summary>What is left; null: what is asked for.</summary>
    public required Figure? To { get; init; }

    public required SourcePlace Place { get; init; }

    private static LengthShape Size => new(LengthSign.AboveZero);

    public static OldBoxPlan? Read(Fields? said, Material box)
    {
        if (said?.Map("old box") is not { } fields)
            return null;
        return new OldBoxPlan
        {
            Width = fields.Length("width", "box width as found"),
            Height = fields.Length("height", "box height as found"),
            Length = fields.Length("length", "box length as found"),
            Side = fields.LengthOrNull("sides", "side thickness as found") ?? box.Thickness.As("side thickness"),
            Found = fields.Text("joint") switch
            {
                "rabbeted" => DrawerJoint.Rabbeted,
                "screwed" => DrawerJoint.Screwed,
                _ => DrawerJoint.Dovetailed,
            },
            Anew = fields.Text("joined anew") == "rabbeted" ? DrawerJoint.Rabbeted : DrawerJoint.Screwed,
            CutAt = fields.Text("cut down") switch
            {
                "left end" => Direction.Left,
                "right end" => Direction.Right,
                "front end" => Direction.Front,
                "back end" => Direction.Back,
                "top edge" => Direction.Up,
                "bottom edge" => Direction.Down,
                _ => null,
            },
            To = fields.LengthOrNull("to", "cut down to"),
            Place = fields.Place,
        };
    }

    /// <summary>What is left of a size.</summary>
    /// <param name="axis">The axis it lies on.</param>
    /// <param name="asked">What is asked for, where the recipe does not say to what it is cut down.</param>
    public Figure Left(Axis axis, Figure? asked)
    {
        var found = axis switch
        {
            Axis.X => Width,
            Axis.Y => Length,
            _ => Height,
        };
        if (CutAt?.Axis() != axis)
            return found;
        var left = To ?? asked ?? found;
        if (left.Length >= found.Length)
            throw NoRoom.Of(
                $"The old box is {NoRoom.Show(found.Length)} that way: it cannot be cut down to {NoRoom.Show(left.Length)}.",
                Place,
                "to: less than what is there, or no `cut down`"
            );
        return left;
    }
}
