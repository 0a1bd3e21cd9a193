using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>An end sawn at an angle: one side keeps its length, the opposite one gets shorter.</summary>
internal static class EndMitre
{
    /// <summary>Cuts the end so that the short side loses <paramref name="run"/>: exact at any rational slope.</summary>
    /// <param name="end">The end, as a direction of the piece.</param>
    /// <param name="longSide">The side that keeps its length, square to the end.</param>
    /// <param name="run">How much shorter the opposite side gets; for 45 degrees the size of the part across.</param>
    public static void Cut(PartDraft part, Direction end, Direction longSide, Length run, string? joint = null)
    {
        if (run <= Length.Zero)
            return;
        if (run > part.Extent.Size(end.Axis()))
            throw new CannotBuildException(
                new InputError(
                    $"The mitre of the {part.Name} takes more than the part is long.",
                    part.Source,
                    "a longer part, or a steeper cut"
                )
            );
        var across = part.Extent.Size(longSide.Axis());
        part.LeaveNoFace(end);
        Swept.Cut(
            part,
            CutKind.Mitre,
            Swept.Corner(part.Extent, end, longSide.Opposite()),
            end.Opposite(),
            longSide,
            [(Length.Zero, Length.Zero), (run, Length.Zero), (Length.Zero, across)],
            joint: joint
        );
    }

    /// <summary>Cuts the end at so many degrees off square: exact at 45, else rounded once.</summary>
    public static void Cut(PartDraft part, Direction end, Direction longSide, int degrees, string? joint = null) =>
        Cut(part, end, longSide, RunAt(part.Extent.Size(longSide.Axis()), degrees), joint);

    /// <summary>How far a cut so many degrees off square runs along a part of a size across; 1/640 mm is its finest step.</summary>
    public static Length RunAt(Length across, int degrees) =>
        degrees switch
        {
            0 => Length.Zero,
            45 => across,
            _ => Length
                .FromMillimetres(
                    across.Millimetres
                        * new Rational((long)Math.Round(Math.Tan(degrees * Math.PI / 180) * 1e9), 1_000_000_000)
                )
                .RoundTo(Length.FromMillimetres(new Rational(1, 640))),
        };
}
