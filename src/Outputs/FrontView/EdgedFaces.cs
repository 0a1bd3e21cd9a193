using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// Draws a panel and its edging as one board: at the scale of a front view a strip of a millimetre or two would be two
/// lines on top of each other. Only faces flush with the panel's are merged; everything is measured before that.
/// </summary>
internal static class EdgedFaces
{
    public static List<FrontFace> Merged(IReadOnlyList<FrontFace> faces, Piece piece)
    {
        var panelOf = PanelOfEdging(piece);
        var merged = new List<FrontFace>();
        foreach (
            var flush in faces.GroupBy(face => (Panel: panelOf.GetValueOrDefault(face.Part, face.Part), face.NearestY))
        )
        {
            var flats = flush.Where(face => face.NearestY == face.FarthestY && !face.IsRound).ToList();
            if (flats.Count > 1 && flats.Exists(face => face.Part != flush.Key.Panel) && Union(flats) is { } loops)
            {
                var bounds = Span2.Around(loops.SelectMany(loop => loop));
                var depth = flush.Key.NearestY;
                merged.Add(new(flush.Key.Panel, loops, depth, depth, bounds, Lean.Square(depth), flats[0].Behind));
                merged.AddRange(flush.Except(flats));
            }
            else
            {
                merged.AddRange(flush);
            }
        }
        return merged;
    }

    private static Dictionary<int, int> PanelOfEdging(Piece piece)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < piece.Parts.Count; i++)
            index.TryAdd(piece.Parts[i].Id, i);
        var panels = new Dictionary<int, int>();
        foreach (var joint in piece.Joints.Where(joint => joint.Kind == JointKind.Edged))
        {
            if (!index.TryGetValue(joint.Receives, out var a) || !index.TryGetValue(joint.Enters, out var b))
                continue;
            var (panel, strip) = piece.Parts[a].Role == Role.Edging ? (b, a) : (a, b);
            panels.TryAdd(strip, panel);
        }
        return panels;
    }

    /// <summary>The outline around boards that lie side by side; null where a board has a slanted edge.</summary>
    private static List<IReadOnlyList<Vec2>>? Union(List<FrontFace> faces)
    {
        var edges = faces.SelectMany(face => face.Loops).SelectMany(EdgesOf).ToList();
        if (edges.Exists(edge => edge.From.X != edge.To.X && edge.From.Y != edge.To.Y))
            return null;
        var outline = new OutlineBuilder();
        // Edges of two boards that meet need not be equally long: all are cut where any of them ends, and what runs both
        // ways cancels.
        foreach (
            var line in edges.GroupBy(edge =>
                (IsUpright: edge.From.X == edge.To.X, At: edge.From.X == edge.To.X ? edge.From.X : edge.From.Y)
            )
        )
        {
            var isUpright = line.Key.IsUpright;
            var stops = line.SelectMany(edge => (double[])[Along(edge.From), Along(edge.To)])
                .Distinct()
                .Order()
                .ToList();
            foreach (var (from, to) in line)
            {
                var inside = stops
                    .Where(stop => stop >= Math.Min(Along(from), Along(to)) && stop <= Math.Max(Along(from), Along(to)))
                    .ToList();
                if (Along(from) > Along(to))
                    inside.Reverse();
                for (var i = 1; i < inside.Count; i++)
                    outline.AddEdge(At(inside[i - 1]), At(inside[i]));
            }

            double Along(Vec2 point) => isUpright ? point.Y : point.X;

            Vec2 At(double along) => isUpright ? new(line.Key.At, along) : new(along, line.Key.At);
        }
        return outline.Loops();
    }

    private static IEnumerable<(Vec2 From, Vec2 To)> EdgesOf(IReadOnlyList<Vec2> loop)
    {
        for (var i = 0; i < loop.Count; i++)
            yield return (loop[i], loop[(i + 1) % loop.Count]);
    }
}
