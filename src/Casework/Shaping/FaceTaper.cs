using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>A face that leans in towards one end, straight from where the taper begins.</summary>
internal static class FaceTaper
{
    /// <param name="face">The face that leans in, as a direction of the piece.</param>
    /// <param name="towards">The end towards which the part gets thinner.</param>
    /// <param name="length">How long the tapered stretch is, from that end.</param>
    /// <param name="by">How much is taken off the face at that end.</param>
    public static void Cut(PartDraft part, Direction face, Direction towards, Length length, Length by) =>
        Cut(part, part.Extent, face, towards, length, by);

    /// <summary>The same for one of several parts that are glued up before they are tapered.</summary>
    /// <param name="whole">The box around all of them.</param>
    public static void Cut(PartDraft part, Extent whole, Direction face, Direction towards, Length length, Length by)
    {
        if (by <= Length.Zero)
            return;
        if (by >= whole.Size(face.Axis()) || length <= Length.Zero)
            throw new CannotBuildException(
                new InputError(
                    $"The taper leaves nothing of the {part.Name} at its end.",
                    part.Source,
                    "a taper to something that is left, and room for it"
                )
            );
        var wedge = whole.With(face.Opposite(), whole.Side(face) - (by * face.Sign()));
        if (Extent.Shared(wedge, part.Extent) is null)
            return;
        Swept.Cut(
            part,
            CutKind.Taper,
            Swept.Corner(whole, face, towards),
            towards.Opposite(),
            face.Opposite(),
            [(Length.Zero, Length.Zero), (length, Length.Zero), (Length.Zero, by)]
        );
    }
}
