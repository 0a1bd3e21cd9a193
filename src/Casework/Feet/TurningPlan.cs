using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Feet;

/// <summary>
/// What is turned on a square leg below its pommel, from the top down: stretches, each drawn as a true round of its
/// diameter. What the turner makes of them (beads, vases, a swell) is no more than the round of each stretch.
/// </summary>
/// <param name="Pommel">What stays square below the rails.</param>
/// <param name="Stretches">Lengths with their diameters, from the pommel down.</param>
/// <param name="Format">How the maker writes lengths.</param>
/// <param name="Rest">The diameter of what is left down to the floor.</param>
internal sealed record TurningPlan(
    Figure Pommel,
    IReadOnlyList<(Figure Length, Figure Diameter)> Stretches,
    Figure Rest,
    LengthFormat Format,
    SourcePlace Place
)
{
    /// <param name="rails">The underside of the rails.</param>
    public void Cut(PartDraft leg, Length rails)
    {
        var top = rails - Pommel.Length;
        foreach (var (length, diameter) in Stretches)
        {
            Turn(leg, top - length.Length, top, diameter.Length);
            top -= length.Length;
        }
        Turn(leg, leg.Extent.Min.Z, top, Rest.Length);
    }

    private void Turn(PartDraft leg, Length from, Length to, Length diameter)
    {
        var told = Format.Write(diameter);
        if (to <= from || from < leg.Extent.Min.Z)
            throw Refuse("The stretches that are turned are longer than the leg below its pommel.", "shorter ones");
        var square = leg.Extent.Width;
        if (diameter > square || leg.Extent.Depth != square)
            throw Refuse(
                "A leg is turned from a square blank, to no more than the blank's own width.",
                "a square blank at least as wide as the turning"
            );
        var (zero, half, radius) = (Length.Zero, square / 2, diameter / 2);
        var isFurther = false;
        foreach (var side in (Direction[])[Direction.Left, Direction.Right])
        {
            foreach (var face in (Direction[])[Direction.Front, Direction.Back])
            {
                // A quarter of what is round the circle: from the corner of the blank to the middles of two faces.
                var corners = new List<OutlineCorner> { (zero, zero), (half, zero) };
                if (radius < half)
                    corners.Add((half, half - radius));
                corners[^1] = corners[^1] with { Arc = new(half, half, Clockwise: true) };
                if (radius < half)
                    corners.Add((half - radius, half));
                corners.Add((zero, half));
                Swept.Cut(
                    leg,
                    CutKind.Turning,
                    Swept.Corner(leg.Extent, side, face),
                    side.Opposite(),
                    face.Opposite(),
                    corners,
                    (from, to),
                    called: $"to {told} across",
                    isFurther: isFurther
                );
                isFurther = true;
            }
        }
    }

    private CannotBuildException Refuse(string message, string wanted) => new(new InputError(message, Place, wanted));
}
