using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// Hangs a door or flap: butt hinges on inset ones in a face frame, cup hinges on all others. What is cut into the door goes
/// by the door as it is, what is cut into frame or side by the door as reckoned: that may be cut before the door is made.
/// </summary>
internal static class Hinges
{
    public static void Hang(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var (post, inside) = Carriers(site, leaf);
        var onFrame = post != inside;
        var along = leaf.Hinged.Axis() == Axis.X ? Axis.Z : Axis.X;
        var run = unit.Extent.Size(along);
        var count = leaf.Plan.Hinges ?? HingeCount.For(piece, leaf, run, unit.Extent.Size(leaf.Hinged.Axis()));
        Refuse(site, leaf);
        var onDoor = Places(piece, run, count).ConvertAll(at => unit.Extent.Min[along] + at);
        var reckoned = along == Axis.Z ? leaf.ReckonedHeight : leaf.Width;
        var start = along == Axis.Z ? leaf.BottomZ : leaf.HingeX;
        var onPost = Places(piece, reckoned.Length, count).ConvertAll(at => start + at);
        if (!onFrame && leaf.Plan.Hinge.Kind == HardwareKinds.CupHinge && !leaf.Plan.Fit.IsLipped)
            KeepClear(piece, site, leaf, post, (unit.Extent.Min[along], unit.Extent.Max[along]), onDoor, onPost);
        for (var n = 0; n < count; n++)
        {
            var fitting = piece.NextFittingId;
            if (leaf.Plan.Fit.IsLipped)
            {
                // Bent around the lip and screwed on from behind: nothing is let in.
                var edge = unit.Extent.Side(leaf.Hinged);
                var at =
                    along == Axis.Z
                        ? new Point(edge, unit.Extent.Max.Y, onDoor[n])
                        : new(onDoor[n], unit.Extent.Max.Y, edge);
                piece.Fit("hinge for a lipped door", at, 1, unit.HingeMember, post);
                piece.IsHinge(new(HingeForm.ScrewedOn));
                continue;
            }
            if (leaf.Plan.Hinge.Kind == HardwareKinds.ButtHinge)
            {
                var at = ButtHinge.LetIn(leaf, unit, onDoor[n], fitting);
                ButtHinge.LetIn(leaf, post, site.FaceY, onPost[n], fitting);
                piece.Fit(leaf.Plan.Hinge, null, at, 1, unit.HingeMember, post);
                piece.IsHinge(new(HingeForm.Butt));
                continue;
            }
            var cup = CupHinge.BoreDoor(leaf, unit, onDoor[n], fitting);
            if (!onFrame)
                CupHinge.BoreSide(site, leaf, post, onPost[n], fitting);
            piece.Fit(CupHinge.Name(leaf), cup, 1, unit.HingeMember, post);
            piece.IsHinge(new(HingeForm.Cup, onFrame ? null : CupHinge.Arm(leaf.Plan.Hinge)));
        }
    }

