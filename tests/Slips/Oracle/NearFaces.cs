using Dryfit.Casework;

namespace Dryfit.Slips;

/// <summary>
/// Which faces of which parts face each other, and how far apart, found by looking along each axis at all faces of all
/// parts: slow, simple, and without a word of joints, gaps or formulas.
/// </summary>
internal sealed class NearFaces(Piece piece)
{
    /// <summary>Farther away nothing is looked for: the largest slip.</summary>
    private const double FarMm = 120;

    private readonly Dictionary<string, IReadOnlyList<FacingFaces>> _before = new(StringComparer.Ordinal);

    /// <summary>The faces of every part, by its id.</summary>
    public IReadOnlyDictionary<string, PartFaces> Parts { get; } =
        piece.Parts.ToDictionary(part => part.Id, part => new PartFaces(part, piece.Grid), StringComparer.Ordinal);

    /// <summary>What stands before each face of a part, whatever stands between; touching is a gap of nothing.</summary>
    public IReadOnlyList<FacingFaces> Before(string part)
    {
        if (!_before.TryGetValue(part, out var found))
            _before[part] = found = [.. Find(Parts[part])];
        return found;
    }

    private IEnumerable<FacingFaces> Find(PartFaces own)
    {
        foreach (var other in Parts.Values)
        {
            if (other == own || other.Part.Turn != own.Part.Turn || IsFar(own, other))
                continue;
            foreach (var way in Enum.GetValues<Direction>())
            {
                foreach (var mine in own.Looking(way))
                {
                    foreach (var theirs in other.Looking(way.Opposite()))
                    {
                        var gap = (theirs.At - mine.At) * way.Sign();
                        if (gap > -PartFaces.SameMm && gap < FarMm && mine.Covers(theirs))
                            yield return new(own, other, way, mine.At, theirs.At, gap);
                    }
                }
            }
        }
    }

    private static bool IsFar(PartFaces a, PartFaces b)
    {
        for (var axis = Axis.X; axis <= Axis.Z; axis++)
        {
            if (
                PartFaces.On(a.Min, axis) > PartFaces.On(b.Max, axis) + FarMm
                || PartFaces.On(b.Min, axis) > PartFaces.On(a.Max, axis) + FarMm
            )
                return true;
        }
        return false;
    }
}

/// <summary>Two faces that look at each other.</summary>
/// <param name="Way">Where the first one looks.</param>
/// <param name="At">Where the first one stands on that axis, millimetres.</param>
/// <param name="OtherAt">Where the second one stands.</param>
/// <param name="GapMm">How far they are apart.</param>
internal sealed record FacingFaces(
    PartFaces Own,
    PartFaces Other,
    Direction Way,
    double At,
    double OtherAt,
    double GapMm
);
