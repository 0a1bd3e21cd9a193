namespace Dryfit.Outputs.FrontView;

/// <summary>
/// The order in which to paint flats that stand at an angle to the view: of two that lie one over the other, the one that
/// is farther there comes first. Where that goes round in a circle the order given decides.
/// </summary>
internal static class PaintOrder
{
    /// <summary>Nearer than this two flats count as flush, in grid units.</summary>
    private const double Flush = 1;

    /// <summary>Every face is held against every other that it may cover; a piece with more keeps the order given.</summary>
    private const int MostFaces = 6000;

    /// <param name="faces">From back to front by their nearest points.</param>
    public static List<FrontFace> Of(List<FrontFace> faces)
    {
        if (faces.Count > MostFaces)
            return faces;
        var nearer = new List<int>[faces.Count];
        var farther = new int[faces.Count];
        for (var i = 0; i < faces.Count; i++)
            nearer[i] = [];
        var byLeft = Enumerable.Range(0, faces.Count).OrderBy(i => faces[i].Bounds.MinX).ThenBy(i => i).ToArray();
        for (var m = 0; m < byLeft.Length; m++)
        {
            for (var n = m + 1; n < byLeft.Length; n++)
            {
                var (i, j) = (byLeft[m], byLeft[n]);
                if (faces[j].Bounds.MinX >= faces[i].Bounds.MaxX)
                    break;
                var order = Compare(faces[i], faces[j]);
                if (order == 0)
                    continue;
                var (first, then) = order > 0 ? (i, j) : (j, i);
                nearer[first].Add(then);
                farther[then]++;
            }
        }
        var waiting = new SortedSet<int>(Enumerable.Range(0, faces.Count));
        var free = new SortedSet<int>(waiting.Where(i => farther[i] == 0));
        var painted = new List<FrontFace>(faces.Count);
        while (waiting.Count > 0)
        {
            var next = free.Count > 0 ? free.Min : waiting.Min;
            free.Remove(next);
            waiting.Remove(next);
            painted.Add(faces[next]);
            foreach (var after in nearer[next])
            {
                if (--farther[after] == 0 && waiting.Contains(after))
                    free.Add(after);
            }
        }
        return painted;
    }

    /// <summary>Above zero where the one is farther than the other wherever both are; 0 where neither is, or they are not over each other.</summary>
    private static int Compare(FrontFace one, FrontFace other)
    {
        var (left, right) = (
            Math.Max(one.Bounds.MinX, other.Bounds.MinX),
            Math.Min(one.Bounds.MaxX, other.Bounds.MaxX)
        );
        var (low, high) = (Math.Max(one.Bounds.MinZ, other.Bounds.MinZ), Math.Min(one.Bounds.MaxZ, other.Bounds.MaxZ));
        if (left >= right || low >= high)
            return 0;
        var (least, most) = (double.MaxValue, double.MinValue);
        foreach (var x in (ReadOnlySpan<double>)[left, right])
        {
            foreach (var z in (ReadOnlySpan<double>)[low, high])
            {
                var behind = one.DepthAt(x, z) - other.DepthAt(x, z);
                (least, most) = (Math.Min(least, behind), Math.Max(most, behind));
            }
        }
        if (least >= -Flush && most <= Flush)
            return 0;
        // Where the flats cross, the middle of what they share decides.
        var middle =
            least >= -Flush ? most
            : most <= Flush ? least
            : (least + most) / 2;
        return Math.Sign(middle);
    }
}
