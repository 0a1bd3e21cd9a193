namespace Dryfit.Outputs.Tests.Glb;

/// <summary>What the Khronos validator lets pass: open meshes, wrong size, coincident faces.</summary>
internal static class GlbLint
{
    private const double Hair = 1e-6;

    /// <summary>Edges, after welding equal positions, that are not run through as often one way as the other.</summary>
    public static int OpenEdges(GlbMesh mesh)
    {
        var balance = new Dictionary<(Place, Place), int>();
        for (var t = 0; t < mesh.Triangles.Length; t += 3)
        {
            for (var k = 0; k < 3; k++)
            {
                var a = mesh.Corners[mesh.Triangles[t + k]];
                var b = mesh.Corners[mesh.Triangles[t + ((k + 1) % 3)]];
                var isForward = (a.X, a.Y, a.Z).CompareTo((b.X, b.Y, b.Z)) < 0;
                var edge = isForward ? (a, b) : (b, a);
                balance[edge] = balance.GetValueOrDefault(edge) + (isForward ? 1 : -1);
            }
        }

        return balance.Values.Count(count => count != 0);
    }

    /// <summary>The volume in cubic metres of what the corners of triangles enclose; negative where turned inside out.</summary>
    public static double Volume(IEnumerable<Place> corners) =>
        corners.Chunk(3).Sum(t => Place.Dot(t[0], Place.Cross(t[1], t[2]))) / 6;

    /// <summary>Corners whose normal is more than a right angle away from their triangle, or not a unit.</summary>
    public static int WrongNormals(GlbMesh mesh)
    {
        var wrong = 0;
        for (var t = 0; t < mesh.Triangles.Length; t += 3)
        {
            var (a, b, c) = (mesh.Triangles[t], mesh.Triangles[t + 1], mesh.Triangles[t + 2]);
            var across = Place.Cross(mesh.Corners[b] - mesh.Corners[a], mesh.Corners[c] - mesh.Corners[a]);
            wrong += ((int[])[a, b, c]).Count(corner =>
                Place.Dot(across, mesh.Normals[corner]) <= 0 || Math.Abs(mesh.Normals[corner].Length - 1) > Hair
            );
        }

        return wrong;
    }

    /// <summary>Pairs of parts with faces that lie in one plane, look the same way and overlap.</summary>
    public static IEnumerable<(string A, string B)> CoincidentFaces(GlbFile file)
    {
        var parts = file.Parts.Select(node => (node.Name, Facets: Facets(file, node).ToList())).ToList();
        var boxes = parts.ConvertAll(part => Box.Around(part.Facets.SelectMany(facet => facet.Corners)));
        for (var i = 0; i < parts.Count; i++)
        {
            for (var j = i + 1; j < parts.Count; j++)
            {
                var (a, b) = (Near(parts[i].Facets, boxes[j]), Near(parts[j].Facets, boxes[i]));
                if (a.Exists(f => b.Exists(g => Coincide(f, g))))
                    yield return (parts[i].Name, parts[j].Name);
            }
        }
    }

    private static List<Facet> Near(List<Facet> facets, Box box) => facets.FindAll(facet => facet.Box.Touches(box));

    private static IEnumerable<Facet> Facets(GlbFile file, GlbNode node)
    {
        foreach (var t in file.WorldCorners(node).Chunk(3))
        {
            var across = Place.Cross(t[1] - t[0], t[2] - t[0]);
            var normal = across * (1 / across.Length);
            yield return new(t, normal, Place.Dot(normal, t[0]), Box.Around(t));
        }
    }

    private static bool Coincide(Facet a, Facet b)
    {
        if (!a.Box.Touches(b.Box) || Math.Abs(a.Offset - b.Offset) > Hair || (a.Normal - b.Normal).Length > Hair)
            return false;
        // Two triangles of one plane overlap where no side of either keeps them apart.
        foreach (var (from, to) in Sides(a).Concat(Sides(b)))
        {
            var outward = Place.Cross(to - from, a.Normal);
            outward *= 1 / outward.Length;
            var (aMin, aMax) = Reach(a, outward);
            var (bMin, bMax) = Reach(b, outward);
            if (Math.Min(aMax, bMax) - Math.Max(aMin, bMin) < Hair)
                return false;
        }

        return true;
    }

    private static IEnumerable<(Place From, Place To)> Sides(Facet facet) =>
        facet.Corners.Zip([.. facet.Corners.Skip(1), facet.Corners[0]]);

    private static (double Min, double Max) Reach(Facet facet, Place along)
    {
        var at = facet.Corners.Select(corner => Place.Dot(corner, along)).ToList();
        return (at.Min(), at.Max());
    }

    private sealed record Facet(Place[] Corners, Place Normal, double Offset, Box Box);

    private sealed record Box(Place Min, Place Max)
    {
        public static Box Around(IEnumerable<Place> places)
        {
            var all = places.ToList();
            return new(
                new(all.Min(p => p.X), all.Min(p => p.Y), all.Min(p => p.Z)),
                new(all.Max(p => p.X), all.Max(p => p.Y), all.Max(p => p.Z))
            );
        }

        public bool Touches(Box other) =>
            Min.X <= other.Max.X + Hair
            && other.Min.X <= Max.X + Hair
            && Min.Y <= other.Max.Y + Hair
            && other.Min.Y <= Max.Y + Hair
            && Min.Z <= other.Max.Z + Hair
            && other.Min.Z <= Max.Z + Hair;
    }
}
