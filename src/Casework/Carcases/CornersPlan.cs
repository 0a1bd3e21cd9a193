using Dryfit.Findings;

namespace Dryfit.Casework.Carcases;

/// <summary>How a flat panel and a side meet where both end: at a corner of the box.</summary>
internal enum CornerJoint
{
    /// <summary>As all flat panels of the carcase meet its uprights.</summary>
    AsPanels,

    /// <summary>Through dovetails: the tails are on the sides, so that what stands inside cannot push the bottom out.</summary>
    Dovetails,

    /// <summary>Half-blind dovetails: the tails are on the flat panel, and the sides show none of them.</summary>
    HalfBlind,
    BoxJoint,
    Mitre,
    SplinedMitre,
}

/// <summary>How the corners of a carcase are joined, above and below.</summary>
internal sealed record CornersPlan(CornerJoint Top, CornerJoint Bottom, SourcePlace Place)
{
    /// <summary>The joint at the upper or the lower ends of the sides.</summary>
    public CornerJoint At(Direction end) => end == Direction.Up ? Top : Bottom;
}
