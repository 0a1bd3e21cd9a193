using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Sides;

/// <summary>
/// Ties the end of a flat panel to the stiles, rails and muntins of a framed side. Over the panels between them the end
/// stands free: a tongue for a dado is cut away there.
/// </summary>
internal static class SideJoints
{
    /// <summary>Where a panel meets less than this of a member, and a good deal of another, it only lies against the first.</summary>
    private static readonly Length WorthAJoint = Length.FromMillimetres(50);

    public static Joint Tie(
        PieceBuilder piece,
        PanelJoint how,
        FramedSide side,
        PartDraft panel,
        CutKind kind,
        Direction into,
        Axis spread
    )
    {
        var members = side.Carrying(panel.Reckoned, into, panel.Name, panel.Source);
        RefuseHalfOnARail(side, members, panel);
        RefuseClosingOnAPanel(side, panel);
        if (how == PanelJoint.Dado)
            return LetIn(piece, side, members, panel, kind, into);
        var widest = members.Max(Shared);
        var joints = members
            .Select(member =>
                Shared(member) >= Length.Min(WorthAJoint, widest)
                    ? PanelJoints.Tie(piece, how, member, panel, into, spread)
                    : piece.Join(JointKind.Butt, member, panel, into)
            )
            .ToList();
        return joints[0];

        Length Shared(PartDraft member)
        {
            var (from, to) = Meeting.Shared(member, panel, spread);
            return to - from;
        }
    }

    private static Joint LetIn(
        PieceBuilder piece,
        FramedSide side,
        IReadOnlyList<PartDraft> members,
        PartDraft panel,
        CutKind kind,
        Direction into
    )
    {
        var depth = (panel.Reckoned.Side(into) - side.Reckoned.Side(into.Opposite())) * into.Sign();
        if (depth >= side.Behind)
            throw new CannotBuildException(
                new InputError(
                    $"Dados of {Fronts.NoRoom.Show(depth)} in the {side.Name} would break into the groove of its panels.",
                    side.Source,
                    $"thicker stiles and rails, dados of {Fronts.NoRoom.Show(side.Behind)} in the shop file, or joint: dowels"
                )
            );
        foreach (var field in side.Fields)
        {
            if (Extent.Shared(field, panel.Reckoned) is { } free)
                panel.CutAway(
                    CutKind.Shoulder,
                    panel
                        .Extent.With(into.Opposite(), free.Side(into.Opposite()))
                        .With(Direction.Front, free.Min.Y)
                        .With(Direction.Back, free.Max.Y)
                );
        }
        var joints = members.Select(member => Housing.Let(piece, member, panel, kind, into)).ToList();
        return joints[0];
    }

    /// <summary>Bottom and top close the carcase: they leave no gap beside a panel.</summary>
    private static void RefuseClosingOnAPanel(FramedSide side, PartDraft panel)
    {
        if (panel.Role is not (Role.Bottom or Role.Top or Role.Stretcher) || side.IsWood(OverAll(side, panel)))
            return;
        throw new CannotBuildException(
            new InputError(
                $"The {panel.Name} would end on the panels of the {side.Name}.",
                side.Source,
                "a top rail and a bottom rail wide enough for it"
            )
        );
    }

    /// <summary>Where a panel would go if it went right through the side.</summary>
    private static Extent OverAll(FramedSide side, PartDraft panel) =>
        panel.Reckoned.With(Direction.Left, side.Reckoned.Min.X).With(Direction.Right, side.Reckoned.Max.X);

    private static void RefuseHalfOnARail(FramedSide side, IReadOnlyList<PartDraft> members, PartDraft panel)
    {
        if (panel.Place.Lie.Shows.Axis() != Axis.Z)
            return;
        var (low, high) = (panel.Reckoned.Min.Z, panel.Reckoned.Max.Z);
        var half = members.FirstOrDefault(member =>
            member.Role == Role.SideRail && (member.Reckoned.Min.Z > low || member.Reckoned.Max.Z < high)
        );
        if (half is not null)
            throw new CannotBuildException(
                new InputError(
                    $"The {panel.Name} would lie half on the {half.Name} and half on a panel.",
                    side.Source,
                    "a wider rail there, or the two at other heights"
                )
            );
    }
}
