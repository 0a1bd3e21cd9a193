using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>The outside of one part's wood, against which the wood beside its holes is measured. Board coordinates.</summary>
internal sealed class Skin
{
    /// <summary>What shapes a part: its faces are its outside, like those of the blank.</summary>
    private static readonly CutKind[] Shaping =
    [
        CutKind.Bevel,
        CutKind.Mitre,
        CutKind.Taper,
        CutKind.Arch,
        CutKind.Chamfer,
        CutKind.RoundedEdge,
        CutKind.Cove,
        CutKind.Moulding,
        CutKind.SawnShape,
        CutKind.Scribe,
        CutKind.CutOut,
        CutKind.CutDown,
    ];

    private readonly Part _part;
    private readonly double[] _offsets;
    private readonly Patch?[] _patches;

    public Skin(Part part)
    {
        _part = part;
        var solid = part.Solid;
        _patches = new Patch?[solid.Triangles.Count / 3];
        _offsets =
        [
            .. solid.Faces.Select(face =>
                Vec3.Dot(face.Normal, solid.Vertices[solid.Triangles[3 * face.FirstTriangle]])
            ),
        ];
    }

    /// <summary>Where little wood is left between a hole and a face that looks away from it, the least for each face.</summary>
    /// <param name="within">How near a face must be, grid units.</param>
    /// <param name="joints">Whether faces that joints cut count too: grooves, dados, mortises.</param>
    public IEnumerable<Wall> Near(Bored hole, double within, double settled, bool joints)
    {
        var faces = _part.Solid.Faces;
        for (var f = 0; f < faces.Count; f++)
        {
            if (!Counts(faces[f], hole, joints) || IsFar(hole.Hollow.Box, faces[f].Normal, _offsets[f], within))
                continue;
            if (Least(hole, f, within, settled) is { } wall)
                yield return wall;
        }
    }

    /// <summary>Holes are measured against each other elsewhere; through the face that it starts from a hole is meant to come.</summary>
    private bool Counts(Face face, Bored hole, bool joints)
    {
        if (face.Cut == hole.Index || Vec3.Dot(face.Normal, hole.Into) < -AtAnySlant)
            return false;
        if (face.Cut < 0)
            return true;
        if (face.Cut >= _part.Cuts.Count || _part.Cuts[face.Cut] is RoundCut)
            return false;
        return joints || IsShaping(_part, face.Cut);
    }

    /// <summary>Whether a cut of a part shapes it, rather than letting something in.</summary>
    public static bool IsShaping(Part part, int cut) => cut >= part.Cuts.Count || Shaping.Contains(part.Cuts[cut].Kind);

    private Wall? Least(Bored hole, int f, double within, double settled)
    {
        var face = _part.Solid.Faces[f];
        Wall? least = null;
        for (var t = face.FirstTriangle; t < face.FirstTriangle + face.TriangleCount; t++)
        {
            var patch = _patches[t] ??= new Patch(Corner(3 * t), Corner((3 * t) + 1), Corner((3 * t) + 2));
            if (!patch.Box.Grown(within).Touches(hole.Hollow.Box))
                continue;
            var (distance, from, to) = Hollow.Between(hole.Hollow, patch, settled);
            if (distance >= within || distance >= least?.Wood)
                continue;
            // Only what looks away has wood between itself and the hole.
            var isBehind = Vec3.Dot(face.Normal, to - from) < -settled || StandsBefore(hole, face.Normal, _offsets[f]);
            if (!isBehind)
                least = new(hole, face, distance, from, to);
        }
        return least;
    }

    /// <summary>Whether the axis of a hole lies outside a face: it comes in there, and does not come out.</summary>
    private static bool StandsBefore(Bored hole, Vec3 normal, double offset) =>
        hole.Round is { } bore
        && Vec3.Dot(normal, bore.Frame.Origin) > offset + 1e-6
        && Vec3.Dot(normal, bore.Frame.Origin + (bore.Frame.W * bore.Depth)) > offset + 1e-6;

    private Vec3 Corner(int at) => _part.Solid.Vertices[_part.Solid.Triangles[at]];

    private static bool IsFar(Box box, Vec3 normal, double offset, double within)
    {
        var (middle, half) = (box.Centre(), (box.Max - box.Min) * 0.5);
        var reach = (Math.Abs(normal.X) * half.X) + (Math.Abs(normal.Y) * half.Y) + (Math.Abs(normal.Z) * half.Z);
        var at = Vec3.Dot(normal, middle);
        return offset - (at + reach) >= within || at - reach - offset >= within;
    }

    private const double AtAnySlant = SeenSolid.AtAnySlant;
}

/// <summary>The wood left between a hole and a face of its part.</summary>
/// <param name="Wood">Grid units; 0 or next to it where the hole comes out.</param>
internal sealed record Wall(Bored Hole, Face Face, double Wood, Vec3 OnHole, Vec3 OnFace)
{
    /// <summary>Whether it lies before the drill, and not beside it: within 45 degrees.</summary>
    public bool IsBeneath => Vec3.Dot(Face.Normal, Hole.Into) > 0.7072;
}
