using CsCheck;

namespace Dryfit.Solids.Tests;

public sealed class PropertyTests
{
    [Fact]
    public void Boards_with_upright_cuts_are_sound() =>
        RandomBoards.Upright.Hold(3000, board => Build(board.Size, board.Cuts));

    [Fact]
    public void Square_cuts_leave_no_triangle_without_area() =>
        RandomBoards.Square.Hold(3000, board => SolidBuilder.Build(board.Size, board.Cuts).Checked());

    [Fact]
    public void Boards_with_tilted_cuts_are_sound() =>
        RandomBoards.Any.Hold(3000, board => Build(board.Size, board.Cuts));

    [Fact]
    public void Cuts_in_any_order_give_the_same_solid() =>
        RandomBoards.Any.Hold(
            1000,
            board => Build(board.Size, board.Cuts).AssertSame(Build(board.Size, [.. board.Cuts.Reverse()]))
        );

    [Fact]
    public void Cutting_twice_is_cutting_once() =>
        RandomBoards.Any.Hold(
            1000,
            board => Build(board.Size, board.Cuts).AssertSame(Build(board.Size, [.. board.Cuts, .. board.Cuts]))
        );

    [Fact]
    public void Mirrored_cuts_give_the_mirrored_solid() =>
        RandomBoards.Upright.Hold(
            1000,
            board => Build(board.Size, board.Cuts).AssertSame(Build(board.Size, Mirror.Cuts(board.Cuts, board.Size.X)))
        );

    // The mirrored place of a tilted cut is rounded anew: what is flush but for that may be so no more.
    [Fact]
    public void Mirrored_tilted_cuts_take_as_much() =>
        RandomBoards.Any.Hold(
            1000,
            board =>
            {
                var solid = Build(board.Size, board.Cuts);
                var mirrored = Build(board.Size, Mirror.Cuts(board.Cuts, board.Size.X));
                Assert.Equal(solid.Volume, mirrored.Volume, 1e-6);
                if (solid.Volume > 0)
                {
                    Assert.Equal(solid.Centroid.X, board.Size.X - mirrored.Centroid.X, 1e-6);
                }
            }
        );

    [Fact]
    public void Two_halves_of_a_board_are_the_board() =>
        Gen.Select(RandomBoards.Any, Gen.Int[1, 3])
            .Hold(
                1000,
                sample =>
                {
                    var (board, at) = sample;
                    var x = 5 * at;
                    var left = Build(board.Size, [.. board.Cuts, new BoxCut(new(x, 0, 0), board.Size)]);
                    var right = Build(board.Size, [.. board.Cuts, new BoxCut(default, board.Size with { X = x })]);
                    Assert.Equal(Build(board.Size, board.Cuts).Volume, left.Volume + right.Volume, 1e-6);
                }
            );

    [Fact]
    public void Part_and_offcuts_together_are_the_blank() =>
        RandomBoards.Any.Hold(
            500,
            board =>
            {
                var cuts = board.Cuts.Where(cut => Offcut.Of(cut) is not null).ToArray();
                var kept = Build(board.Size, cuts).Volume;
                for (var i = 0; i < cuts.Length; i++)
                {
                    var before = new Placed(Build(board.Size, cuts[..i]), Frame.Identity);
                    kept += Pair.Overlap(before, Offcut.Of(cuts[i])!)?.Volume ?? 0;
                }

                Assert.Equal(board.Size.X * board.Size.Y * board.Size.Z, kept, 1e-6);
            }
        );

    // Moved too: the block's middle is elsewhere.
    [Fact]
    public void Boards_moved_and_turned_by_quarter_turns_are_the_same_solid() =>
        Gen.Select(RandomBoards.Upright, RandomBoards.UprightFrames)
            .Hold(
                1000,
                sample =>
                {
                    var (board, frame) = sample;
                    var (block, cuts) = HardBoards.Surrounded(board.Size, board.Cuts, frame);
                    Build(board.Size, board.Cuts).AssertSame(Build(block, cuts));
                }
            );

    [Fact]
    public void Boards_turned_by_any_angle_keep_their_volume() =>
        Gen.Select(RandomBoards.Upright, RandomBoards.TiltedFrames)
            .Hold(
                500,
                sample =>
                {
                    var (board, frame) = sample;
                    var (block, cuts) = HardBoards.Surrounded(board.Size, board.Cuts, frame);
                    Assert.Equal(Build(board.Size, board.Cuts).Volume, Build(block, cuts).Volume, 1e-6);
                }
            );

    [Fact]
    public void Overlap_is_the_same_both_ways_and_leaves_no_gap() =>
        Gen.Select(RandomBoards.Upright, RandomBoards.TiltedFrames)
            .Hold(
                1000,
                sample =>
                {
                    var (board, frame) = sample;
                    var solid = Build(board.Size, board.Cuts);
                    var (a, b) = (new Placed(solid, Frame.Identity), new Placed(solid, frame));
                    var (there, back) = (Pair.Overlap(a, b)?.Volume ?? 0, Pair.Overlap(b, a)?.Volume ?? 0);
                    Assert.Equal(there, back, 1e-6);
                    if (there > 1e-3)
                    {
                        Assert.Equal(0, Pair.Gap(a, b, 1000)!.Distance);
                    }
                }
            );

    private static Solid Build(Vec3 size, Cut[] cuts) => SolidBuilder.Build(size, cuts).Checked(mayHaveSlivers: true);
}
