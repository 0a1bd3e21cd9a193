using Dryfit.Casework;

namespace Dryfit.Slips;

/// <summary>
/// How far the faces of parts moved from a sound piece to the one with the slip, measured on both solids. Parts are known
/// by their ids; a face moves with the end of its part where the slipped part has a face there, and stays where it has one
/// where it was.
/// </summary>
internal sealed class Changes
{
    private readonly NearFaces _sound;
    private readonly Dictionary<string, PartFaces> _slipped = new(StringComparer.Ordinal);

    public Changes(NearFaces sound, Piece slipped)
    {
        _sound = sound;
        foreach (var part in slipped.Parts)
        {
            if (sound.Parts.ContainsKey(part.Id))
                _slipped[part.Id] = new PartFaces(part, slipped.Grid);
        }
        AreSameParts = slipped.Parts.Count == sound.Parts.Count && _slipped.Count == sound.Parts.Count;
        Moved =
        [
            .. _slipped
                .Keys.Where(id => Enum.GetValues<Direction>().Any(way => Math.Abs(EndMm(id, way)) > PartFaces.SameMm))
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>Whether the slip left no part out and made none anew.</summary>
    public bool AreSameParts { get; }

    /// <summary>Ids of the parts that came out at another size or place.</summary>
    public IReadOnlyList<string> Moved { get; }

    /// <summary>How far an end of a part moved outwards; below zero inwards.</summary>
    public double EndMm(string part, Direction way) =>
        _slipped.TryGetValue(part, out var after) ? (after.End(way) - _sound.Parts[part].End(way)) * way.Sign() : 0;

    /// <summary>How far a face moved the way it looks; null where that cannot be told.</summary>
    public double? FaceMm(PartFaces before, Direction way, double at)
    {
        if (!_slipped.TryGetValue(before.Part.Id, out var after))
            return 0;
        var end = EndMm(before.Part.Id, way);
        if (Math.Abs(at - before.End(way)) < PartFaces.SameMm)
            return end;
        if (after.HasFaceAt(way, at))
            return 0;
        return after.HasFaceAt(way, at + (end * way.Sign())) ? end : null;
    }
}
