using Dryfit.Solids.Exact;
using Dryfit.Solids.Measuring;

namespace Dryfit.Solids.Shaping.Square;

/// <summary>The short way for boards whose cuts are all square, or bores that meet nothing but a face of the blank: cells of a
/// grid instead of planes and points. It gives the same solid as the general way.</summary>
internal sealed class SquareShaper
{
    private readonly SquareGrid grid = new();
    private readonly SquareCorners corners;
    private readonly SquareFaces faces;
    private readonly BoardWriter writer;

    public SquareShaper(BoardWriter writer)
    {
        this.writer = writer;
        corners = new(grid);
        faces = new(grid, corners);
    }

    /// <summary>Null where the board is not square, or touches itself.</summary>
    /// <param name="size">The blank.</param>
    /// <param name="cuts">All cuts, of which <paramref name="rest"/> are not lone bores.</param>
    /// <param name="rest">Which cuts to go by.</param>
    /// <param name="bores">The others.</param>
    public Solid? Shape(Vec3 size, IReadOnlyList<Cut> cuts, List<int> rest, Store<LoneBore> bores)
    {
        if (!grid.Lay(size, cuts, rest) || !corners.Find())
        {
            return null;
        }

        faces.Find();
        writer.Start(corners.Positions.Span, bores, faces.Flats.Count, faces);
        var area = 0.0;
        for (var i = 0; i < faces.Flats.Count; i++)
        {
            area += Write(i);
        }

        var mass = new MassSum(default);
        var volume = grid.Volume(out var moments);
        if (volume > 0)
        {
            // What is taken with a minus is put in.
            mass.Take(-volume, area, moments * (1 / volume));
        }

        return writer.Finish(size, cuts, mass, grid.CountPieces());
    }

    // Gives the flat's area.
    private double Write(int index)
    {
        ref var flat = ref faces.Flats[index];
        var sign = flat.IsUp ? 1 : -1;
        var area = 0.0;
        writer.StartFlat(flat.Axis, flat.IsUp);
        for (var l = flat.FirstLoop; l < flat.FirstLoop + flat.LoopCount; l++)
        {
            var loop = faces.Loop(l);
            writer.AddLoop(loop);
            area += sign * AreaOf(loop, flat.Axis);
        }

        writer.Part(index);
        writer.AddFace(flat.Cut, new(flat.Axis == 0 ? sign : 0, flat.Axis == 1 ? sign : 0, flat.Axis == 2 ? sign : 0));
        return area;
    }

    private double AreaOf(ReadOnlySpan<int> loop, int axis)
    {
        var vertices = writer.Vertices;
        var twice = 0.0;
        var (originU, originV) = FacePoints.Flatten(vertices[loop[0]], axis, isSwapped: false);
        var (u, v) = (0.0, 0.0);
        foreach (var corner in loop[1..])
        {
            var (nextU, nextV) = FacePoints.Flatten(vertices[corner], axis, isSwapped: false);
            (nextU, nextV) = (nextU - originU, nextV - originV);
            twice += (u * nextV) - (nextU * v);
            (u, v) = (nextU, nextV);
        }

        return twice / 2;
    }
}
