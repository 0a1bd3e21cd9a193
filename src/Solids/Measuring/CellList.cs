namespace Dryfit.Solids.Measuring;

/// <summary>Boxes that share no room, and what they are together.</summary>
internal struct CellList
{
    private const int Most = 64;
    private List<Box>? boxes;

    public readonly int Count => boxes?.Count ?? 0;

    public readonly double Volume
    {
        get
        {
            var volume = 0.0;
            foreach (var box in boxes ?? [])
            {
                var size = box.Max - box.Min;
                volume += size.X * size.Y * size.Z;
            }

            return volume;
        }
    }

    /// <summary>The box around all of them; there is at least one.</summary>
    public readonly Box Bounds
    {
        get
        {
            var bounds = boxes![0];
            foreach (var box in boxes)
            {
                bounds = Around(bounds, box);
            }

            return bounds;
        }
    }

    /// <summary>Adds one; false where there are too many to be worth it.</summary>
    public bool TryAdd(Box box)
    {
        boxes ??= [];
        boxes.Add(box);
        return boxes.Count <= Most;
    }

    /// <summary>The size of the longest lump each way: cells that share a face, or a part of one, are one lump.</summary>
    public readonly Vec3 LongestLump()
    {
        var lumps = new List<List<Box>>();
        foreach (var box in boxes ?? [])
        {
            var lump = new List<Box> { box };
            for (var i = lumps.Count - 1; i >= 0; i--)
            {
                if (lumps[i].Exists(other => ShareFace(box, other)))
                {
                    lump.AddRange(lumps[i]);
                    lumps.RemoveAt(i);
                }
            }

            lumps.Add(lump);
        }

        var longest = default(Vec3);
        foreach (var lump in lumps)
        {
            var bounds = lump.Aggregate(Around);
            longest = Vec3Order.Most(longest, bounds.Max - bounds.Min);
        }

        return longest;
    }

    private static Box Around(Box a, Box b) => new(Vec3Order.Least(a.Min, b.Min), Vec3Order.Most(a.Max, b.Max));

    // Cells never overlap: what they share has no width one way, and is a face where it has both others.
    private static bool ShareFace(Box a, Box b)
    {
        var shared = Vec3Order.Least(a.Max, b.Max) - Vec3Order.Most(a.Min, b.Min);
        return shared.X >= 0
            && shared.Y >= 0
            && shared.Z >= 0
            && (shared.X > 0 ? 1 : 0) + (shared.Y > 0 ? 1 : 0) + (shared.Z > 0 ? 1 : 0) == 2;
    }
}
