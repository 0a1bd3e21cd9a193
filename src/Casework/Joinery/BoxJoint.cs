using System.Numerics;
using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// Square fingers on the ends of two boards, each between those of the other; the board that is said to enter has the
/// outermost ones at both edges.
/// </summary>
internal static class BoxJoint
{
    /// <summary>Cuts both boards and ties them.</summary>
    /// <param name="into">The way the entering board goes on to the other, through its own thickness.</param>
    /// <param name="end">Where the ends of its fingers point.</param>
    public static Joint Between(PieceBuilder piece, PartDraft receives, PartDraft enters, Direction into, Direction end)
    {
        var spread = (Axis)(3 - (int)into.Axis() - (int)end.Axis());
        if (Meeting.Corner(receives, enters, spread) is not { } room)
            return Meeting.Missed(piece, JointKind.BoxJoint, receives, enters, into);
        var finger = piece.Shop.Length(JointRules.Finger).Length;
        var pairs = ((room.Size(spread) / finger) / 2).Floor();
        var count = (int)BigInteger.Min((pairs * 2) + 1, 401);
        if (count < 3)
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for a box joint on the {enters.Name}: {LengthFormat.Millimetres.WriteWithUnit(room.Size(spread))} high, with fingers of {LengthFormat.Millimetres.WriteWithUnit(finger)}.",
                    enters.Source,
                    "a higher board, a narrower `finger` in the shop file, or another joint"
                )
            );
        var joint = piece.NextJointId;
        var ends = MarkingOut.Evenly(piece, room.Min[spread], room.Max[spread], count);
        for (var n = 0; n < count; n++)
        {
            var socket = new Extent(room.Min.With(spread, ends[n]), room.Max.With(spread, ends[n + 1]));
            (n % 2 == 0 ? receives : enters).CutAway(CutKind.FingerSocket, socket, joint);
        }
        return piece.Join(JointKind.BoxJoint, receives, enters, into, room.Size(into.Axis()));
    }
}
