using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// An end butted against an edge and held by screws through slanted pocket holes in the back of the entering part.
/// The pockets are real cuts: common practice is a 3/8 in hole at 15 degrees that leaves the screw to come out in the
/// middle of the end.
/// </summary>
internal static class PocketScrews
{
    private const int Degrees = 15;
    private static readonly Length Diameter = Length.FromMillimetres(new Rational(95, 10));
    private static readonly Length Pilot = Length.FromMillimetres(4);

    /// <summary>Wood that stays beside a pocket, on either side of it: a narrow rail takes one only.</summary>
    private static readonly Length Beside = Length.FromMillimetres(2);

    /// <summary>Cotangent of 15 degrees to four places: how far from the end the drill enters, for each unit of depth.</summary>
    private static readonly Rational Run = new(37321, 10000);

    /// <summary>One over the cosine of 15 degrees to four places.</summary>
    private static readonly Rational Slant = new(10353, 10000);

    /// <summary>Cuts the pockets and ties the parts.</summary>
    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="pocketFace">The face of the entering part that takes the pockets.</param>
    /// <param name="spread">The axis along which the pockets stand side by side.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Direction pocketFace,
        Axis spread,
        int count
    )
    {
        var joint = piece.NextJointId;
        count = Math.Max(1, Math.Min(count, (int)(enters.Extent.Size(spread) / (Diameter + (Beside * 2))).Floor()));
        var thickness = enters.Extent.Size(pocketFace.Axis());
        var middle = thickness / 2;
        // Whole grid steps: a drilling jig is not set to thirds.
        var run = (middle * Run).RoundTo(Length.FromMillimetres(new Rational(1, 10)));
        var axis = (run * Slant).RoundTo(Length.FromMillimetres(new Rational(1, 10)));
        var stop = axis - Length.FromMillimetres(10);
        var end = enters.Extent.Side(into);
        var step = enters.Extent.Size(spread) / (count * 2);
        for (var n = 0; n < count; n++)
        {
            var mouth = Meeting
                .Centre(enters.Extent, pocketFace)
                .With(spread, enters.Extent.Min[spread] + (step * ((2 * n) + 1)))
                .With(into.Axis(), end - (run * into.Sign()));
            enters.BoreLeaning(CutKind.PocketHole, mouth, into, pocketFace.Opposite(), Degrees, Diameter, stop, joint);
            enters.BoreLeaning(CutKind.Bore, mouth, into, pocketFace.Opposite(), Degrees, Pilot, axis + Pilot, joint);
        }
        piece.Fit("pocket screw", Meeting.Centre(enters.Reckoned, into), count, enters, receives);
        return piece.Join(JointKind.PocketScrewed, receives, enters, into);
    }
}
