namespace Dryfit.Solids.Tests;

/// <summary>Every board that ever came out wrong, kept so that it never does again.</summary>
public sealed class CorpusTests
{
    private static readonly Vec2[] Angle = [new(0, 0), new(30, 0), new(30, 10), new(10, 10), new(10, 30), new(0, 30)];

    // Three planes through one line, two of them apart by the rounding of a direction alone.
    [Fact]
    public void Edge_of_a_tilted_cut_in_the_wall_of_a_bore_almost_flush_with_it() =>
        Build(
            new(70, 50, 10),
            new BoreCut(new(new(55, 25, 0), new(-1, 0, 0), new(0, 0, -1), new(0, -1, 0)), 10, 10, 4),
            new PrismCut(
                new(
                    new(50, -10, 5),
                    new(0, 1, 0),
                    new(-0.7071067811865476, 0, 0.7071067811865475),
                    new(0.7071067811865475, 0, 0.7071067811865476)
                ),
                Angle,
                60
            )
        );

    // The bore's edge lies in the face of the board from within.
    [Fact]
    public void Bore_whose_edge_lies_in_two_faces() =>
        Build(new(50, 60, 10), new BoreCut(new(new(40, 40, 5), new(0, 1, 0), new(0, 0, 1), new(1, 0, 0)), 5, 5, 4));

    [Fact]
    public void Bore_tangent_to_the_edge_of_the_board_all_through() =>
        Build(
            new(20, 60, 10),
            new BoreCut(new(new(15, 30, 10), new(1, 0, 0), new(0, -1, 0), new(0, 0, -1)), 5, 10, 12)
        );

    // An axis plane as the third through a line of a sloped one.
    [Fact]
    public void Wedge_whose_thin_end_touches_the_edge_of_the_board() =>
        Build(
            new(30, 30, 20),
            new PrismCut(
                new(new(45, 20, 10), new(0, 0, -1), new(0, -1, 0), new(-1, 0, 0)),
                [new(0, 0), new(20, 0), new(0, 20)],
                60
            )
        );

    [Fact]
    public void Sloped_cut_that_touches_where_two_flush_cuts_meet() =>
        Build(
            new(30, 60, 30),
            new BoxCut(new(15, -5, -10), new(20, 50, 5)),
            new PrismCut(
                new(new(5, 40, 25), new(1, 0, 0), new(0, 0, -1), new(0, 1, 0)),
                [new(0, 0), new(20, 0), new(0, 20)],
                20
            ),
            new BoxCut(new(25, 0, 15), new(55, 50, 25))
        );

    // A sliver of 1e-15 whose area no double tells from nothing.
    [Fact]
    public void Tilted_bore_that_dips_into_the_board_by_its_rounding() =>
        Build(
            new(80, 40, 10),
            new BoreCut(
                new(
                    new(30, 0, 20),
                    new(0, 1, 0),
                    new(0.5000000000000001, 0, 0.8660254037844386),
                    new(0.8660254037844386, 0, -0.5000000000000001)
                ),
                7.5,
                20,
                6
            )
        );

    // A peer lost 3000 of these: 60 x 30 x 20, less 20 x 30 x 10, less 5 x 30 x 20; the other two only touch.
    [Fact]
    public void Cuts_that_only_touch_the_board_take_nothing()
    {
        var solid = Build(
            new(60, 30, 20),
            new BoxCut(new(10, 0, 10), new(30, 45, 30)),
            new PrismCut(new(new(55, 55, 0), new(1, 0, 0), new(0, 0, 1), new(0, -1, 0)), Angle, 60),
            new PrismCut(
                new(new(40, 40, -10), new(0, -1, 0), new(0, 0, -1), new(1, 0, 0)),
                [new(0, 0), new(10, -10), new(20, 0), new(10, 10)],
                20
            ),
            new PrismCut(new(new(0, 40, 15), new(0, -1, 0), new(-1, 0, 0), new(0, 0, -1)), Angle, 60)
        );
        Assert.Equal(27000, solid.Volume, 1e-9);
    }

    private static Solid Build(Vec3 size, params Cut[] cuts) =>
        SolidBuilder.Build(size, cuts).Checked(mayHaveSlivers: true);
}
