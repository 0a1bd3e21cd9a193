using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;

namespace Dryfit.Casework.Worktops;

/// <summary>
/// Joints of worktops, pulled together by bolts that lie in the underside: on each side of the joint a round pocket for the
/// nut, and from it a channel to the joint.
/// </summary>
internal static class BoltPockets
{
    /// <summary>The bolt lies in the middle of the thickness, with room for itself: common practice.</summary>
    private static readonly Length PastTheMiddle = Length.FromMillimetres(5);

    /// <summary>One over the root of two, to nine places.</summary>
    private static readonly Rational Diagonal = new(707_106_781, 1_000_000_000);

    /// <summary>Two lengths end to end in one line.</summary>
    /// <param name="into">The way from the entering length to the other.</param>
    public static void Butt(PieceBuilder piece, PartDraft receives, PartDraft enters, Direction into)
    {
        var joint = piece.NextJointId;
        var box = enters.Reckoned;
        foreach (var y in Spots(piece, box.Min.Y, box.Max.Y))
        {
            var at = new Point(box.Side(into), y, box.Min.Z);
            Pocket(piece, enters, at, Way(into.Opposite()), joint);
            Pocket(piece, receives, at, Way(into), joint);
        }
        Tie(piece, receives, enters, into, JointKind.Bolted, Count(box.Depth));
    }

    /// <summary>The end of a return's worktop against the front edge of the one over the corner.</summary>
    /// <param name="wall">The wall behind the return, along the run of the corner.</param>
    /// <param name="behind">How far behind the front edge the two meet, where that is shaped.</param>
    /// <param name="isLeft">Whether the corner is at the left end of the return.</param>
    public static void Corner(
        PieceBuilder piece,
        PartDraft main,
        PartDraft own,
        Direction into,
        Length wall,
        Length behind,
        bool isLeft
    )
    {
        var joint = piece.NextJointId;
        var box = own.Reckoned;
        foreach (var y in Spots(piece, box.Min.Y, box.Max.Y))
        {
            Pocket(piece, own, new(box.Side(into), y, box.Min.Z), Way(into.Opposite()), joint);
            var fromWall = box.Max.Y - y;
            var x = isLeft ? wall - fromWall : wall + fromWall;
            Pocket(piece, main, new(x, main.Reckoned.Min.Y + behind, box.Min.Z), Way(Direction.Back), joint);
        }
        Tie(piece, main, own, into, JointKind.Bolted, Count(box.Depth));
    }

    /// <summary>Two worktops that meet in a mitre, cut already.</summary>
    public static void Mitre(PieceBuilder piece, PartDraft main, PartDraft own, Direction into, bool isLeft)
    {
        var joint = piece.NextJointId;
        Along(main, isLeft ? Direction.Right : Direction.Left, own.Reckoned.Depth);
        Along(own, into, main.Reckoned.Depth);
        Tie(piece, main, own, into, JointKind.Mitre, Count(own.Reckoned.Depth));

        // From the inner corner at the front edge to the outer one at the back.
        void Along(PartDraft board, Direction end, Length run)
        {
            var box = board.Reckoned;
            // Only where the two are equally deep does the seam lie at 45 degrees; else a shop sets the bolts by eye.
            var isEven = run == box.Depth;
            foreach (var y in Spots(piece, box.Min.Y, box.Max.Y))
            {
                var share = (box.Max.Y - y) / box.Depth;
                var x = box.Side(end) - (run * share * end.Sign());
                var inward = -end.Sign();
                (Rational X, Rational Y) way = isEven ? (Diagonal * inward, -Diagonal) : (inward, Rational.Zero);
                // Inwards is away from the seam: towards the middle of the board and to its back.
                Pocket(piece, board, new(x, y, box.Min.Z), isEven ? (way.X, -way.Y) : way, joint);
            }
        }
    }

