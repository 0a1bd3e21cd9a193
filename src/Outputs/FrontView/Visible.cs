using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>Puts faces in the order in which they are painted: the farthest first, each nearer one over it.</summary>
internal static class Visible
{
    /// <summary>
    /// The faces from back to front, without those that lie wholly behind one nearer board. What flats square to the
    /// view cover is exact; slanted flats go by their nearest point.
    /// </summary>
    public static List<FrontFace> BackToFront(IReadOnlyList<FrontFace> faces, IReadOnlyList<Part> parts)
    {
        var covers = faces
            .Where(face => face.IsBox && face.NearestY == face.FarthestY && !IsClear(parts[face.Part]))
            .OrderByDescending(face => face.Bounds.Width * face.Bounds.Height)
            .Take(MostCovers)
            .ToList();
        var seen = faces
            .Where(face => !covers.Exists(cover => cover.FarthestY < face.NearestY && cover.Bounds.Covers(face.Bounds)))
            .OrderByDescending(face => face.NearestY)
            .ThenByDescending(face => face.FarthestY) // a mitre that starts flush with a board runs back behind it
            .ToList();
        return parts.Any(part => part.Turn is not null) ? PaintOrder.Of(seen) : seen;
    }

    /// <summary>Only the largest boards are tried as covers, so that the time stays small for pieces of any size.</summary>
    private const int MostCovers = 400;

    public static bool IsClear(Part part) => part.Material.Kind is MaterialKind.Glass or MaterialKind.Plastic;
}
