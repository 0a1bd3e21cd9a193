using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>
/// The room around a pane in its rabbet. Glass gets the play of the house; a plastic, which grows many times as much with
/// warmth, besides that half of what its seat's length grows over the range of temperatures it must bear.
/// </summary>
internal static class PanePlay
{
    private const int Million = 1_000_000;

    /// <summary>On each side.</summary>
    /// <param name="seat">From bottom to bottom of the rabbets, one way.</param>
    public static Figure For(PieceBuilder piece, Material material, Figure seat)
    {
        var play = piece.Shop.Length(DoorRules.GlassPlay, "play");
        if (material.Kind != MaterialKind.Plastic || KnownStuff.Find(material.Stuff) is not { } stuff)
            return play;
        var range = piece.Shop.Count(PlasticRules.TemperatureRange);
        var growth = (seat * new Rational((long)stuff.GrowthPerMillionK * range, Million)).As(
            $"growth of {stuff.Name} over {range} K"
        );
        return (play + (growth / 2)).As("play");
    }

    /// <summary>Refuses a pane that leaves its seat on one side when it lies against the other.</summary>
    public static void Refuse(Leaf leaf, FrameMember member, Figure play)
    {
        var isTooMuch =
            leaf.Plan.Infill.Kind == MaterialKind.Plastic
                ? play.Length * 2 >= member.Depth.Length
                : play.Length >= member.Depth.Length;
        if (isTooMuch)
            throw NoRoom.Of(
                $"The pane of the {leaf.Group.Name} would fall out: its play of {NoRoom.Show(play.Length)} takes too much of its rabbet of {NoRoom.Show(member.Depth.Length)}.",
                leaf.Source,
                "a deeper groove or less play in the shop file's rules for doors, or a smaller pane"
            );
    }
}
