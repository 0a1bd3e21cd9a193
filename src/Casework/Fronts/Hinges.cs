using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// Hangs a door: butt hinges on inset doors in a face frame, cup hinges on all others. Cups are bored by the door as it
/// is, plate holes in the side by the door as reckoned: the side may be bored before the door is made.
/// </summary>
internal static class Hinges
{
    public static void Hang(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var post = leaf.Hinged == Direction.Left ? site.HingeLeft : site.HingeRight;
        var upright = leaf.Hinged == Direction.Left ? site.InsideLeft : site.InsideRight;
        var onFrame = post != upright;
        var count = leaf.Plan.Hinges ?? HingeCount.For(piece, leaf, unit);
        var heights = Heights(piece, unit.Extent.Height, count);
        Refuse(site, leaf);
        if (leaf.Plan.Hinge.Kind == HardwareKinds.ButtHinge)
        {
            foreach (var z in heights)
                piece.Fit(leaf.Plan.Hinge, null, OnEdge(leaf, unit, unit.Extent.Min.Y, z), 1, unit.HingeMember, post);
            return;
        }
        var reckoned = Heights(piece, leaf.ReckonedHeight.Length, count);
        for (var n = 0; n < count; n++)
        {
            var fitting = piece.NextFittingId;
            var cup = CupHinge.BoreDoor(leaf, unit, heights[n], fitting);
            if (!onFrame)
                CupHinge.BoreSide(site, leaf, post, leaf.BottomZ + reckoned[n], fitting);
            piece.Fit(CupHinge.Name(leaf), cup, 1, unit.HingeMember, post);
        }
    }

    private static void Refuse(FrontSite site, Leaf leaf)
    {
        var hinge = leaf.Plan.Hinge;
        if (leaf.Plan.Fit.Hang == Casework.Hang.Inset)
            return;
        if (hinge.Kind == HardwareKinds.ButtHinge)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} lies in front of its opening: butt hinges sit on edges that face each other.",
                leaf.Source,
                "`hinge: cup`, or an inset door"
            );
        var overlay = (
            leaf.Hinged == Direction.Left
                ? site.Opening.Clear.Min.X - leaf.HingeX
                : leaf.HingeX - site.Opening.Clear.Max.X
        );
        var (least, most) = (hinge.LengthOrNull("least overlay"), hinge.LengthOrNull("most overlay"));
        if (overlay < least?.Length || overlay > most?.Length)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} laps {NoRoom.Show(overlay)} over the edge of its opening: the {hinge.Called} cannot be set to that.",
                leaf.Source,
                $"an overlay on the hinge side{(least is null ? "" : $" from {NoRoom.Show(least.Length)}")}{(most is null ? "" : $" to {NoRoom.Show(most.Length)}")}, or another hinge"
            );
    }

    private static Point OnEdge(Leaf leaf, DoorUnit unit, Length y, Length z) =>
        new(unit.Extent.Side(leaf.Hinged), y, unit.Extent.Min.Z + z);

    /// <summary>
    /// Heights of the hinges above the door's lower end: the outer ones at the shop's distance from the ends (a quarter of
    /// a very low door), the rest evenly between, to a whole millimetre or sixteenth.
    /// </summary>
    private static List<Length> Heights(PieceBuilder piece, Length door, int count)
    {
        var end = Length.Min(piece.Shop.Length(HingeRules.HingeEnd).Length, door / 4);
        var step = piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        var heights = new List<Length> { end };
        for (var n = 1; n < count - 1; n++)
            heights.Add((end + ((door - end - end) * new Rational(n, count - 1))).RoundTo(step));
        heights.Add(door - end);
        return heights;
    }
}
