namespace Dryfit.Casework;

/// <summary>All house rules: one file a section of the shop file.</summary>
public static class AllRules
{
    /// <summary>Every rule, in the order of the shop file.</summary>
    public static IReadOnlyList<Rule> InOrder { get; } =
    [
        .. GapRules.All,
        .. JointRules.All,
        .. FaceFrameRules.All,
        .. DoorRules.All,
        .. PlasticRules.All,
        .. SlidingRules.All,
        .. HandleRules.All,
        .. HingeRules.All,
        .. ButtHingeRules.All,
        .. PullRules.All,
        .. KnobRules.All,
        .. DrawerRules.All,
        .. UnderSlideRules.All,
        .. RunnerRules.All,
        .. ShelfRules.All,
        .. RackRules.All,
        .. LightRules.All,
        .. RoomRules.All,
        .. StandRules.All,
        .. EdgingRules.All,
        .. HeadRules.All,
        .. TrimRules.All,
        .. CarcaseRules.All,
        .. HangRules.All,
        .. WorktopRules.All,
        .. ConnectorRules.All,
        .. StockRules.All,
    ];
}
