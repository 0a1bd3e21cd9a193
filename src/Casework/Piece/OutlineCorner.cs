using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>A corner of the outline of a cut, and the side that goes on from it to the next corner.</summary>
/// <param name="A">On the first axis of the outline.</param>
/// <param name="B">On the second.</param>
/// <param name="Arc">How the side bends; null where it is straight.</param>
public readonly record struct OutlineCorner(Length A, Length B, OutlineArc? Arc = null)
{
    public static implicit operator OutlineCorner((Length A, Length B) corner) => new(corner.A, corner.B);

    public static OutlineCorner ToOutlineCorner((Length A, Length B) corner) => corner;
}

/// <summary>
/// The round of one side of an outline: it goes around a centre, less than a whole turn. Corner and next corner are equally
/// far from the centre.
/// </summary>
/// <param name="A">The centre on the first axis of the outline.</param>
/// <param name="B">The centre on the second.</param>
/// <param name="Clockwise">Which way it goes round, as the outline is looked at.</param>
public sealed record OutlineArc(Length A, Length B, bool Clockwise);
