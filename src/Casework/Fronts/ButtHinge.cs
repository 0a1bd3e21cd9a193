using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The recesses of a butt hinge: each leaf is let in flush, as deep as it is thick, from the front as far as it is wide. The
/// pin then stands before the front face.
/// </summary>
internal static class ButtHinge
{
    /// <summary>Wood that stays behind a leaf, on the side away from the pin; in thin doors the leaf is chosen narrower.</summary>
    private static readonly Length StaysBehind = Length.FromMillimetres(3);

    /// <summary>Cuts the door, and its bands where it has some; returns the middle of the hinge.</summary>
    /// <param name="along">The middle of the hinge along the edge, in the piece.</param>
    public static Point LetIn(Leaf leaf, DoorUnit unit, Length along, string fitting)
    {
        var middle = At(unit.Extent.Side(leaf.Hinged), unit.Extent.Min.Y, leaf, along);
        var room = Room(leaf, middle, leaf.Hinged.Opposite());
        foreach (var part in unit.Face)
        {
            if (Extent.Shared(part.Extent, room) is not null)
                part.CutAway(CutKind.HingeRecess, room, fitting);
        }
        return middle;
    }

    /// <summary>Cuts the part on which the door hangs.</summary>
    public static void LetIn(Leaf leaf, PartDraft post, Length faceY, Length along, string fitting)
    {
        var middle = At(post.Extent.Side(leaf.Hinged.Opposite()), faceY, leaf, along);
        post.CutAway(CutKind.HingeRecess, Room(leaf, middle, leaf.Hinged), fitting);
    }

    private static Point At(Length edge, Length faceY, Leaf leaf, Length along) =>
        leaf.Hinged.Axis() == Axis.X ? new(edge, faceY, along) : new(along, faceY, edge);

    private static Extent Room(Leaf leaf, Point middle, Direction deeper)
    {
        var hinge = leaf.Plan.Hinge;
        var half = hinge.Length(ButtHingeRules.Length).Length / 2;
        var wide = Length.Min(
            hinge.Length(ButtHingeRules.Leaf).Length,
            leaf.Plan.Material.Thickness.Length - StaysBehind
        );
        var run = leaf.Hinged.Axis() == Axis.X ? Axis.Z : Axis.X;
        return new Extent(middle, middle)
            .Grown(Directions.Along(run, 1), half)
            .Grown(Directions.Along(run, -1), half)
            .Grown(Direction.Back, wide)
            .Grown(deeper, hinge.Length(ButtHingeRules.LeafThickness).Length);
    }
}
