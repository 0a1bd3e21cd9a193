using System.Runtime.InteropServices;
using Dryfit.Solids;

namespace Dryfit.Bench;

/// <summary>The pieces of work that are timed.</summary>
internal sealed class Work
{
    public const double SquareMm = Workload.UnitsPerMm * Workload.UnitsPerMm;
    public const double CubicMm = SquareMm * Workload.UnitsPerMm;

    private readonly List<Board> boards;
    private readonly List<(int A, int B)> pairs;
    private readonly Placed[] placed;
    private readonly List<(Vec3 Size, IReadOnlyList<Cut> Cuts)> blanks;
    private readonly int carcass;
    private byte[] mesh = [];

    public Work(List<Board> boards, List<(string A, string B)> pairs)
    {
        this.boards = boards;
        blanks = boards.ConvertAll(board => (board.Size, board.Cuts));
        Solids = new Solid[boards.Count];
        placed = new Placed[boards.Count];
        var index = boards.Select((board, i) => (board.Id, i)).ToDictionary(x => x.Id, x => x.i);
        this.pairs = [.. pairs.Select(pair => (index[pair.A], index[pair.B]))];
        var name = boards[0].Id.Split('.')[0];
        carcass = boards.TakeWhile(board => board.Id.Split('.')[0] == name).Count();
    }

    public Solid[] Solids { get; }

    public List<(string A, string B, double Volume, double Gap)> Measured { get; } = [];

    public bool HasPairs => pairs.Count > 0;

    public void BuildAll()
    {
        for (var i = 0; i < boards.Count; i++)
        {
            Build(i);
        }
    }

    /// <summary>On all cores; each solid is the same as on one.</summary>
    public void BuildAllOnAllCores()
    {
        var built = SolidBuilder.BuildAll(blanks);
        for (var i = 0; i < built.Length; i++)
        {
            Solids[i] = built[i];
            placed[i] = new(built[i], boards[i].Frame);
        }
    }

    /// <summary>Overlap volume (mm3) and gap (mm, at most 2) of all pairs.</summary>
    public void MeasurePairs()
    {
        Measured.Clear();
        foreach (var (a, b) in pairs)
        {
            var overlap = Pair.Overlap(placed[a], placed[b]);
            var gap = Pair.Gap(placed[a], placed[b], 2 * Workload.UnitsPerMm);
            Measured.Add(
                (
                    boards[a].Id,
                    boards[b].Id,
                    (overlap?.Volume ?? 0) / CubicMm,
                    (gap?.Distance ?? (2 * Workload.UnitsPerMm)) / Workload.UnitsPerMm
                )
            );
        }
    }

    /// <summary>The first carcass built anew, its parts checked against each other, its mesh written as bytes.</summary>
    public int ChangeOneCarcass()
    {
        var found = 0;
        for (var i = 0; i < carcass; i++)
        {
            Build(i);
        }

        for (var a = 0; a < carcass; a++)
        {
            for (var b = a + 1; b < carcass; b++)
            {
                found += Pair.Overlap(placed[a], placed[b]) is null ? 0 : 1;
                found += Pair.Gap(placed[a], placed[b], 2 * Workload.UnitsPerMm) is null ? 0 : 1;
            }
        }

        var length = 0;
        for (var i = 0; i < carcass; i++)
        {
            length = WriteMesh(Solids[i], length);
        }

        return found + length;
    }

    // Positions and flat normals as floats, a corner of a triangle each.
    private int WriteMesh(Solid solid, int at)
    {
        var needed = at + (solid.Triangles.Count * 24);
        if (mesh.Length < needed)
        {
            Array.Resize(ref mesh, needed * 2);
        }

        var floats = MemoryMarshal.Cast<byte, float>(mesh.AsSpan(at));
        var n = 0;
        for (var f = 0; f < solid.Faces.Count; f++)
        {
            var face = solid.Faces[f];
            for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
            {
                var p = solid.Vertices[solid.Triangles[i]];
                floats[n++] = (float)p.X;
                floats[n++] = (float)p.Y;
                floats[n++] = (float)p.Z;
                floats[n++] = (float)face.Normal.X;
                floats[n++] = (float)face.Normal.Y;
                floats[n++] = (float)face.Normal.Z;
            }
        }

        return needed;
    }

    private void Build(int i)
    {
        Solids[i] = SolidBuilder.Build(boards[i].Size, boards[i].Cuts);
        placed[i] = new(Solids[i], boards[i].Frame);
    }
}
