using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Sides;
using Dryfit.Measure;

namespace Dryfit.Casework.Carcases;

/// <summary>Ties the end of a flat panel to an upright in the way the carcase is built.</summary>
internal static class PanelJoints
{
    /// <param name="upright">What takes the panel.</param>
    /// <param name="panel">The panel; for dados its length reaches into the upright.</param>
    /// <param name="spread">The axis along which dowels or screws stand.</param>
    public static Joint Tie(
        PieceBuilder piece,
        PanelJoint joint,
        PartDraft upright,
        PartDraft panel,
        Direction into,
        Axis spread
    )
    {
        if (upright is FramedSide side)
            return SideJoints.Tie(piece, joint, side, panel, KindOf(upright, panel, into), into, spread);
        var (from, to) = Meeting.Shared(upright, panel, spread);
        var count = CountFor(to - from);
        switch (joint)
        {
            case PanelJoint.Dado:
                return Housing.Let(piece, upright, panel, KindOf(upright, panel, into), into);
            case PanelJoint.ShoulderedDado:
                return ShoulderedHousing.Let(piece, upright, panel, into, panel.Place.Lie.Shows.Axis());
            case PanelJoint.Biscuits:
                return Biscuits.Between(piece, upright, panel, into, spread, count);
            case PanelJoint.LooseTongue:
                return LooseTongue.Between(piece, upright, panel, into, spread);
            // Behind a partition another panel may lie: there the screws stay as they are.
            case PanelJoint.PluggedScrews when upright.Role != Role.Partition:
                return PluggedScrews.Between(piece, upright, panel, into, spread, count);
            case PanelJoint.Connectors:
                return Connectors.Between(piece, upright, panel, into, panel.Place.Lie.Shows.Opposite(), spread, 2);
            case PanelJoint.Dowels:
                return Dowels.Between(piece, upright, panel, into, spread, count);
            default:
                return Screws.Between(piece, upright, panel, into, count);
        }
    }

    // A dado at the very end of an upright is a rabbet.
    private static CutKind KindOf(PartDraft upright, PartDraft panel, Direction into)
    {
        foreach (var way in Enum.GetValues<Direction>())
        {
            var isThickness = way.Axis() == panel.Place.Lie.Shows.Axis();
            if (isThickness && panel.Reckoned.Side(way) == upright.Reckoned.Side(way))
                return CutKind.Rabbet;
        }
        return CutKind.Dado;
    }

    /// <summary>One every 150 mm or so, two at least: common practice.</summary>
    private static int CountFor(Length width) => Math.Max(2, (int)(width / Length.FromMillimetres(150)).Round());
}
