using System.Globalization;
using System.Numerics;
using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// Tails on the end of one board between pins on the end of another, half pins at both edges. The tails are as long as the
/// two boards stand in each other: through where they reach to the outer face, half-blind where they stop before it.
/// Slope 1:6 in softwood, 1:8 in hardwood and sheets: common practice.
/// </summary>
internal static class Dovetails
{
    /// <summary>Cuts both boards and ties them.</summary>
    /// <param name="pins">The board with the pins; the tails are driven on to it.</param>
    /// <param name="tails">The board with the tails.</param>
    /// <param name="into">The way the tail board goes on to the pins, through its own thickness.</param>
    /// <param name="end">Where the ends of the tails point.</param>
    public static Joint Between(PieceBuilder piece, PartDraft pins, PartDraft tails, Direction into, Direction end) =>
        Between(piece, pins, tails, into, end, Meeting.Corner(pins, tails, Spread(into, end)));

    /// <summary>The same within a place of its own: where old boards met before they were cut down.</summary>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft pins,
        PartDraft tails,
        Direction into,
        Direction end,
        Extent? within
    )
    {
        if (within is not { } room)
            return Meeting.Missed(piece, JointKind.Dovetail, pins, tails, into);
        var spread = Spread(into, end);
        var joint = piece.NextJointId;
        var tall = room.Size(spread);
        var slope = SlopeIn(piece, tails.Material);
        var shift = room.Size(end.Axis()) / slope;
        var called = string.Create(CultureInfo.InvariantCulture, $"1 in {slope}");
        var laid = Lay(piece, tails, tall, shift);
        // The outline is counted from the wide ends of the tails, at the lower edge.
        var origin = room.Min.With(end.Axis(), room.Side(end));
        var up = Directions.Along(spread, 1);
        var (zero, deep) = (Length.Zero, room.Size(end.Axis()));
        var stretch = (room.Min[into.Axis()], room.Max[into.Axis()]);
        foreach (var (from, to) in laid)
            Swept.Cut(
                pins,
                CutKind.DovetailSocket,
                origin,
                end.Opposite(),
                up,
                [(zero, from), (zero, to), (deep, to - shift), (deep, from + shift)],
                stretch,
                joint,
                called
            );
        var below = zero;
        for (var n = 0; n <= laid.Count; n++)
        {
            var (first, last) = (n == 0, n == laid.Count);
            var above = last ? tall : laid[n].From;
            Swept.Cut(
                tails,
                CutKind.DovetailSocket,
                origin,
                end.Opposite(),
                up,
                [
                    (zero, below),
                    (zero, above),
                    (deep, last ? above : above + shift),
                    (deep, first ? below : below - shift),
                ],
                stretch,
                joint,
                called
            );
            if (!last)
                below = laid[n].To;
        }
        return piece.Join(JointKind.Dovetail, pins, tails, into, room.Size(into.Axis()));
    }

    /// <summary>
    /// Whether boards that are ripped at a height keep a sliver of a tail that no longer hangs on its board: where the cut
    /// runs between the root of a tail and its wider end.
    /// </summary>
    /// <param name="tall">Height of the boards before.</param>
    /// <param name="deep">Length of the tails.</param>
    /// <param name="at">The cut, from the lower edge.</param>
    /// <param name="keepsAbove">Whether what lies above the cut is kept.</param>
    public static bool LeavesSliver(
        PieceBuilder piece,
        PartDraft tails,
        Length tall,
        Length deep,
        Length at,
        bool keepsAbove
    )
    {
        var shift = deep / SlopeIn(piece, tails.Material);
        return Lay(piece, tails, tall, shift)
            .Exists(tail =>
                keepsAbove ? tail.To - shift <= at && at < tail.To : tail.From < at && at <= tail.From + shift
            );
    }

    /// <summary>How many tails share a height or width; one at least.</summary>
    public static int CountOn(PieceBuilder piece, Length tall)
    {
        var pin = piece.Shop.Length(JointRules.DovetailPin).Length;
        return (int)
            BigInteger.Clamp(((tall - pin) / piece.Shop.Length(JointRules.DovetailPitch).Length).Round(), 1, 200);
    }

    private static Axis Spread(Direction into, Direction end) => (Axis)(3 - (int)into.Axis() - (int)end.Axis());

    private static int SlopeIn(PieceBuilder piece, Material material) =>
        piece.Shop.Count(Softwoods.Has(material) ? JointRules.SoftwoodSlope : JointRules.HardwoodSlope);

    /// <summary>The wide ends of the tails, from the lower edge.</summary>
    private static List<(Length From, Length To)> Lay(PieceBuilder piece, PartDraft tails, Length tall, Length shift)
    {
        var step = MarkingOut.StepOf(piece);
        var pin = piece.Shop.Length(JointRules.DovetailPin).Length;
        var count = CountOn(piece, tall);
        var wide = (tall - (pin * (count + 1))) / count;
        if (wide <= (shift * 2) + (pin / 2))
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for dovetails on the {tails.Name}: {LengthFormat.Millimetres.WriteWithUnit(tall)} high, with pins of {LengthFormat.Millimetres.WriteWithUnit(pin)}.",
                    tails.Source,
                    "a higher board, a narrower `dovetail pin` in the shop file, or another joint"
                )
            );
        var laid = new List<(Length, Length)>();
        for (var n = 0; n < count; n++)
        {
            var from = pin + ((wide + pin) * n);
            laid.Add((from.RoundTo(step), (from + wide).RoundTo(step)));
        }
        return laid;
    }
}
