using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// An end butted against a face and held by glued biscuits in slots of both. Slot sizes: common practice for the usual
/// biscuit of 56 x 23 x 4 mm.
/// </summary>
internal static class Biscuits
{
    /// <summary>Wood left behind a slot.</summary>
    private static readonly Length Behind = Length.FromMillimetres(2);

    /// <summary>Cuts the slots and ties the parts.</summary>
    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="spread">The axis along which the biscuits stand in a row.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Axis spread,
        int count
    )
    {
        var shop = piece.Shop;
        var (length, depth) = (shop.Length(JointRules.SlotLength).Length, shop.Length(JointRules.SlotDepth).Length);
        var width = shop.Length(JointRules.SlotWidth).Length;
        var thick = (Axis)(3 - (int)into.Axis() - (int)spread);
        var (from, to) = Meeting.Shared(receives, enters, spread);
        count = Math.Min(count, (int)((to - from) / (length + Behind)).Floor());
        if (
            count < 1
            || depth + Behind > receives.Reckoned.Size(into.Axis())
            || width + (Behind * 2) > enters.Reckoned.Size(thick)
        )
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for biscuits between the {enters.Name} and the {receives.Name}.",
                    enters.Source,
                    "thicker or wider parts, smaller biscuits in the shop file, or another joint"
                )
            );
        var joint = piece.NextJointId;
        var face = Meeting.Centre(enters.Reckoned, into);
        foreach (var middle in Stagger.Places([receives], from, to, count, at => SlotAt(at).Grown(into, depth)))
        {
            var slot = SlotAt(middle);
            receives.CutAway(CutKind.BiscuitSlot, slot.Grown(into, depth), joint);
            enters.CutAway(
                CutKind.BiscuitSlot,
                slot.With(into, enters.Extent.Side(into))
                    .With(into.Opposite(), enters.Extent.Side(into) - (depth * into.Sign())),
                joint
            );
        }
        piece.Fit("biscuit", face, count, enters, receives);
        return piece.Join(JointKind.Biscuit, receives, enters, into);

        Extent SlotAt(Length middle) =>
            new Extent(face, face)
                .With(Directions.Along(spread, -1), middle - (length / 2))
                .With(Directions.Along(spread, 1), middle + (length / 2))
                .Grown(Directions.Along(thick, -1), width / 2)
                .Grown(Directions.Along(thick, 1), width / 2);
    }
}
