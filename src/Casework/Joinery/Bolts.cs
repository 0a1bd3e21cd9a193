using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>Face against face, held by bolts through both: two sections that come apart again.</summary>
internal static class Bolts
{
    /// <summary>Bores both parts in the corners of what they share, and ties them.</summary>
    /// <param name="into">The way the entering part meets the other.</param>
    public static Joint Between(PieceBuilder piece, PartDraft receives, PartDraft enters, Direction into)
    {
        var hole = piece.Shop.Length(CarcaseRules.BoltHole).Length;
        var least = piece.Shop.Length(CarcaseRules.BoltIn).Length;
        var (first, second) = OtherAxes(into.Axis());
        var face = Meeting.Centre(enters.Reckoned, into);
        var joint = piece.NextJointId;
        var count = 0;
        foreach (var a in Spots(receives, enters, first, least))
        {
            foreach (var b in Spots(receives, enters, second, least))
            {
                var at = face.With(first, a).With(second, b);
                receives.Bore(CutKind.Bore, at, into, hole, receives.Extent.Size(into.Axis()), joint);
                enters.Bore(CutKind.Bore, at, into.Opposite(), hole, enters.Extent.Size(into.Axis()), joint);
                count++;
            }
        }
        piece.Fit("connecting bolt", face, count, enters, receives);
        return piece.Join(JointKind.Bolted, receives, enters, into, glued: false);
    }

    /// <summary>Two near the ends of what the parts share along an axis; one in the middle where that is short.</summary>
    private static Length[] Spots(PartDraft a, PartDraft b, Axis axis, Length least)
    {
        var from = Length.Max(a.Reckoned.Min[axis], b.Reckoned.Min[axis]);
        var to = Length.Min(a.Reckoned.Max[axis], b.Reckoned.Max[axis]);
        var inset = Length.Min(least, (to - from) / 4);
        return to - from < least * 2 ? [(from + to) / 2] : [from + inset, to - inset];
    }

    private static (Axis, Axis) OtherAxes(Axis axis) =>
        axis switch
        {
            Axis.X => (Axis.Y, Axis.Z),
            Axis.Y => (Axis.X, Axis.Z),
            _ => (Axis.X, Axis.Y),
        };
}
