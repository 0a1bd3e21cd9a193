using System.Globalization;
using Dryfit.Casework;
using Dryfit.Outputs.PartsList;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.CutList;

/// <summary>
/// What is done to boards, in brief, for who stands at the saw: what is sawn or routed is told in full, the same on both
/// ends or faces once; holes are counted; edges that get edging are named. Where each hole goes is in the parts list.
/// </summary>
internal sealed class BriefCuts(Piece piece)
{
    private static readonly string[] Ends = ["left end", "right end", "top end", "bottom end", "front end", "back end"];
    private static readonly string[] Faces = ["show face", "reverse face"];

    private readonly ILookup<string, Joint> _edging = piece
        .Joints.Where(joint => joint.Kind == JointKind.Edged)
        .ToLookup(joint => joint.Receives, StringComparer.Ordinal);

    public IEnumerable<string> Of(Part part)
    {
        if (GrainWords.Of(part, piece.Format) is { } run)
            yield return run;
        var edged = _edging[part.Id]
            .Select(joint => BoardWords.Side(part.Place, part.Place.ToBoard(joint.Into.Opposite())))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        if (edged.Count > 0)
            yield return $"edging on the {string.Join(", the ", edged)}";
        foreach (var cut in Sawn(part))
            yield return cut;
        foreach (var holes in Holes(part))
            yield return holes;
    }

    private IEnumerable<string> Sawn(Part part)
    {
        var words = new CutWords(part, piece.Format);
        var told = CutWords
            .Shapes(part)
            .Where(cut => cut is not RoundCut)
            .Select(words.Sawn)
            .OfType<string>()
            .Select(text => (Count: 1, Text: text))
            .ToList();
        told = OnBoth(OnBoth(told, Ends, "both ends"), Faces, "both faces");
        return told.Select(cut =>
            cut.Count == 1 ? cut.Text : string.Create(CultureInfo.InvariantCulture, $"{cut.Count} x {cut.Text}")
        );
    }

    /// <summary>Tells cuts once that differ only in the side they are on.</summary>
    private static List<(int Count, string Text)> OnBoth(
        List<(int Count, string Text)> cuts,
        string[] sides,
        string both
    )
    {
        var merged = new List<(int Count, string Text, string Side)>();
        foreach (var (count, text) in cuts)
        {
            var side = Array.Find(sides, side => text.Contains(side, StringComparison.Ordinal)) ?? "";
            var on = $"the {side}";
            var open = side.Length == 0 ? text : text.Replace(on, both, StringComparison.Ordinal);
            var twin = merged.FindIndex(other =>
                side.Length > 0
                && other.Side.Length > 0
                && other.Count == count
                && !string.Equals(other.Side, side, StringComparison.Ordinal)
                && string.Equals(
                    other.Text.Replace($"the {other.Side}", both, StringComparison.Ordinal),
                    open,
                    StringComparison.Ordinal
                )
            );
            if (twin >= 0)
                merged[twin] = (2 * count, open, "");
            else
                merged.Add((count, text, side));
        }
        return [.. merged.Select(cut => (cut.Count, cut.Text))];
    }

    private IEnumerable<string> Holes(Part part)
    {
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
                $"{count} {name}, {piece.Format.Write(equal.Key.Diameter)} across, in the {string.Join(" and the ", sides)}"
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
