using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;

namespace Dryfit.Solids.Tests;

/// <summary>The shape of the mesh: triangles no narrower than the outline of their face forces, nothing needless.</summary>
public sealed class ShapeTests(ITestOutputHelper output)
{
    // Corners nearer than this come from cuts that are flush but for their rounding: their angles mean nothing.
    private const double Rounding = 1e-6;

    [Fact]
    public void Faces_of_upright_boards_are_constrained_Delaunay() => AreDelaunay(RandomBoards.Upright, 2000);

    [Fact]
    public void Faces_of_boards_flush_on_purpose_are_constrained_Delaunay() => AreDelaunay(HardBoards.Flush, 2000);

    [Fact]
    public void Faces_of_boards_with_tilted_cuts_are_constrained_Delaunay() => AreDelaunay(RandomBoards.Any, 2000);

    [Fact]
    public void Faces_of_boards_turned_as_a_whole_are_constrained_Delaunay() => AreDelaunay(HardBoards.Whole, 500);

    [Fact]
    public void Triangles_are_no_narrower_than_those_of_another_library()
    {
        var compared = 0;
        foreach (var board in RandomBoards.Any.Take(1000).Concat(HardBoards.Flush.Take(1000)))
        {
            foreach (var mesh in Faces(SolidBuilder.Build(board.Size, board.Cuts)))
            {
                if (mesh.LeastDistance > Rounding && LeastAngleOfAnother(mesh) is { } angle)
                {
                    compared++;
                    Assert.True(mesh.LeastAngle > angle - 1e-6, $"{mesh.LeastAngle} against {angle}");
                }
            }
        }

        output.WriteLine($"{compared} faces");
        Assert.InRange(compared, 10_000, int.MaxValue);
    }

    // Mouths of many corners take part with eight of them; the others are fanned in.
    [Fact]
    public void Side_full_of_bores_is_parted_no_narrower_than_half_of_what_another_library_does()
    {
        var bores = Enumerable
            .Range(0, 40)
            .Select(i =>
                (Cut)
                    new BoreCut(
                        Frame.Identity with
                        {
                            Origin = new(40 + (32 * (i / 2)), 37 + (i % 2 * 224), 5),
                        },
                        2.5,
                        20,
                        24
                    )
            );
        var solid = SolidBuilder.Build(new(720, 300, 18), [.. bores]).Checked();
        foreach (var mesh in Faces(solid))
        {
            Assert.InRange(mesh.LeastAngle, LeastAngleOfAnother(mesh)!.Value / 2, 60);
        }
    }

    [Fact]
    public void No_corner_lies_in_the_middle_of_a_side()
    {
        foreach (var board in HardBoards.Flush.Take(1000))
        {
            var solid = SolidBuilder.Build(board.Size, board.Cuts);
            if (solid.TouchesItself)
            {
                continue;
            }

            for (var i = 0; i < solid.Triangles.Count; i++)
            {
                var (a, b) = Side(solid, i);
                Assert.All(solid.Vertices, p => Assert.False(IsBetween(p, a, b), $"{p} between {a} and {b}: {board}"));
            }
        }
    }

    [Fact]
    public void Neighbouring_faces_are_never_in_one_plane()
    {
        foreach (var board in HardBoards.Flush.Take(2000))
        {
            var solid = SolidBuilder.Build(board.Size, board.Cuts);
            var faceOf = new Dictionary<(int, int), Face>();
            foreach (var face in solid.Faces)
            {
                for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
                {
                    faceOf[(solid.Triangles[i], solid.Triangles[i % 3 == 2 ? i - 2 : i + 1])] = face;
                }
            }

            foreach (var ((from, to), face) in faceOf)
            {
                var other = faceOf[(to, from)];
                Assert.True(other == face || Vec3.Dot(other.Normal, face.Normal) < 1 - 1e-9);
            }
        }
    }

    private void AreDelaunay(Gen<(Vec3 Size, Cut[] Cuts)> boards, int count)
    {
        var (faces, narrow) = (0, 0);
        foreach (var board in boards.Take(count))
        {
            foreach (var mesh in Faces(SolidBuilder.Build(board.Size, board.Cuts)))
            {
                if (mesh.LeastDistance < Rounding)
                {
                    narrow++;
                    continue;
                }

                faces++;
                Assert.InRange(mesh.WorstDiagonal, -180, 1e-5);
            }
        }

        output.WriteLine($"{faces} faces, {narrow} more with corners apart by rounding alone");
        Assert.InRange(faces, 5 * count, int.MaxValue);
        Assert.InRange(narrow, 0, faces / 5);
    }

    // Where a solid touches itself there are corners put in that no outline asks for.
    private static IEnumerable<FaceMesh> Faces(Solid solid) =>
        solid.TouchesItself ? [] : solid.Faces.Select(face => new FaceMesh(solid, face));

    // Null for what that library does not take for a polygon.
    private static double? LeastAngleOfAnother(FaceMesh mesh)
    {
        if (mesh.Loops() is not { } loops)
        {
            return null;
        }

        var rings = loops
            .Select(loop => new LinearRing([.. loop.Append(loop[0]).Select(p => new Coordinate(p.X, p.Y))]))
            .ToList();
        var shell = rings.Find(ring => ring.IsCCW)!;
        var polygon = new Polygon(shell, [.. rings.Where(ring => ring != shell)]);
        if (!polygon.IsValid)
        {
            return null;
        }

        var triangles = new ConstrainedDelaunayTriangulator(polygon).GetTriangles();
        return triangles.Min(triangle =>
            Enumerable
                .Range(0, 3)
                .Min(i =>
                    FaceMesh.Angle(
                        Point(triangle.GetCoordinate(i)),
                        Point(triangle.GetCoordinate((i + 1) % 3)),
                        Point(triangle.GetCoordinate((i + 2) % 3))
                    )
                )
        );
    }

    private static Vec2 Point(Coordinate p) => new(p.X, p.Y);

    private static (Vec3 From, Vec3 To) Side(Solid solid, int i) =>
        (solid.Vertices[solid.Triangles[i]], solid.Vertices[solid.Triangles[i % 3 == 2 ? i - 2 : i + 1]]);

    private static bool IsBetween(Vec3 p, Vec3 a, Vec3 b)
    {
        var (ab, ap, bp) = (b - a, p - a, p - b);
        var across = Vec3.Cross(ab, ap);
        return Vec3.Dot(ab, ap) > 1e-6
            && Vec3.Dot(ab, bp) < -1e-6
            && Vec3.Dot(across, across) < 1e-12 * Vec3.Dot(ab, ab);
    }
}
