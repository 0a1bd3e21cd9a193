using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Corners;

/// <summary><c>diagonal:</c> a corner carcase with its front across the corner.</summary>
internal static class DiagonalWord
{
    public static RecordShape Word { get; } =
        new(
            "diagonal",
            "A corner carcase whose front runs across the corner at 45 degrees: its size is measured along both walls, and its face frame is mitred to meet the fronts of the two runs. Its top follows the corner, and so do its head and a worktop over it.",
            "diagonal: { corner: right, beside: 560 }",
            () =>
                [
                    new(
                        "corner",
                        new ChoiceShape("right", "left"),
                        "On which side the corner of the walls is.",
                        Default: "right"
                    ),
                    new(
                        "beside",
                        new LengthShape(LengthSign.AboveZero),
                        "Depth of its end beside the run along the back wall; the end before the return is what 45 degrees leave.",
                        Required: true
                    ),
                ]
        );

    /// <summary>What is said of the corner; null where the carcase is square.</summary>
    public static DiagonalPlan? Said(Fields carcase) =>
        carcase.Map("diagonal") is { } fields
            ? new(fields.Text("corner") != "left", fields.Length("beside", "depth beside the run"), fields.Place)
            : null;

    public static DiagonalPlan? Read(Fields carcase, PieceBuilder piece, CarcasePlan plan)
    {
        if (carcase.Map("diagonal") is not { } fields || Said(carcase) is not { } said)
            return null;
        var beside = said.Beside;
        foreach (
            var key in (ReadOnlySpan<string>)
                ["blind", "filler", "hangs on", "faced", "scribes", "floor scribe", "front edges", "grain runs on"]
        )
        {
            if (carcase.Has(key) && carcase.Text(key) != "none")
                throw Refused($"A diagonal corner carcase has no '{key}'.", carcase.PlaceOf(key), $"no {key}");
        }
        if (plan.Face is null)
            throw Refused(
                "A diagonal front hangs its door on a face frame, and there is none.",
                fields.Place,
                "face frame:"
            );
        if (plan.Joint is not (PanelJoint.Dado or PanelJoint.Screws))
            throw Refused(
                "Only dados and screws hold where the corner of a panel is cut off: other joints come out of its edge.",
                carcase.PlaceOf("joint"),
                "joint: dado, or screws"
            );
        if (plan.Stand is not (NoStand or PlinthPlan { Arch: null }))
            throw Refused(
                "A diagonal corner carcase stands on its own sides or on a plain plinth.",
                carcase.PlaceOf("stands on"),
                "stands on: { plinth: 100 mm }"
            );
        var cut = plan.Depth.Length - beside.Length;
        // What 45 degrees leave of the other end, and of this one, must be more than the boards take.
        var least = plan.Body.Thickness.Length * 4;
        if (cut <= least || plan.Width.Length - cut <= least || beside.Length <= least)
            throw Refused(
                "At 45 degrees that leaves no end on one of its sides, or no front.",
                fields.PlaceOf("beside"),
                "a carcase deeper and wider than the runs beside it"
            );
        DiagonalTop.Refuse(plan.Top, fields.Place);
        return said;
    }

    private static CannotBuildException Refused(string message, SourcePlace place, string wanted) =>
        new(new InputError(message, place, wanted));
}
