using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;

namespace Dryfit.Casework.Worktops;

/// <summary>A worktop as made: its lengths from the left, and where they lie in the frame of its run.</summary>
internal sealed record Worktop(
    string Name,
    WorktopRun Run,
    IReadOnlyList<PartDraft> Lengths,
    Length Left,
    Length Right,
    Length Front,
    Length Back
)
{
    public Length Depth => Back - Front;

    /// <summary>The shape run along its edges; null: square.</summary>
    public EdgePlan? Edge { get; init; }

    /// <summary>Its ends that lie in a corner between worktops: seen by nobody, and left square.</summary>
    public ISet<Direction> EndsInCorners { get; } = new HashSet<Direction>();
}
