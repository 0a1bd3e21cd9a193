using Dryfit.Findings;

namespace Dryfit.Casework.Building;

/// <summary>
/// Thrown inside the stage where a recipe asks for what cannot be built; the stage's door turns it into its error. It
/// never leaves the stage.
/// </summary>
internal sealed class CannotBuildException(InputError error) : Exception(error.Message)
{
    public InputError Error { get; } = error;
}
