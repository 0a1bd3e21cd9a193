using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.PartsList;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.CutList;

/// <summary>
/// The cuts of a board in brief, for who stands at the saw: what is sawn or routed is told in full, holes are counted.
/// Where each hole goes is in the parts list.
/// </summary>
internal static class BriefCuts
{
    public static IEnumerable<string> Of(Part part, LengthFormat format)
    {
        var words = new CutWords(part, format);
        foreach (var cut in part.Cuts.Where(cut => cut is not RoundCut))
            yield return words.One(cut);
        var holes = part.Cuts.OfType<RoundCut>().Where(hole => !IsPilotOfAPocket(part, hole));
        foreach (var equal in holes.GroupBy(hole => (hole.Kind, hole.Diameter, hole.Depth, hole.TiltDegrees)))
        {
            var count = equal.Count();
            var name = Words.Of(equal.Key.Kind) + (count == 1 ? "" : "s");
            var sides = equal
                .Select(hole => BoardWords.Side(part.Place, hole.Into.Opposite()))
                .Distinct(StringComparer.Ordinal);
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{count} {name}, {format.Write(equal.Key.Diameter)} across, in the {string.Join(" and the ", sides)}"
            );
        }
    }

    /// <summary>The hole for the screw's shank goes with its pocket and is not told apart.</summary>
    private static bool IsPilotOfAPocket(Part part, RoundCut hole) =>
        hole.Kind == CutKind.Bore
        && hole.TiltDegrees != 0
        && part.Cuts.OfType<RoundCut>()
            .Any(other =>
                other.Kind == CutKind.PocketHole && string.Equals(other.Joint, hole.Joint, StringComparison.Ordinal)
            );
}
