using Dryfit.Casework.Building;
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
}
