using CsCheck;

namespace Dryfit.Solids.Tests;

/// <summary>
/// Boards whose cuts run along them from end to end go a short way of their own. Every cut given twice sends the same board
/// the general way, which must give the same solid.
/// </summary>
public sealed class RunTests
{
    private static readonly Vec3[] Along = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];

    [Fact]
    public void Cuts_from_end_to_end_give_the_same_solid_as_the_same_cuts_given_twice() =>
        Boards.Hold(4000, board => AreAlike(board.Size, board.Cuts));

    [Fact]
    public void A_moulded_rail_with_mitred_ends_measures_what_it_should()
    {
        // A quarter round of 10 along an edge of 100 x 40 x 20, mitred at 45 degrees over its thickness at both ends.
        var solid = SolidBuilder
            .Build(
                new(100, 40, 20),
                [
                    new PrismCut(
                        new(new(-1, 0, 20), new(0, 1, 0), new(0, 0, 1), new(1, 0, 0)),
                        Profile.From(0, 0).LineTo(0, -10).ArcTo(new(10, 0), 10, Bend.Right, 8).Close(),
                        102
                    ),
                    Mitre(0, 1),
                    Mitre(100, -1),
                ]
            )
            .Checked();

        // The quarter of a disc stands as eight triangles about its middle, 10 from both faces. At height z the mitres leave
        // 60 + 2 z of the length.
        var (angle, area, moment) = (Math.PI / 16, 40.0 * 20, 40.0 * 20 * 10);
        (area, moment) = (area - (10 * 10), moment - (10 * 10 * 15));
        for (var i = 0; i < 8; i++)
        {
            var triangle = 50 * Math.Sin(angle);
            area += triangle;
            moment += triangle * (10 + (10 * (Math.Sin(i * angle) + Math.Sin((i + 1) * angle)) / 3));
        }

        Assert.Equal((60 * area) + (2 * moment), solid.Volume, 1e-9);
        Assert.Equal(14, solid.Faces.Count);
        Assert.Equal(8, solid.Faces.Count(face => face.Surface is CylinderSurface));
        Assert.Equal([0, 1, 2], solid.Faces.Select(face => face.Cut).Where(cut => cut >= 0).Distinct().Order());
    }

    private static PrismCut Mitre(double at, double way) =>
        new(
            new(new(at, way > 0 ? -1 : 41, 0), new(0, 0, 1), new(way, 0, 0), new(0, way, 0)),
            [new(-2, -2), new(22, -2), new(-2, 22)],
            42
        );

    private static Gen<Cut> RunningAlong(int axis, Vec3 size) =>
        Gen.Select(
            Gen.Int[-3, 18],
            Gen.Int[-3, 14],
            Gen.Int[0, 3],
            Gen.Bool,
            Gen.Int[0, 1],
            Gen.Int[0, RandomBoards.Outlines.Length - 1],
            (x, y, turn, isBack, over, outline) =>
            {
                var (w, u) = (Along[axis], Along[(axis + 1 + (turn % 2)) % 3]);
                u *= turn > 1 ? -1 : 1;
                w *= isBack ? -1 : 1;
                var start = isBack ? Along[axis] * (Length(size, axis) + over) : Along[axis] * -over;
                var origin = start + (Along[(axis + 1) % 3] * (5 * x)) + (Along[(axis + 2) % 3] * (5 * y));
                return (Cut)
                    new PrismCut(
                        new(origin, u, Vec3.Cross(w, u), w),
                        RandomBoards.Outlines[outline],
                        Length(size, axis) + (2 * over)
                    );
            }
        );

    // A bevel of one end: from nothing to a few units over the board's width or thickness.
    private static Gen<Cut> Ending(int axis, Vec3 size) =>
        Gen.Select(
            Gen.Int[1, 4],
            Gen.Int[0, 3],
            Gen.Int[1, 2],
            Gen.Bool,
            (rise, foot, other, isHigh) =>
            {
                var across = (axis + other) % 3;
                var third = 3 - axis - across;
                var (u, v) = (Along[axis] * (isHigh ? -1 : 1), Along[across]);
                var width = Length(size, across);
                var w = Vec3.Cross(u, v);
                var isBack = Vec3.Dot(w, Along[third]) < 0;
                var origin =
                    (isHigh ? Along[axis] * Length(size, axis) : default)
                    + (isBack ? Along[third] * Length(size, third) : default);
                return (Cut)
                    new PrismCut(
                        new(origin, u, v, w),
                        [
                            new(-5, -5),
                            new((5 * foot) + 0.25, -5),
                            new((5 * (foot + rise)) + 0.25, width + 5),
                            new(-5, width + 5),
                        ],
                        Length(size, third)
                    );
            }
        );

    private static Gen<(Vec3 Size, Cut[] Cuts)> Boards { get; } =
        Gen.Select(RandomBoards.Sizes, Gen.Int[0, 2])
            .SelectMany(
                (size, axis) =>
                    Gen.Select(RunningAlong(axis, size).Array[1, 3], Ending(axis, size).Array[0, 2])
                        .Select((walls, ends) => (size, (Cut[])[.. walls, .. ends]))
            );

    private static void AreAlike(Vec3 size, Cut[] cuts) =>
        Alike.Check(
            SolidBuilder.Build(size, cuts).Checked(),
            SolidBuilder.Build(size, [.. cuts, .. cuts]).Checked(),
            withSides: true
        );

    private static double Length(Vec3 size, int axis) => Vec3.Dot(size, Along[axis]);
}
