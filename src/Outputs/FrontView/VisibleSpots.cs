using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Finds a spot of a part that can be seen from the front, to point at.</summary>
internal sealed class VisibleSpots(
    Piece piece,
    IReadOnlyList<FrontFace> backToFront,
    IReadOnlyDictionary<string, Span2> partBounds
)
{
    private static readonly double[] Shares = [0.5, 0.3, 0.7, 0.15, 0.85, 0.05, 0.95];

    /// <summary>Spots of a part that are seen, the middle first; its middle alone where nothing in front lets it be seen.</summary>
    public IEnumerable<Vec2> Of(string partId)
    {
        if (!partBounds.TryGetValue(partId, out var bounds))
            yield break;
        var isSeen = false;
        foreach (var z in Shares)
        {
            foreach (var x in Shares)
            {
                var spot = new Vec2(bounds.MinX + (bounds.Width * x), bounds.MinZ + (bounds.Height * z));
                if (!string.Equals(PartAt(spot), partId, StringComparison.Ordinal))
                    continue;
                isSeen = true;
                yield return spot;
            }
        }
        if (!isSeen)
            yield return new((bounds.MinX + bounds.MaxX) / 2, (bounds.MinZ + bounds.MaxZ) / 2);
    }

    /// <summary>The box around a part as it lies in the front view; null where nothing of it looks to the front.</summary>
    public Span2? BoundsOf(string partId) => partBounds.TryGetValue(partId, out var bounds) ? bounds : null;

    /// <summary>True where some spot of a part can be seen.</summary>
    public bool IsSeen(string partId) =>
        Of(partId).Take(1).Any(spot => string.Equals(PartAt(spot), partId, StringComparison.Ordinal));

    /// <summary>True where nothing stands before a box in the view at its middle and near both of its ends.</summary>
    /// <param name="nearestY">Depth of its nearest point; what is seen through does not count.</param>
    public bool IsClearBefore(Span2 box, double nearestY)
    {
        foreach (var share in (ReadOnlySpan<double>)[0.5, 0.1, 0.9])
        {
            var spot = new Vec2(box.MinX + (box.Width * share), box.MinZ + (box.Height * share));
            foreach (var face in backToFront)
            {
                var kind = piece.Parts[face.Part].Material.Kind;
                if (
                    face.NearestY < nearestY
                    && kind is not (MaterialKind.Glass or MaterialKind.Plastic)
                    && Holds(face, spot)
                )
                    return false;
            }
        }
        return true;
    }

    private string PartAt(Vec2 spot)
    {
        for (var i = backToFront.Count - 1; i >= 0; i--)
        {
            if (Holds(backToFront[i], spot))
                return piece.Parts[backToFront[i].Part].Id;
        }
        return "";
    }

    private static bool Holds(FrontFace face, Vec2 spot)
    {
        var box = face.Bounds;
        if (spot.X < box.MinX || spot.X > box.MaxX || spot.Y < box.MinZ || spot.Y > box.MaxZ)
            return false;
        var isInside = false;
        foreach (var loop in face.Loops)
        {
            for (var i = 0; i < loop.Count; i++)
            {
                var (a, b) = (loop[i], loop[(i + 1) % loop.Count]);
                if (a.Y > spot.Y != b.Y > spot.Y && spot.X < a.X + ((b.X - a.X) * (spot.Y - a.Y) / (b.Y - a.Y)))
                    isInside = !isInside;
            }
        }
        return isInside;
    }
}