    private static void Pocket(
        PieceBuilder piece,
        PartDraft board,
        Point at,
        (Rational X, Rational Y) way,
        string joint
    )
    {
        var shop = piece.Shop;
        var diameter = shop.Length(WorktopRules.Pocket).Length;
        var setback = shop.Length(WorktopRules.PocketIn).Length;
        var half = shop.Length(WorktopRules.Channel).Length / 2;
        var depth = Length.Min(
            (board.Thickness.Length / 2) + PastTheMiddle,
            board.Thickness.Length * new Rational(3, 4)
        );
        var centre = Fine(piece, new Point(at.X + (setback * way.X), at.Y + (setback * way.Y), at.Z));
        board.Bore(CutKind.Bore, centre, Direction.Up, diameter, depth, joint);
        var (sideX, sideY) = (half * Rational.Abs(way.Y), half * Rational.Abs(way.X));
        if (way.X.Sign == 0 || way.Y.Sign == 0)
        {
            // Only what lies within the board is cut; the channel opens at the joint.
            var channel = new Extent(
                new(Length.Min(at.X, centre.X) - sideX, Length.Min(at.Y, centre.Y) - sideY, at.Z),
                new(Length.Max(at.X, centre.X) + sideX, Length.Max(at.Y, centre.Y) + sideY, at.Z + depth)
            );
            board.CutAway(CutKind.Groove, channel, joint);
            return;
        }
        // A slanted channel begins a little outside the seam, so that it is cut through.
        var (acrossX, acrossY) = (half * -way.Y, half * way.X);
        var (outX, outY) = (at.X - (half * way.X), at.Y - (half * way.Y));
        Swept.Cut(
            board,
            CutKind.Groove,
            default,
            Direction.Right,
            Direction.Back,
            [
                Corner(outX + acrossX, outY + acrossY),
                Corner(outX - acrossX, outY - acrossY),
                Corner(centre.X - acrossX, centre.Y - acrossY),
                Corner(centre.X + acrossX, centre.Y + acrossY),
            ],
            (at.Z, at.Z + depth),
            joint
        );

        OutlineCorner Corner(Length x, Length y)
        {
            var fine = Fine(piece, new(x, y, Length.Zero));
            return (fine.X, fine.Y);
        }
    }

    /// <summary>To a mark of the rule: bolts bridge more than that.</summary>
    private static Point Fine(PieceBuilder piece, Point point)
    {
        var step = IsInches(piece) ? Length.FromInches(0, 1, 64) : Length.FromMillimetres(new Rational(1, 10));
        return new(point.X.RoundTo(step), point.Y.RoundTo(step), point.Z);
    }

    private static bool IsInches(PieceBuilder piece) => piece.Scope.Unit == LengthUnit.Inch;

    private static void Tie(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        JointKind kind,
        int count
    )
    {
        piece.Fit("worktop bolt", Meeting.Centre(enters.Reckoned, into), count, enters, receives);
        piece.Join(kind, receives, enters, into);
    }

    private static (Rational X, Rational Y) Way(Direction direction) =>
        direction.Axis() == Axis.X ? (direction.Sign(), Rational.Zero) : (Rational.Zero, direction.Sign());

    /// <summary>Two bolts up to 400 mm across, three up to 800 mm, else four: common practice.</summary>
    private static int Count(Length across) =>
        across <= Length.FromMillimetres(400) ? 2
        : across <= Length.FromMillimetres(800) ? 3
        : 4;

    /// <summary>Places along a joint, alike from both ends, at whole marks from them.</summary>
    private static IEnumerable<Length> Spots(PieceBuilder piece, Length from, Length to)
    {
        var count = Count(to - from);
        var step = IsInches(piece) ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        for (var n = 0; n < count; n++)
        {
            var isFar = n * 2 >= count;
            var place = isFar ? count - 1 - n : n;
            var off = ((to - from) * ((2 * place) + 1) / (count * 2)).RoundTo(step);
            yield return n * 2 + 1 == count ? (from + to) / 2
            : isFar ? to - off
            : from + off;
        }
    }
}
