using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Which part of a joint to doubt first, and where to draw what was measured between the two.</summary>
internal static class JointPlaces
{
    /// <summary>The maker's own cuts first, then what enters; kept parts last, since they are not ours to cut.</summary>
    public static IReadOnlyList<Part> Doubted(params IEnumerable<Part> parts) =>
        [
            .. parts
                .Distinct()
                .OrderBy(part =>
                    part.IsAsCut ? 0
                    : part.IsKept ? 2
                    : 1
                ),
        ];

    /// <summary>A straight line along the way in, in the middle of what is shared.</summary>
    public static SpacePlace Across(InspectedPiece piece, Box shared, Direction into)
    {
        var middle = shared.Centre();
        var half = into.Unit() * (shared.Size(into.Axis()) / 2);
        return piece.ToSpace(middle - half, middle + half);
    }

    /// <summary>Where a gap is that was measured; the facing ends of the two parts where none was.</summary>
    public static SpacePlace Where(InspectedPiece piece, JointFit fit)
    {
        if (fit.Overlap is { } overlap)
            return Across(piece, overlap.Bounds, fit.Joint.Into);
        if (fit.Gap is { } gap)
            return piece.ToSpace(gap.OnA, gap.OnB);
        return piece.ToSpace(fit.Enters.Box.Centre(), fit.Receives.Box.Centre());
    }
}
