using Dryfit.Solids;

namespace Dryfit.Casework.Tests.Kit;

/// <summary>
/// What every piece must be, measured on its solids: closed boards, none in the place of another, joints that meet, and
/// all of it tied together and standing on the floor.
/// </summary>
internal static class Soundness
{
    /// <summary>One unit of the finest grid in use is far below this; a joint that misses by more is a fault.</summary>
    private const double NothingMm = 0.0005;

    /// <summary>Between parts at an angle to each other: roots are rounded to 1/640 mm, and several add up.</summary>
    private const double NothingAtAnAngleMm = 0.004;

    private static double Nothing(Part one, Part other) => one.Turn == other.Turn ? NothingMm : NothingAtAnAngleMm;

    public static void MustBeSound(this Piece piece) => Assert.Empty(piece.Faults());

    /// <summary>Everything that is wrong, as sentences.</summary>
    public static IReadOnlyList<string> Faults(this Piece piece) =>
        [
            .. piece.Parts.SelectMany(SolidFaults),
            .. piece.Names(),
            .. piece.Overlaps(),
            .. piece.OpenJoints(),
            .. piece.Loose(),
        ];

    private static IEnumerable<string> Names(this Piece piece)
    {
        foreach (var ids in piece.Parts.GroupBy(p => p.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
            yield return $"{ids.Count()} parts have the id {ids.Key}";
        foreach (var names in piece.Parts.GroupBy(p => p.Name, StringComparer.Ordinal).Where(g => g.Count() > 1))
            yield return $"{names.Count()} parts are called '{names.Key}'";
        var groups = piece.Groups.Select(g => g.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var part in piece.Parts.Where(p => !groups.Contains(p.Group)))
            yield return $"{part.Name} is in no group";
        var parts = piece.Parts.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var tied in piece.Hardware.SelectMany(h => h.Ties).Where(id => !parts.Contains(id)))
            yield return $"a fitting ties {tied}, which is not there";
    }

    private static IEnumerable<string> SolidFaults(Part part)
    {
        var solid = part.Solid;
        if (solid.PieceCount != 1)
            yield return $"{part.Name} falls into {solid.PieceCount} pieces";
        if (!(solid.Volume > 0))
            yield return $"{part.Name} has a volume of {solid.Volume}";
        var edges = new Dictionary<(int, int), int>();
        for (var i = 0; i < solid.Triangles.Count; i += 3)
        {
            for (var j = 0; j < 3; j++)
            {
                var (from, to) = (solid.Triangles[i + j], solid.Triangles[i + ((j + 1) % 3)]);
                edges[(from, to)] = edges.GetValueOrDefault((from, to)) + 1;
            }
        }
        // Each edge once each way: two triangles meet there, both with their outside outwards.
        if (edges.Any(e => e.Value != 1 || !edges.ContainsKey((e.Key.Item2, e.Key.Item1))))
            yield return $"{part.Name} is not closed";
    }

    private static IEnumerable<string> Overlaps(this Piece piece)
    {
        var boxes = piece.Parts.Select(p => p.Extent).ToList();
        for (var a = 0; a < boxes.Count; a++)
        {
            for (var b = a + 1; b < boxes.Count; b++)
            {
                var alike = piece.Parts[a].Turn == piece.Parts[b].Turn;
                if (alike && Extent.Shared(boxes[a], boxes[b]) is null)
                    continue;
                var turn = piece.Parts[a].Turn;
                var shared = Pair.Overlap(
                    piece.Parts[a].SeenFrom(turn, piece.Grid),
                    piece.Parts[b].SeenFrom(turn, piece.Grid)
                );
                if (shared is not null && piece.Grid.ToMm(shared.Depth) > Nothing(piece.Parts[a], piece.Parts[b]))
                    yield return $"{piece.Parts[a].Name} and {piece.Parts[b].Name} share "
                        + $"{piece.Grid.ToCubicMm(shared.Volume):0.###} mm3, {piece.Grid.ToMm(shared.Depth):0.###} mm deep";
            }
        }
    }

    private static IEnumerable<string> OpenJoints(this Piece piece)
    {
        var parts = piece.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        foreach (var joint in piece.Joints)
        {
            var (receives, enters) = (parts[joint.Receives], parts[joint.Enters]);
            var gap = Pair.GapAlong(
                enters.Unturned,
                receives.SeenFrom(enters.Turn, piece.Grid),
                Unit(joint.Into),
                piece.Grid.UnitsPerMm * 10_000.0
            );
            if (gap is null)
                yield return $"{joint.Kind}: {enters.Name} never meets {receives.Name}";
            else if (piece.Grid.ToMm(gap.Distance) > joint.Play.Millimetres.ToDouble() + Nothing(enters, receives))
                yield return $"{joint.Kind}: {enters.Name} stays {piece.Grid.ToMm(gap.Distance):0.###} mm off {receives.Name}";
        }
    }

    /// <summary>Groups of parts that are tied to each other but not to the floor.</summary>
    private static IEnumerable<string> Loose(this Piece piece)
    {
        var root = piece.Parts.ToDictionary(p => p.Id, p => p.Id, StringComparer.Ordinal);
        foreach (var joint in piece.Joints)
            root[Root(joint.Receives)] = Root(joint.Enters);
        foreach (var fitting in piece.Hardware)
        {
            foreach (var tied in fitting.Ties)
                root[Root(tied)] = Root(fitting.Ties[0]);
        }
        var floor = piece.Parts.Min(p => p.Extent.Min.Z);
        foreach (var body in piece.Parts.GroupBy(p => Root(p.Id), StringComparer.Ordinal))
        {
            if (piece.Hardware.Any(h => h.IsInWall && body.Any(p => h.Ties.Contains(p.Id))))
                continue;
            if (body.All(p => p.Extent.Min.Z > floor))
                yield return $"not tied to what stands on the floor: {string.Join(", ", body.Select(p => p.Name))}";
        }

        string Root(string id)
        {
            while (root[id] != id)
                id = root[id];
            return id;
        }
    }

    private static Vec3 Unit(Direction direction) =>
        direction.Axis() switch
        {
            Axis.X => new(direction.Sign(), 0, 0),
            Axis.Y => new(0, direction.Sign(), 0),
            _ => new(0, 0, direction.Sign()),
        };
}
