using Dryfit.Solids.Shaping;

namespace Dryfit.Solids;

/// <summary>Builds solids: a blank from 0 to <c>size</c>, minus its cuts in any order.</summary>
public static class SolidBuilder
{
    /// <param name="size">Length, width and thickness of the blank, each above zero.</param>
    /// <param name="cuts">What is taken away, in board coordinates.</param>
    /// <exception cref="ArgumentException">A size is not above zero, a number is not finite, a frame is not square, a bore has
    /// fewer than three segments, or the outline of a prism crosses itself.</exception>
    public static Solid Build(Vec3 size, IReadOnlyList<Cut> cuts)
    {
        ArgumentNullException.ThrowIfNull(cuts);
        if (!(size.X > 0 && size.Y > 0 && size.Z > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(size),
                size,
                "A blank needs a length, width and thickness above zero."
            );
        }

        return Workshop.Mine.Build(size, cuts);
    }

    /// <summary>Builds many boards on all cores. Each solid is the same, to the last bit, as built alone.</summary>
    /// <param name="boards">Blanks with their cuts.</param>
    /// <exception cref="ArgumentException">As for <see cref="Build"/>, for the first board that is at fault.</exception>
    public static Solid[] BuildAll(IReadOnlyList<(Vec3 Size, IReadOnlyList<Cut> Cuts)> boards)
    {
        ArgumentNullException.ThrowIfNull(boards);
        return Crew.Build(boards);
    }
}
