using CsCheck;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Alike;

namespace Dryfit.Outputs.Tests.Alike;

/// <summary>
/// Expected answers come from taking two boards in hand: board 400 x 100 x 20, x along the grain, y across, z towards
/// the show face.
/// </summary>
public class Parts_that_are_alike
{
    private static readonly Lie Flat = Lie.Of(Direction.Right, Direction.Up);

    [Fact]
    public void A_board_is_like_itself_in_another_place_and_lying_another_way()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        bench.Board("one", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 400, 100, 20), Flat);
        bench.Board(
            "two",
            Role.Side,
            SamplePieces.Maple,
            Bench.Box(7, 0, 0, 27, 100, 400),
            Lie.Of(Direction.Up, Direction.Left)
        );
        var kind = Assert.Single(AlikeParts.Of(bench.Parts));
        Assert.Equal("one", kind.Prototype.Id);
        Assert.Equal(["one", "two"], kind.Members.Select(member => member.Part.Id));
        Assert.All(kind.Members, member => Assert.Equal(Turn.None, member.Turn));
    }

    [Fact]
    public void A_board_turned_end_for_end_is_alike() =>
        Assert.Equal(Turn.Half, TurnBetween(Notch(0, 0, 100, 30), Notch(300, 70, 400, 100)));

    [Fact]
    public void A_mirrored_board_is_not_alike()
    {
        Assert.Null(TurnBetween(Notch(0, 0, 100, 30), Notch(300, 0, 400, 30)));
        Assert.Null(TurnBetween(Notch(0, 0, 100, 30), Notch(0, 70, 100, 100)));
    }

    [Fact]
    public void A_board_turned_over_is_not_alike_since_its_show_face_looks_the_other_way() =>
        Assert.Null(
            TurnBetween(
                Bench.Cut(CutKind.Dado, Bench.Box(100, 0, 0, 120, 100, 6)),
                Bench.Cut(CutKind.Dado, Bench.Box(100, 0, 14, 120, 100, 20))
            )
        );

    [Fact]
    public void Drawer_sides_are_alike_where_only_the_groove_for_the_bottom_is_cut_and_not_where_one_end_differs()
    {
        // Left and right sides both show outward, so that one is the other turned end for end.
        var groove = Bench.Cut(CutKind.Groove, Bench.Box(0, 10, 0, 400, 16, 6));
        var turned = Bench.Cut(CutKind.Groove, Bench.Box(0, 84, 0, 400, 90, 6));
        Assert.Equal(Turn.Half, TurnBetween(groove, turned));
        var rabbet = Bench.Cut(CutKind.Rabbet, Bench.Box(0, 0, 0, 10, 100, 10));
        Assert.Null(TurnBetween([groove, rabbet], [turned, rabbet]));
    }

    [Fact]
    public void A_groove_by_another_name_in_two_passes_or_past_the_end_leaves_the_same_board()
    {
        var whole = Bench.Cut(CutKind.Groove, Bench.Box(0, 40, 14, 400, 50, 20));
        Assert.Equal(Turn.None, TurnBetween([whole], [Bench.Cut(CutKind.Dado, Bench.Box(-5, 40, 14, 420, 50, 25))]));
        Assert.Equal(
            Turn.None,
            TurnBetween(
                [whole],
                [
                    Bench.Cut(CutKind.Groove, Bench.Box(150, 40, 14, 400, 50, 20)),
                    Bench.Cut(CutKind.Groove, Bench.Box(0, 40, 14, 200, 50, 17)),
                    Bench.Cut(CutKind.Groove, Bench.Box(0, 40, 16, 200, 50, 20)),
                ]
            )
        );
    }

    [Fact]
    public void The_smallest_difference_is_one()
    {
        var thousandth = new Rational(1, 1000);
        Assert.Null(TurnBetween(Notch(0, 0, 100, 30), Notch(0, 0, 100 + thousandth, 30)));
    }

    [Fact]
    public void Holes_are_compared_in_any_order_and_a_through_hole_from_either_side()
    {
        var (a, b) = (Hole(50, 20, 12), Hole(80, 30, 12));
        Assert.Equal(Turn.None, TurnBetween([a, b], [b, a]));
        Assert.Equal(Turn.Half, TurnBetween([a, b], [Hole(350, 80, 12), Hole(320, 70, 12)]));
        Assert.Null(TurnBetween([a, b], [a]));
        var fromBelow = Hole(50, 20, 25);
        var fromAbove = new RoundCut(
            "b",
            CutKind.Bore,
            null,
            Bench.At(50, 20, 20),
            Direction.Down,
            Bench.Mm(5),
            Bench.Mm(20)
        );
        Assert.Equal(Turn.None, TurnBetween(fromBelow, fromAbove));
    }

    [Fact]
    public void Tapers_are_compared_by_their_outline_wherever_it_starts()
    {
        var taper = Taper([(0, 0), (100, 0), (0, 30)]);
        Assert.Equal(Turn.None, TurnBetween(taper, Taper([(100, 0), (0, 30), (0, 0)])));
        Assert.Equal(Turn.Half, TurnBetween(taper, Taper([(400, 100), (300, 100), (400, 70)])));
        Assert.Null(TurnBetween(taper, Taper([(0, 0), (100, 0), (0, 31)])));
        var bevel = Bevel([(100, 20), (90, 20), (100, 10)]);
        Assert.Equal(Turn.Half, TurnBetween(bevel, Bevel([(0, 20), (0, 10), (10, 20)])));

        static OutlineCut Taper((Rational A, Rational B)[] outline) => Outline(Axis.Z, outline, 20);

        static OutlineCut Bevel((Rational A, Rational B)[] outline) => Outline(Axis.X, outline, 400);

        static OutlineCut Outline(Axis along, (Rational A, Rational B)[] outline, int to) =>
            new(
                "o",
                CutKind.Bevel,
                null,
                along,
                [.. outline.Select(c => (Bench.Mm(c.A), Bench.Mm(c.B)))],
                Length.Zero,
                Bench.Mm(to)
            );
    }

    [Fact]
    public void Material_grain_size_and_edging_tell_parts_apart()
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var box = Bench.Box(0, 0, 0, 400, 100, 20);
        var one = bench.Board("one", Role.Shelf, SamplePieces.Maple, box, Flat);
        Assert.Equal(2, Kinds(one, bench.Board("mdf", Role.Shelf, SamplePieces.Board, box, Flat)));
        Assert.Equal(
            2,
            Kinds(one, bench.Board("longer", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 401, 99, 20), Flat))
        );
        Assert.Equal(2, Kinds(one, one with { Id = "edged", FinishedWidth = Bench.Given(Bench.Mm(101)) }));
        Assert.Equal(2, Kinds(one, one with { Id = "kept", IsKept = true }));
        Assert.Equal(1, Kinds(one, one with { Id = "same", Role = Role.Partition }));
    }

    [Fact]
    public void A_board_without_grain_may_be_turned_a_quarter_and_one_with_grain_may_not()
    {
        Assert.Equal(2, AlikeParts.Of(Pair(SamplePieces.Maple)).Count);
        var kind = Assert.Single(AlikeParts.Of(Pair(SamplePieces.Board)));
        // A quarter turn, counter-clockwise from above, brings the corner at (0, 0) of 400 x 100 to (100, 0) of 100 x 400.
        Assert.Equal(Turn.Quarter, kind.Members[1].Turn);

        static IReadOnlyList<Part> Pair(Material material)
        {
            var bench = new Bench(LengthFormat.Millimetres);
            var one = bench.Board("one", Role.Shelf, material, Bench.Box(0, 0, 0, 400, 100, 20), Flat);
            var two = bench.Board("two", Role.Shelf, material, Bench.Box(0, 0, 0, 100, 400, 20), Flat);
            return [one with { Cuts = [Notch(0, 0, 50, 30)] }, two with { Cuts = [Notch(70, 0, 100, 50)] }];
        }
    }

    [Fact]
    public void Cuts_in_any_order_leave_the_same_board_and_a_half_turn_of_them_the_same_turned() =>
        Gen.Select(Gen.Int[0, 19], Gen.Int[0, 4], Gen.Int[0, 1], Gen.Int[1, 10], Gen.Int[1, 3])
            .Select(c =>
                Bench.Box(
                    c.Item1 * 20,
                    c.Item2 * 20,
                    c.Item3 * 10,
                    (c.Item1 + c.Item4) * 20,
                    (c.Item2 + c.Item5) * 20,
                    20
                )
            )
            .Array[1, 6]
            .Sample(
                boxes =>
                {
                    var cuts = boxes.Select(box => Bench.Cut(CutKind.Notch, box)).ToArray();
                    PartCut[] reversed = [.. cuts.Reverse()];
                    PartCut[] turned = [.. boxes.Select(b => Bench.Cut(CutKind.Notch, Turned(b)))];
                    Assert.Equal(Turn.None, TurnBetween(cuts, reversed));
                    var turn = TurnBetween(cuts, turned);
                    Assert.True(turn is Turn.Half or Turn.None); // none where the cuts are the same both ways round
                },
                iter: 200
            );

    private static Extent Turned(Extent box) =>
        new(
            new(Bench.Mm(400) - box.Max.X, Bench.Mm(100) - box.Max.Y, box.Min.Z),
            new(Bench.Mm(400) - box.Min.X, Bench.Mm(100) - box.Min.Y, box.Max.Z)
        );

    private static SquareCut Notch(Rational x0, Rational y0, Rational x1, Rational y1) =>
        Bench.Cut(CutKind.Notch, Bench.Box(x0, y0, 0, x1, y1, 20));

    private static RoundCut Hole(int x, int y, int depth) =>
        new("hole", CutKind.Bore, null, Bench.At(x, y, 0), Direction.Up, Bench.Mm(5), Bench.Mm(depth));

    private static Turn? TurnBetween(PartCut one, PartCut other) => TurnBetween([one], [other]);

    /// <summary>The turn that lays a board with some cuts on one with others; null where they are not alike.</summary>
    private static Turn? TurnBetween(PartCut[] one, PartCut[] other)
    {
        var bench = new Bench(LengthFormat.Millimetres);
        var plain = bench.Board("plain", Role.Shelf, SamplePieces.Maple, Bench.Box(0, 0, 0, 400, 100, 20), Flat);
        var kinds = AlikeParts.Of([plain with { Id = "one", Cuts = one }, plain with { Id = "other", Cuts = other }]);
        return kinds.Count == 1 ? kinds[0].Members[1].Turn : null;
    }

    private static int Kinds(params Part[] parts) => AlikeParts.Of(parts).Count;
}