    /// <summary>The part that takes the hinges, and the part of the carcase behind it; the same where there is no frame.</summary>
    private static (PartDraft Post, PartDraft Inside) Carriers(FrontSite site, Leaf leaf)
    {
        var (post, inside) = leaf.Hinged switch
        {
            Direction.Left => (site.HingeLeft, site.InsideLeft),
            Direction.Right => (site.HingeRight, site.InsideRight),
            Direction.Up => (site.Above, site.Ceiling),
            _ => (site.Below, site.Floor),
        };
        if (post is null)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} has nothing to hang on: only a gap divides it from the next front.",
                leaf.Source,
                "a rail or a shelf there: an open row, a divided one, or a face frame"
            );
        return (post, inside ?? post);
    }

    /// <summary>
    /// How far the front turns, and about what. The pin of a butt hinge stands in the middle of the gap, in the plane of the
    /// face. A hinge on links, or one bent around a lip, is followed as a pin at the front corner of the door's edge (of an
    /// inset door: at the gap before it): there the door neither passes its own edge sideways nor goes into the carcase.
    /// </summary>
    public static Swing SwingOf(PieceBuilder piece, FrontSite site, Leaf leaf, DoorUnit unit)
    {
        var hinge = leaf.Plan.Hinge;
        var isButt = hinge.Kind == HardwareKinds.ButtHinge;
        var edge = unit.Extent.Side(leaf.Hinged);
        if (leaf.Plan.Fit.Hang == Casework.Hang.Inset)
            edge = (edge + site.Opening.Clear.Side(leaf.Hinged)) / 2;
        var face = unit.Extent.Min.Y;
        return new(
            leaf.Hinged.Axis() == Axis.Z ? piece.Shop.Count(HingeRules.FlapAngle)
                : isButt ? hinge.Count(ButtHingeRules.OpeningAngle)
                : hinge.Count(HingeRules.OpeningAngle),
            leaf.Plan.Fit.IsLipped ? "hinge for a lipped door" : hinge.Called,
            leaf.Hinged.Axis() == Axis.X ? new(edge, face, unit.Extent.Min.Z) : new(unit.Extent.Min.X, face, edge),
            leaf.Plan.Fit.IsLipped ? piece.Shop.Length(HingeRules.Wander).Length
                : isButt ? Length.Zero
                : hinge.Length(HingeRules.Wander).Length
        );
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
        var clear = site.Opening.Clear.Side(leaf.Hinged);
        var overlay = (leaf.Plan.Fit.Edge(leaf.Hinged) - clear) * leaf.Hinged.Sign();
        var (least, most) = (hinge.LengthOrNull("least overlay"), hinge.LengthOrNull("most overlay"));
        if (overlay < least?.Length || overlay > most?.Length)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} laps {NoRoom.Show(overlay)} over the edge of its opening: the {hinge.Called} cannot be set to that.",
                leaf.Source,
                $"an overlay on the hinge side{(least is null ? "" : $" from {NoRoom.Show(least.Length)}")}{(most is null ? "" : $" to {NoRoom.Show(most.Length)}")}, or another hinge"
            );
    }

    /// <summary>The farthest that a hinge is moved from where it would stand, towards the middle of the edge or away from it.</summary>
    private static readonly Length Farthest = Length.FromMillimetres(100);

    /// <summary>The least from the end of a door to the middle of a hinge that is moved: its cup and its screws need as much.</summary>
    private static readonly Length NearestEnd = Length.FromMillimetres(50);

    /// <summary>
    /// Moves hinges, each on door and side alike, where one would meet a shelf or the holes of its pins: by as little as will
    /// do, towards the middle first. Where there is no free place it stays where it was.
    /// </summary>
    private static void KeepClear(
        PieceBuilder piece,
        FrontSite site,
        Leaf leaf,
        PartDraft post,
        (Length From, Length To) ends,
        List<Length> onDoor,
        List<Length> onPost
    )
    {
        var step = Step(piece);
        var middle = (onPost[0] + onPost[^1]) / 2;
        var count = onPost.Count;
        for (var n = 0; n < count; n++)
        {
            var inward = onPost[n] <= middle ? 1 : -1;
            var by = Enumerable
                .Range(0, (int)(Farthest / step).Floor())
                .SelectMany(steps => new[] { step * (steps * inward), step * (-steps * inward) })
                .Where(away => Stays(n, away))
                .Cast<Length?>()
                .FirstOrDefault(away => CupHinge.IsFree(piece, site, leaf, post, onPost[n] + away!.Value));
            onDoor[n] += by ?? Length.Zero;
            onPost[n] += by ?? Length.Zero;
        }

        // On the door, with room to its ends and to the hinges beside.
        bool Stays(int n, Length away) =>
            away == Length.Zero
            || (
                onDoor[n] + away >= (n == 0 ? ends.From + NearestEnd : onDoor[n - 1] + (NearestEnd * 2))
                && onDoor[n] + away <= (n == count - 1 ? ends.To - NearestEnd : onDoor[n + 1] - (NearestEnd * 2))
            );
    }

    private static Length Step(PieceBuilder piece) =>
        piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);

    /// <summary>
    /// Places of the hinges from one end of the edge: the outer ones at the shop's distance from the ends (a quarter of
    /// a very short edge), the rest evenly between, to a whole millimetre or sixteenth.
    /// </summary>
    private static List<Length> Places(PieceBuilder piece, Length edge, int count)
    {
        var end = Length.Min(piece.Shop.Length(HingeRules.HingeEnd).Length, edge / 4);
        var step = Step(piece);
        var places = new List<Length> { end };
        for (var n = 1; n < count - 1; n++)
            places.Add((end + ((edge - end - end) * new Rational(n, count - 1))).RoundTo(step));
        places.Add(edge - end);
        return places;
    }
}
