using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Facings;

/// <summary>Panels that lie loose in the grooves of a frame, flat or raised.</summary>
internal sealed class FramePanels(PieceBuilder piece, PanelFramePlan plan, FrameStance stance)
{
    /// <param name="space">The clear space between the members, through the whole thickness.</param>
    /// <param name="around">The members, each with the way to it.</param>
    public void Lay(
        string name,
        FrameGroove groove,
        Extent space,
        Figure width,
        Figure height,
        IReadOnlyList<(PartDraft Member, Direction Into)> around
    )
    {
        var depth = groove.Depth;
        var isSheet = plan.Panel.Kind == MaterialKind.Sheet;
        var along = piece.Shop.Length(isSheet ? DoorRules.PanelPlaySheet : DoorRules.PanelPlayEnd, "play");
        var across = piece.Shop.Length(isSheet ? DoorRules.PanelPlaySheet : DoorRules.PanelPlaySide, "play");
        var (deepUp, deepAcross) = (depth.Length - along.Length, depth.Length - across.Length);
        if (Length.Min(deepUp, deepAcross) <= Length.Zero)
            throw Refused(
                $"The panels of a {plan.Called} would fall out: their play takes the whole depth of the groove.",
                "a deeper groove or less play in the shop file's rules for doors"
            );
        var length = (height + depth + depth - along - along).As("panel length");
        var wide = (width + depth + depth - across - across).As("panel width");
        var (front, back) = Shoulders(groove);
        plan.Raised?.Refuse($"{plan.Called}", plan.Panel, plan.Place, length.Length, wide.Length, depth.Length, front);
        var shows = stance.Shows;
        var face = space.Side(shows) - ((groove.Lip.Length - front) * shows.Sign());
        var place = space
            .Grown(stance.Right, deepAcross)
            .Grown(stance.Right.Opposite(), deepAcross)
            .Grown(Direction.Down, deepUp)
            .With(shows, face)
            .With(shows.Opposite(), face - (plan.Panel.Thickness.Length * shows.Sign()));
        var panel = piece.Board(
            stance.Group,
            stance.Prefix + name,
            stance.Panel,
            plan.Panel,
            Lie.Of(Direction.Up, shows),
            length,
            wide,
            place.Min
        );
        CutTongue(panel, depth, front, back);
        foreach (var (member, into) in around)
        {
            var play = into.Axis() == Axis.Z ? along.Length : across.Length;
            piece.Join(JointKind.Loose, member, panel, into, depth.Length - play, play, glued: false);
        }
    }

    /// <summary>What a raised panel loses in front of and behind its tongue: its field stands to the front.</summary>
    private (Length Front, Length Back) Shoulders(FrameGroove groove)
    {
        var over = plan.Panel.Thickness.Length - groove.Width.Length;
        if (plan.Raised is null || over <= Length.Zero)
            return (Length.Zero, Length.Zero);
        var back = Length.Max(over - groove.Lip.Length, Length.Zero);
        return back > plan.Material.Thickness.Length - groove.Lip.Length - groove.Width.Length
            ? throw Refused(
                $"The panel of a {plan.Called} is thicker than its frame.",
                "a panel no thicker than stiles and rails"
            )
            : (over - back, back);
    }

    private void CutTongue(PartDraft panel, Figure depth, Length front, Length back)
    {
        if (front + back <= Length.Zero)
            return;
        plan.Raised!.Cut(panel, depth.Length, front, stance.Right, stance.Shows);
        var shows = stance.Shows;
        foreach (
            var edge in (ReadOnlySpan<Direction>)[stance.Right.Opposite(), stance.Right, Direction.Down, Direction.Up]
        )
        {
            var rim = panel.Extent.With(edge.Opposite(), panel.Extent.Side(edge) - (depth.Length * edge.Sign()));
            if (back > Length.Zero)
                panel.CutAway(CutKind.Shoulder, rim.With(shows, rim.Side(shows.Opposite()) + (back * shows.Sign())));
        }
        panel.ShoulderLength = (panel.Length - depth - depth).As("shoulder to shoulder");
        panel.ShoulderWidth = (panel.Width - depth - depth).As("shoulder to shoulder");
    }

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));
}
