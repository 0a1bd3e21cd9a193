using Dryfit.Solids.Measuring;
using Dryfit.Solids.Shaping;

namespace Dryfit.Solids;

/// <summary>One of the separate pieces that a solid falls into; board coordinates, grid units.</summary>
/// <param name="Volume">Cubic grid units, of the faceted piece, hollows inside taken off.</param>
/// <param name="Bounds">The box around it.</param>
/// <param name="Cuts">The cuts that made faces of it, each once, in order.</param>
public sealed record Lump(double Volume, Box Bounds, IReadOnlyList<int> Cuts);

/// <summary>Tells the pieces of a solid apart.</summary>
public static class Lumps
{
    private const int MostTried = 64;

    /// <summary>The pieces, the largest first; as many as <see cref="Solid.PieceCount"/>. What only touches along an edge or in
    /// a point does not hold together.</summary>
    public static IReadOnlyList<Lump> Of(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var shells = Shells(solid);
        var lumps = shells.Where(shell => shell.Volume > 0).ToList();
        foreach (var hollow in shells.Where(shell => shell.Volume < 0))
        {
            // A hollow lies in the smallest piece whose box holds it.
            var around = lumps.Where(lump => Holds(lump.Bounds, hollow.Bounds)).MinBy(lump => lump.Volume);
            if (around is not null)
            {
                lumps[lumps.IndexOf(around)] = around with
                {
                    Volume = around.Volume + hollow.Volume,
                    Cuts = [.. around.Cuts.Union(hollow.Cuts).Order()],
                };
            }
        }

        return [.. lumps.OrderByDescending(lump => lump.Volume)];
    }

    /// <summary>The cuts without any one of which the solid would fall into fewer pieces; those that border more than one of
    /// its pieces where it takes several of them together. Empty for a solid in one piece.</summary>
    public static IReadOnlyList<int> PartedBy(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        if (solid.PieceCount < 2)
        {
            return [];
        }

        // Faces of several cuts in one plane are told as the first one's: any cut may be it.
        var shared = Of(solid).SelectMany(lump => lump.Cuts).CountBy(cut => cut).Where(cut => cut.Value > 1);
        var bordering = shared.Select(cut => cut.Key).Order().ToList();
        var suspects =
            solid.Cuts.Count <= MostTried ? Enumerable.Range(0, solid.Cuts.Count) : bordering.Take(MostTried);
        var alone = suspects.Where(cut => PiecesWithout(solid, cut) < solid.PieceCount).ToList();
        return alone.Count > 0 ? alone : bordering;
    }

    private static int PiecesWithout(Solid solid, int cut) =>
        SolidBuilder.Build(solid.Size, [.. solid.Cuts.Where((_, i) => i != cut)]).PieceCount;

    private static List<Lump> Shells(Solid solid)
    {
        var shell = new int[solid.Vertices.Count];
        for (var i = 0; i < shell.Length; i++)
        {
            shell[i] = i;
        }

        for (var i = 0; i < solid.Triangles.Count; i++)
        {
            var (a, b) = (Root(shell, solid.Triangles[i]), Root(shell, solid.Triangles[i - (i % 3)]));
            shell[Math.Max(a, b)] = Math.Min(a, b);
        }

        var found = new SortedDictionary<int, (double Volume, Box Bounds, SortedSet<int> Cuts)>();
        foreach (var face in solid.Faces)
        {
            for (var t = 3 * face.FirstTriangle; t < 3 * (face.FirstTriangle + face.TriangleCount); t += 3)
            {
                var (a, b, c) = (
                    solid.Vertices[solid.Triangles[t]],
                    solid.Vertices[solid.Triangles[t + 1]],
                    solid.Vertices[solid.Triangles[t + 2]]
                );
                var root = Root(shell, solid.Triangles[t]);
                var known = found.TryGetValue(root, out var all) ? all : (0, new(a, a), []);
                var o = solid.Vertices[root];
                var least = Vec3Order.Least(Vec3Order.Least(a, b), c);
                var most = Vec3Order.Most(Vec3Order.Most(a, b), c);
                if (face.Cut >= 0)
                {
                    known.Cuts.Add(face.Cut);
                }

                found[root] = (
                    known.Volume + (Vec3.Dot(a - o, Vec3.Cross(b - o, c - o)) / 6),
                    new(Vec3Order.Least(known.Bounds.Min, least), Vec3Order.Most(known.Bounds.Max, most)),
                    known.Cuts
                );
            }
        }

        return [.. found.Values.Select(all => new Lump(all.Volume, all.Bounds, [.. all.Cuts]))];
    }

    private static bool Holds(Box outer, Box inner) => outer.ToBounds().Common(inner.ToBounds()).ToBox() == inner;

    private static int Root(int[] shell, int i)
    {
        while (shell[i] != i)
        {
            shell[i] = shell[shell[i]];
            i = shell[i];
        }

        return i;
    }
}
