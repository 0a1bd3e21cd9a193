using System.Numerics;
using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>The normals and offsets of planes, number by number, so that several can be asked at once.</summary>
internal sealed class NormalTable
{
    // Longer than the count, so that the last vector is whole; what stands past the count means nothing.
    private double[] xs = [];
    private double[] ys = [];
    private double[] zs = [];
    private double[] ds = [];

    public int Count { get; private set; }

    public Vector<double> X(int first) => new(xs, first);

    public Vector<double> Y(int first) => new(ys, first);

    public Vector<double> Z(int first) => new(zs, first);

    public Vector<double> D(int first) => new(ds, first);

    public void Fill(PlaneTable planes, Store<int> order)
    {
        Count = order.Count;
        if (xs.Length < Count + Vector<double>.Count)
        {
            var room = (2 * Count) + Vector<double>.Count;
            (xs, ys, zs, ds) = (new double[room], new double[room], new double[room], new double[room]);
        }

        for (var i = 0; i < Count; i++)
        {
            ref var plane = ref planes[order[i]];
            (xs[i], ys[i], zs[i], ds[i]) = (plane.Nx, plane.Ny, plane.Nz, plane.D);
        }
    }
}
