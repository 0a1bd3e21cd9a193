using Dryfit.Measure;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// The front of a kept carcase as a tape reads it: the left side plumb, the foot level, the right side from the width at
/// the foot to the width at the top, the top from the height at the left to the height at the right.
/// </summary>
internal readonly record struct KeptOutline(Length Foot, Length Top, Length Left, Length Right)
{
    /// <summary>Whether a point lies inside the right side and under the top, with something left beside and over it.</summary>
    /// <param name="x">From the left side.</param>
    /// <param name="z">From the foot.</param>
    public bool Holds(Length x, Length z)
    {
        // Both slopes run over the whole of the blank, as the wedges are cut.
        var (across, up) = (Length.Max(Foot, Top), Length.Max(Left, Right));
        return x < Foot + ((Top - Foot) * (z / up)) && z < Left + ((Right - Left) * (x / across));
    }
}
