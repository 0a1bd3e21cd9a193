using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Handles;

/// <summary>The pull or knob of a front as the recipe asks for it.</summary>
/// <param name="Family">By the figures of its maker's sheet.</param>
/// <param name="At">"top", "middle" or "bottom"; null: by the house rule.</param>
/// <param name="IsSaidHere">Whether it is asked for of this front, and not of all the piece.</param>
internal sealed record HandlePlan(HardwareFamily Family, string? At, bool IsSaidHere)
{
    /// <summary>Reads it; null where there is none.</summary>
    public static HandlePlan? Read(PieceBuilder piece, Fields? said, SourcePlace place)
    {
        var name = said?.Text("pull");
        if (name == "none" || (name is null && piece.Families.Chosen("pulls") is null))
            return null;
        return new(
            piece.Families.Handle(name, said?.PlaceOf("pull") ?? place, HardwareKinds.Pull),
            said?.Text("pull at"),
            name is not null
        );
    }

    public bool IsKnob => Family.Kind == HardwareKinds.Knob;

    /// <summary>Length over all; the diameter of a knob.</summary>
    public Length Length => Family.Length(IsKnob ? KnobRules.Diameter : PullRules.Length).Length;

    /// <summary>Across that.</summary>
    public Length Across => Family.Length(IsKnob ? KnobRules.Diameter : PullRules.Thickness).Length;

    public Length StandsOff => Family.Length(IsKnob ? KnobRules.StandsOff : PullRules.StandsOff).Length;

    public Length Hole => Family.Length(IsKnob ? KnobRules.Hole : PullRules.Hole).Length;

    /// <summary>Between the two screws of a pull; nothing for a knob.</summary>
    public Length Centres => IsKnob ? Length.Zero : Family.Length(PullRules.Centres).Length;
}
