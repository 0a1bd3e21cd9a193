using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>What of lines and likeness is told already: by what is wrong with the part itself, or by the bay or carcase it is in.</summary>
internal static class LinesTold
{
    private static readonly FindingKind[] OfWholes = [AlikeBays.Unequal, AlikeBays.NearlyAlike, AlikeParts.Carcases];

    private static readonly FindingKind[] OfSizes =
    [
        .. new FrontGaps().Kinds,
        .. new FrontOverlays().Kinds,
        .. new SlidingDoors().Kinds,
        .. new JointMeets().Kinds,
        .. EdgesInLine.Both,
        .. new LooseFit().Kinds,
        .. new DrawerRuns().Kinds,
    ];

    /// <summary>The kinds that may only be the consequence of another.</summary>
    public static IReadOnlyList<FindingKind> Kinds { get; } =
    [LinesRunOn.Upright, LinesRunOn.Gap, AlikeParts.PairUnequal, AlikeParts.Parts];

    public static bool IsToldBy(InspectedPiece piece, Finding finding, Finding other)
    {
        if (finding.Kind == AlikeParts.Parts && other.Kind == AlikeParts.PairUnequal)
            return other.Parts.Contains(finding.Parts[0], StringComparer.Ordinal);
        if (OfWholes.Contains(other.Kind))
            return IsShareOf(Apart(finding), Apart(other)) && AreWithin(piece, finding, other);
        if (finding.Kind == LinesRunOn.Upright || !OfSizes.Contains(other.Kind))
            return false;
        // Of two parts or fronts either may be the wrong one.
        return other.Parts.Any(id => finding.Parts.Contains(id, StringComparer.Ordinal));
    }

    /// <summary>Whether all that the one tells of stands in the carcases that the other tells of.</summary>
    private static bool AreWithin(InspectedPiece piece, Finding finding, Finding other) =>
        CarcasesOf(piece, finding).IsSubsetOf(CarcasesOf(piece, other));

    private static HashSet<string?> CarcasesOf(InspectedPiece piece, Finding finding) =>
        [.. finding.Parts.Select(id => CarcaseOf.Group(piece, piece.Shape(id).Part.Group)?.Id)];

    /// <summary>By how much what was measured is off what was wanted; zero where it was no one length.</summary>
    public static Length Apart(Finding finding) =>
        finding is { Measured: MeasuredLength measured, Wanted.AtLeast: { } wanted }
            ? Length.Abs(measured.Value - wanted)
            : Length.Zero;

    /// <summary>All of it, or half: what stands in the middle, and each of a pair, takes half of what the whole is off.</summary>
    private static bool IsShareOf(Length part, Length whole) =>
        Length.Abs(part - whole) <= Tolerance.Fitting || Length.Abs((part * 2) - whole) <= Tolerance.Fitting;
}
