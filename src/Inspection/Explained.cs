using Dryfit.Casework;
using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>
/// One mistake is told once: an overlap that a front's gap already tells of, or a part that hangs loose because its joint
/// was found open, or parts that differ because their bays do, is left out.
/// </summary>
internal static class Explained
{
    private static readonly FindingKind[] TellOfOverlaps =
    [
        FrontGaps.Binds,
        FrontNeighbours.Touch,
        DrawerRuns.TooTight,
        DrawerRuns.NoRoomAbove,
        DrawerRuns.NoRoomBelow,
        DrawerRuns.NoRoomBehind,
    ];

    private static readonly FindingKind[] TellOfLooseParts = [JointMeets.Misses, JointMeets.Open, DrawerRuns.FrontOff];

    private static readonly FindingKind[] OfOpening =
    [
        DoorSwing.HardlyOpens,
        DoorSwing.StopsShort,
        DoorSwing.WantsStop,
        DrawerTravel.Stopped,
        DrawerTravel.StrikesDoor,
    ];

    /// <summary>What is told of a front that is too small or too large, or stands in the wrong place.</summary>
    private static readonly FindingKind[] OfFrontSize =
    [
        .. new FrontGaps().Kinds,
        .. new FrontOverlays().Kinds,
        .. new FrontNeighbours().Kinds,
    ];

    public static IEnumerable<Finding> LeaveOut(InspectedPiece piece, IReadOnlyList<Finding> findings)
    {
        var overlaps = findings
            .Where(finding => TellOfOverlaps.Contains(finding.Kind))
            .Select(f => Unit(piece, f))
            .ToList();
        // What binds or stands in another's place shut does not open either.
        var bound = findings
            .Where(finding =>
                TellOfOverlaps.Contains(finding.Kind)
                || finding.Kind == FrontGaps.TooNarrow
                || finding.Kind == PartsOverlap.Overlap
            )
            .Select(f => Unit(piece, f))
            .ToList();
        var wrongFronts = findings
            .Where(finding => OfFrontSize.Contains(finding.Kind))
            .SelectMany(finding => finding.Parts)
            .Select(id => piece.Shape(id).Part.Group)
            .ToHashSet(StringComparer.Ordinal);
        var loose = findings.Where(finding => TellOfLooseParts.Contains(finding.Kind)).Select(f => f.Parts).ToList();
        return findings.Where(finding =>
            finding.Kind == PartsOverlap.Overlap ? !overlaps.Exists(told => finding.Parts.All(told.Contains))
            : finding.Kind == Connected.PartLoose ? !loose.Exists(told => finding.Parts.All(told.Contains))
            : LinesTold.Kinds.Contains(finding.Kind) ? !findings.Any(other => LinesTold.IsToldBy(piece, finding, other))
            : EdgesInLine.Both.Contains(finding.Kind) ? !findings.Any(other => TellsOfTheEdge(piece, other, finding))
            // Hinges marked out from the ends of a door of the wrong size are off with it.
            : finding.Kind == HingesInLine.Apart ? !wrongFronts.Contains(piece.Shape(finding.Parts[0]).Part.Group)
            : OfOpening.Contains(finding.Kind)
                ? finding.Parts.Count < 2 || !bound.Exists(told => finding.Parts.All(told.Contains))
            : !IsOfBeads(piece, finding) || !findings.Any(other => TellsOfTheDoor(piece, other, finding))
        );
    }

    /// <summary>A part of a wrong size most often opens a joint or a gap too, which is told of it first; and where its door is
    /// wrong, a bead does not end where it should.</summary>
    private static bool TellsOfTheEdge(InspectedPiece piece, Finding told, Finding ofEdge) =>
        !EdgesInLine.Both.Contains(told.Kind)
        && !LinesTold.Kinds.Contains(told.Kind)
        && told.Kind.Severity != Severity.Note
        && told.Parts.Count > 0
        && (
            string.Equals(told.Parts[0], ofEdge.Parts[0], StringComparison.Ordinal)
            || (IsOfBeads(piece, ofEdge) && TellsOfTheDoor(piece, told, ofEdge))
        );

    /// <summary>Whether a finding is one of the beads of a pane: within one door, and not of the gaps around it.</summary>
    private static bool IsOfBeads(InspectedPiece piece, Finding finding)
    {
        var parts = finding.Parts.Select(id => piece.Shape(id).Part).ToList();
        return parts.Exists(part => part.Role == Role.GlassBead)
            && parts.TrueForAll(part => string.Equals(part.Group, parts[0].Group, StringComparison.Ordinal));
    }

    /// <summary>Where pane, joints or gaps of a door are wrong, its beads are too: what is told of the door tells of them.</summary>
    private static bool TellsOfTheDoor(InspectedPiece piece, Finding told, Finding ofBead)
    {
        if (IsOfBeads(piece, told))
            return false;
        var doors = ofBead.Parts.Select(id => piece.Shape(id).Part.Group).ToHashSet(StringComparer.Ordinal);
        return told.Kind.Severity == Severity.Stop && told.Parts.Any(id => doors.Contains(piece.Shape(id).Part.Group));
    }

    /// <summary>The parts named, and all that move with those of a door or drawer: where a door stands in its neighbour,
    /// its panel does too.</summary>
    private static HashSet<string> Unit(InspectedPiece piece, Finding finding)
    {
        var parts = finding.Parts.ToHashSet(StringComparer.Ordinal);
        foreach (var id in finding.Parts)
        {
            var group = piece.Shape(id).Part.Group;
            if (piece.Front(group) is not null)
                parts.UnionWith(piece.Members(group).Select(shape => shape.Part.Id));
        }
        return parts;
    }
}
