using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Feet;

/// <summary>How the inner edge of a bracket is sawn.</summary>
internal enum BracketShape
{
    /// <summary>Straight up from the foot to the strip that is left under the carcase.</summary>
    Straight,

    /// <summary>A quarter of a circle, hollow.</summary>
    Cove,

    /// <summary>Two quarters of circles half as large: hollow from the foot, then round.</summary>
    Ogee,
}

/// <summary>Bracket feet: at each front corner two boards that meet in a mitre, at each rear one a board and a plain back.</summary>
/// <param name="Length">Along the front and the ends.</param>
/// <param name="Foot">What stands on the floor, from the corner.</param>
/// <param name="Strip">What is left of the height at the inner end.</param>
/// <param name="Block">Side of the square blocks glued in behind the corners, which carry the weight.</param>
internal sealed record BracketsPlan(
    Material Material,
    Figure Height,
    Figure Length,
    Figure Foot,
    Figure Strip,
    Figure Block,
    BracketShape Shape,
    SourcePlace Place
) : StandPlan
{
    public override Figure? Lift => Height;
}
