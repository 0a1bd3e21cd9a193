using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;
using Dryfit.Solids.Shaping.Run;
using Dryfit.Solids.Shaping.Square;

namespace Dryfit.Solids.Shaping;

/// <summary>
/// The way from bodies to a solid, step by step: planes, lines, edges, loops, faces, triangles. One per thread, kept from solid
/// to solid for its memory; nothing in it lives on.
/// </summary>
internal sealed class Workshop
{
    [ThreadStatic]
    private static Workshop? mine;

    private readonly PlaneTable planes = new();
    private readonly PointTable points;
    private readonly BodyTable bodies;
    private readonly LineTable lines;
    private readonly EdgeFinder edges;
    private readonly LoopFinder loops;
    private readonly FaceFinder faces;
    private readonly SolidWriter writer;
    private readonly SquareShaper square;
    private readonly RunShaper run;
    private readonly LoneBoreFinder lone = new();
    private readonly Store<LoneBore> none = new();

    private Workshop()
    {
        points = new(planes);
        bodies = new(planes);
        lines = new(planes, points);
        edges = new(planes, points, bodies, lines);
        loops = new(points, lines, edges.Edges);
        faces = new(planes, points, edges.Edges, loops);
        var shortWriter = new BoardWriter(points);
        square = new(shortWriter);
        run = new(shortWriter);
        writer = new(planes, points, loops, faces, new(planes, points, lines, edges.Edges, faces));
    }

    public static Workshop Mine => mine ??= new();

    /// <summary>A board with its cuts.</summary>
    public Solid Build(Vec3 size, IReadOnlyList<Cut> cuts)
    {
        var reach = Math.Max(Reach.Of(size), Reach.Of(cuts));
        CutCheck.Check(cuts, reach);
        CutCheck.CheckOutlines(cuts);
        lone.Find(size, cuts, reach * 1e-9);
        if (
            (
                square.Shape(size, cuts, lone.Rest, lone.Lone)
                ?? run.Shape(size, cuts, lone.Rest, lone.Lone, reach * 1e-9)
            ) is
            { } solid
        )
        {
            return solid;
        }

        Start(reach);
        bodies.AddBlank(size, null);
        foreach (var i in lone.Rest)
        {
            bodies.AddCut(cuts[i], i, null);
        }

        return Finish(size, cuts, lone.Lone);
    }

    /// <summary>What two placed boards share, in world coordinates.</summary>
    public Solid Common(Placed a, Placed b)
    {
        Start(Math.Max(Reach.Of(a), Reach.Of(b)));
        bodies.AddBlank(a.Solid.Size, a.Frame);
        bodies.AddBlank(b.Solid.Size, b.Frame);
        var cuts = new List<Cut>(a.Solid.Cuts.Count + b.Solid.Cuts.Count);
        foreach (var placed in (ReadOnlySpan<Placed>)[a, b])
        {
            // Only cuts that reach into what both blanks fill, seen from their own board.
            var room = bodies.Room.ToBox().CarriedBack(placed.Frame).ToBounds().Grown(planes.Scale * 1e-9);
            foreach (var cut in placed.Solid.Cuts)
            {
                if (cut.Around().Touches(in room))
                {
                    bodies.AddCut(cut, cuts.Count, placed.Frame);
                    cuts.Add(cut);
                }
            }
        }

        return Finish(default, cuts, none);
    }

    private void Start(double reach)
    {
        planes.Clear(reach);
        points.Clear();
        bodies.Clear();
    }

    private Solid Finish(Vec3 size, IReadOnlyList<Cut> cuts, Store<LoneBore> bores)
    {
        edges.Find();
        loops.Find(edges.HasDoubled);
        faces.Find();
        return writer.Write(size, cuts, bores, edges.HasDoubled);
    }
}
