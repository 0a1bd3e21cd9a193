using Dryfit.Casework.Building;
using Dryfit.Findings;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// An end drawn against a face by fittings that can be undone: a bolt driven into the face, a cam in the face of the part
/// that ends, and the hole between the two. Nothing is glued.
/// </summary>
internal static class Connectors
{
    /// <summary>Bores both parts and ties them.</summary>
    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="camFace">The face of the entering part that takes the cams.</param>
    /// <param name="spread">The axis along which the fittings stand in a row.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Direction camFace,
        Axis spread,
        int count
    )
    {
        var fitting = piece.Families.Connector(said: null, enters.Source);
        var (cam, depth) = (fitting.Length(ConnectorRules.Cam).Length, fitting.Length(ConnectorRules.CamDepth).Length);
        var (reach, bolt) = (fitting.Length(ConnectorRules.CamIn).Length, fitting.Length(ConnectorRules.Bolt).Length);
        var seat = fitting.Length(ConnectorRules.SeatDepth).Length;
        var (from, to) = Meeting.Shared(receives, enters, spread);
        if (
            depth >= enters.Reckoned.Size(camFace.Axis())
            || bolt >= enters.Reckoned.Size(camFace.Axis())
            || seat >= receives.Reckoned.Size(into.Axis())
            || to - from < cam * (count * 2)
            || enters.Reckoned.Size(into.Axis()) < (reach + cam) * 2
        )
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for a {fitting.Called} between the {enters.Name} and the {receives.Name}.",
                    enters.Source,
                    "thicker or wider parts, another family of connectors, or another joint"
                )
            );
        var joint = piece.NextJointId;
        var face = Meeting.Centre(enters.Reckoned, into);
        var seatWide = fitting.Length(ConnectorRules.Seat).Length;
        var places = Stagger.Places(
            [receives],
            from,
            to,
            count,
            place => Dowels.HoleBox(face.With(spread, place), into, seatWide, seat)
        );
        foreach (var place in places)
        {
            var at = face.With(spread, place);
            receives.Bore(CutKind.Bore, at, into, seatWide, seat, joint);
            var end = at.With(into.Axis(), enters.Extent.Side(into));
            enters.Bore(CutKind.Bore, end, into.Opposite(), bolt, reach, joint);
            enters.Bore(
                CutKind.Bore,
                end.Moved(into.Opposite(), reach).With(camFace.Axis(), enters.Extent.Side(camFace)),
                camFace.Opposite(),
                cam,
                depth,
                joint
            );
        }
        piece.Fit(fitting, null, face, count, enters, receives);
        return piece.Join(JointKind.Connector, receives, enters, into, glued: false);
    }
}
