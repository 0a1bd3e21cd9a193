namespace Dryfit.Solids.Measuring;

/// <summary>
/// Adds up volume, area and first moments over the triangles of a closed surface, each with the tetrahedron to a point near
/// by (the divergence theorem).
/// </summary>
internal struct MassSum(Vec3 origin)
{
    private double sixVolumes;
    private double twoAreas;
    private Vec3 moments;

    public readonly double Volume => sixVolumes / 6;

    public readonly double Area => twoAreas / 2;

    public readonly Vec3 Centroid => sixVolumes == 0 ? origin : origin + (moments * (1 / (4 * sixVolumes)));

    public void Add(Vec3 a, Vec3 b, Vec3 c)
    {
        (a, b, c) = (a - origin, b - origin, c - origin);
        var cross = Vec3.Cross(b - a, c - a);
        var six = Vec3.Dot(a, cross);
        sixVolumes += six;
        twoAreas += Math.Sqrt(Vec3.Dot(cross, cross));
        moments += (a + b + c) * six;
    }
}
