using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>An end butted against a face and held by glued dowels: a hole in each part for every dowel.</summary>
internal static class Dowels
{
    /// <summary>Bores both parts and ties them.</summary>
    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="spread">The axis along which the dowels stand in a row.</param>
    /// <param name="count">How many; they share the width evenly.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Axis spread,
        int count
    )
    {
        var diameter = piece.Shop.Length(Rules.DowelDiameter).Length;
        var length = piece.Shop.Length(Rules.DowelLength).Length;
        var depth = (length / 2) + piece.Shop.Length(Rules.DowelRoom).Length;
        var depthInFace = Length.Min(depth, receives.Extent.Size(into.Axis()) - Length.FromMillimetres(3));
        var joint = piece.NextJointId;
        var face = Meeting.Centre(enters.Reckoned, into);
        var step = enters.Reckoned.Size(spread) / (count * 2);
        for (var n = 0; n < count; n++)
        {
            var at = face.With(spread, enters.Reckoned.Min[spread] + (step * ((2 * n) + 1)));
            receives.Bore(CutKind.Bore, at, into, diameter, depthInFace, joint);
            enters.Bore(
                CutKind.Bore,
                at.With(into.Axis(), enters.Extent.Side(into)),
                into.Opposite(),
                diameter,
                depth,
                joint
            );
        }
        piece.Fit($"dowel {piece.Shop.DowelText}", face, count, enters, receives);
        return piece.Join(JointKind.Dowel, receives, enters, into);
    }
}
