using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;

namespace Dryfit.Casework.Room;

/// <summary>Saws strips along the walls and the ceiling of a space, as they were measured; past the readings they go on straight.</summary>
internal static class SawnToRoom
{
    /// <summary>How far an outline goes on past what it cuts, so that nothing is left standing at its ends.</summary>
    private static readonly Length Past = Length.FromMillimetres(10);

    /// <param name="side">The wall, as the side of the strip that lies against it.</param>
    public static void AtWall(PartDraft strip, WallSpace space, Direction side)
    {
        var wall = space.Wall(side);
        var line = space.Heights.Select(h => new OutlineCorner(wall(h), h)).ToList();
        var (low, high) = (strip.Extent.Min.Z - Past, strip.Extent.Max.Z + Past);
        line.Insert(0, new(line[0].A, Length.Min(low, line[0].B - Past)));
        line.Add(new(line[^1].A, Length.Max(high, line[^1].B + Past)));
        if (line.TrueForAll(c => (strip.Extent.Side(side) - c.A) * side.Sign() <= Length.Zero))
            return;
        var beyond = line.Select(c => c.A * side.Sign()).Append(strip.Extent.Side(side) * side.Sign()).Max() + Past;
        Cut(strip, [.. line, new(beyond * side.Sign(), line[^1].B), new(beyond * side.Sign(), line[0].B)]);
    }

    public static void UnderCeiling(PartDraft strip, WallSpace space)
    {
        var line = space.Ceiling!.Points.Select(p => new OutlineCorner(p.At, p.Value.Length)).ToList();
        line.Insert(0, new(Length.Min(strip.Extent.Min.X, line[0].A) - Past, line[0].B));
        line.Add(new(Length.Max(strip.Extent.Max.X, line[^1].A) + Past, line[^1].B));
        if (line.TrueForAll(c => c.B >= strip.Extent.Max.Z))
            return;
        var above = line.Select(c => c.B).Append(strip.Extent.Max.Z).Max() + Past;
        Cut(strip, [.. line, new(line[^1].A, above), new(line[0].A, above)]);
    }

    private static void Cut(PartDraft strip, IReadOnlyList<OutlineCorner> outline) =>
        Swept.Cut(strip, CutKind.Scribe, default, Direction.Right, Direction.Up, outline);
}
