using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// An end butted against a face and held by screws from the other side, their heads sunk and covered with plugs of wood:
/// a hole for the plug, one for the shank right through, and one for the thread in the end.
/// </summary>
internal static class PluggedScrews
{
    private static readonly Length Shank = Length.FromMillimetres(new Rational(45, 10));
    private static readonly Length Thread = Length.FromMillimetres(3);
    private static readonly Length IntoTheEnd = Length.FromMillimetres(35);

    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="spread">The axis along which the screws stand in a row.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Axis spread,
        int count
    )
    {
        var plug = piece.Shop.Length(JointRules.Plug).Length;
        var deep = Length.Min(piece.Shop.Length(JointRules.PlugDepth).Length, receives.Extent.Size(into.Axis()) / 2);
        var joint = piece.NextJointId;
        var face = Meeting.Centre(enters.Reckoned, into);
        var (from, to) = Meeting.Shared(receives, enters, spread);
        var step = (to - from) / (count * 2);
        for (var n = 0; n < count; n++)
        {
            var at = face.With(spread, from + (step * ((2 * n) + 1)));
            var outside = at.With(into.Axis(), receives.Extent.Side(into));
            receives.Bore(CutKind.Bore, outside, into.Opposite(), plug, deep, joint);
            receives.Bore(CutKind.Bore, outside, into.Opposite(), Shank, receives.Extent.Size(into.Axis()), joint);
            enters.Bore(
                CutKind.Bore,
                at.With(into.Axis(), enters.Extent.Side(into)),
                into.Opposite(),
                Thread,
                Length.Min(IntoTheEnd, enters.Extent.Size(into.Axis()) / 3),
                joint
            );
        }
        piece.Fit("screw", face, count, enters, receives);
        piece.Fit("wooden plug", face, count, receives);
        return piece.Join(JointKind.Screwed, receives, enters, into, glued: true);
    }
}
