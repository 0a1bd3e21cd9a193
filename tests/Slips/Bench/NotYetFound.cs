namespace Dryfit.Slips;

/// <summary>
/// Kinds of slips of which some are not found yet, with the reason. The tests hold the list honest both ways: a kind that
/// is not here must be found wholly, and one that is found wholly may not stay here.
/// </summary>
internal static class NotYetFound
{
    private const string Lines = "edges that should lie in one plane are not looked at";

    private const string Slack = "room of a part across its dado or groove is not looked at";

    private const string Gaps = "some gaps are not seen where a front stands beside another's runner or rail";

    public static IReadOnlyDictionary<string, string> Kinds { get; } =
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["carcase side, length"] = Lines,
            ["carcase side, width"] = Lines,
            ["carcase side, thickness"] = Lines,
            ["partition, thickness"] = Slack,
            ["top, length"] = Lines,
            ["top, width"] = Lines,
            ["top, thickness"] = Lines,
            ["bottom, length"] = Lines,
            ["bottom, width"] = Lines,
            ["bottom, thickness"] = Slack,
            ["shelf, length"] = Lines,
            ["shelf, width"] = Lines,
            ["shelf, thickness"] = Slack,
            ["back, length"] = Lines,
            ["back, thickness"] = Lines,
            ["stretcher or rail of a carcase, width"] = Lines,
            ["face frame, length"] = Lines,
            ["face frame, width"] = Lines,
            ["face frame, thickness"] = Lines,
            ["facing, width"] = Lines,
            ["facing, thickness"] = Lines,
            ["leg, width"] = Lines,
            ["leg, thickness"] = Lines,
            ["rail between legs, width"] = Lines,
            ["plinth or bracket, length"] = Lines,
            ["plinth or bracket, thickness"] = Lines,
            ["moulding, strip or filler, length"] = Lines,
            ["moulding, strip or filler, width"] = Lines,
            ["moulding, strip or filler, thickness"] = Lines,
            ["edging, length"] = Lines,
            ["edging, width"] = Lines,
            ["door stile, thickness"] = Lines,
            ["door rail, thickness"] = Lines,
            ["door muntin, thickness"] = Lines,
            ["pane, thickness"] = Lines,
            ["glass bead, width"] = Lines,
            ["glass bead, thickness"] = Lines,
            ["drawer side, width"] = Lines,
            ["front or back of a drawer box, width"] = Lines,
            ["packer, thickness"] = Lines,
            ["runner or divider of drawers, width"] = Lines,
            ["runner or divider of drawers, thickness"] = Slack,
            ["loose board or tongue, length"] = Lines,
            ["loose board or tongue, width"] = Slack,
            ["loose board or tongue, thickness"] = Slack,
            ["nominal for actual thickness"] = Lines,
            ["gap taken twice"] = Gaps,
            ["drawer box made too high or low"] = Lines,
            ["opening out of square"] = Gaps,
        };
}
