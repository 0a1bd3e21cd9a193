using Dryfit.Solids;

namespace Dryfit.Outputs.Tests.Pieces;

/// <summary>A plain box from 0 to its size, written down corner by corner.</summary>
internal static class BoxSolid
{
    private static readonly int[] Quads =
    [
        0,
        3,
        2,
        1, // z = 0
        4,
        5,
        6,
        7, // z = thickness
        0,
        1,
        5,
        4, // y = 0
        3,
        7,
        6,
        2, // y = width
        0,
        4,
        7,
        3, // x = 0
        1,
        2,
        6,
        5, // x = length
    ];

    private static readonly Vec3[] Normals =
    [
        new(0, 0, -1),
        new(0, 0, 1),
        new(0, -1, 0),
        new(0, 1, 0),
        new(-1, 0, 0),
        new(1, 0, 0),
    ];

    public static Solid Of(double length, double width, double thickness)
    {
        Vec3[] corners =
        [
            new(0, 0, 0),
            new(length, 0, 0),
            new(length, width, 0),
            new(0, width, 0),
            new(0, 0, thickness),
            new(length, 0, thickness),
            new(length, width, thickness),
            new(0, width, thickness),
        ];
        var triangles = new List<int>();
        var faces = new List<Face>();
        for (var face = 0; face < 6; face++)
        {
            var q = Quads.AsSpan(face * 4, 4);
            triangles.AddRange([q[0], q[1], q[2], q[0], q[2], q[3]]);
            faces.Add(new(-1, PlaneSurface.Instance, Normals[face], face * 2, 2));
        }
        return new()
        {
            Vertices = corners,
            Triangles = triangles,
            Faces = faces,
            Volume = length * width * thickness,
            Area = 2 * ((length * width) + (width * thickness) + (thickness * length)),
            Centroid = new(length / 2, width / 2, thickness / 2),
            Bounds = new(default, new(length, width, thickness)),
            PieceCount = 1,
        };
    }
}
