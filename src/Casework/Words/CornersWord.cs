using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>corners:</c> how top panel and bottom meet the sides where all of them end.</summary>
internal static class CornersWord
{
    private static readonly ChoiceShape Joints = new(
        "dovetails",
        "half-blind dovetails",
        "box joint",
        "mitre",
        "splined mitre"
    );

    private static RecordShape Word { get; } =
        new(
            "corners",
            "How the corners of a carcase are joined above and below, where that differs.",
            "corners: { top: half-blind dovetails, bottom: dovetails }\n",
            () =>
                [
                    new("top", Joints, "At the upper ends of the sides.", Default: "by the `joint` of the carcase"),
                    new("bottom", Joints, "At their lower ends.", Default: "by the `joint` of the carcase"),
                ]
        );

    public static Field Field { get; } =
        new(
            "corners",
            new EitherShape(Joints, Word),
            "How top panel and bottom of a frameless carcase meet the sides where all of them end, all glued: through dovetails "
                + "with their tails on the sides, half-blind ones that show on top and bottom only, a box joint, or a mitre, "
                + "plain or with a spline across it. Shelves and partitions go by `joint`.",
            Default: "by its `joint`"
        );

    public static CornersPlan? Read(Fields fields)
    {
        if (fields.Node("corners") is not { } said)
            return null;
        if (said is Mapping mapping)
        {
            var own = new Fields(mapping, fields.Scope);
            return new CornersPlan(Of(own.Text("top")), Of(own.Text("bottom")), fields.PlaceOf("corners"));
        }
        var both = Of(fields.Text("corners"));
        return new CornersPlan(both, both, fields.PlaceOf("corners"));
    }

    /// <summary>Refuses corners where a side or a flat panel does not end.</summary>
    public static void Refuse(CarcasePlan plan)
    {
        if (plan.Corners is not { } corners)
            return;
        var name = plan.Group.Name;
        if (plan.Face is not null)
            throw Cannot(
                $"The {name} has a face frame: its corners are covered by it.",
                "no face frame, or no `corners`"
            );
        if (plan.Diagonal is not null || plan.Canted is not null)
            throw Cannot($"The corners of the {name} are not square.", "a square carcase, or no `corners`");
        if (plan.Sides is not null)
            throw Cannot(
                $"The sides of the {name} are frames: their rails have no ends to join at a corner.",
                "sides that are boards, or no `corners`"
            );
        if (corners.Top != CornerJoint.AsPanels && plan.ClosedBy == ClosedBy.Stretchers)
            throw Cannot(
                $"The {name} has no top panel: stretchers close it.",
                "`closed by: panel`, or `corners: { bottom: … }`"
            );
        if (
            corners.Bottom != CornerJoint.AsPanels
            && (
                plan.Stand.Raise(hasFace: false) is not null
                || plan.Stand is LegsPlan { AtLeft: false } or LegsPlan { AtRight: false }
            )
        )
            throw Cannot(
                $"The sides of the {name} go down past its bottom: the two do not end together.",
                "legs at both ends or a plinth under it, or `corners: { top: … }`"
            );
        if (plan.Edging is not null && Shows(corners.Top) | Shows(corners.Bottom))
            throw Cannot(
                $"Edging on the front of the {name} would run across the tails or fingers of its corners.",
                "a mitre, half-blind dovetails, or no `edging`"
            );

        CannotBuildException Cannot(string message, string expected) =>
            new(new InputError(message, corners.Place, expected));
    }

    private static bool Shows(CornerJoint joint) => joint is CornerJoint.Dovetails or CornerJoint.BoxJoint;

    private static CornerJoint Of(string? said) =>
        said switch
        {
            "dovetails" => CornerJoint.Dovetails,
            "half-blind dovetails" => CornerJoint.HalfBlind,
            "box joint" => CornerJoint.BoxJoint,
            "mitre" => CornerJoint.Mitre,
            "splined mitre" => CornerJoint.SplinedMitre,
            _ => CornerJoint.AsPanels,
        };
}
