using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// How many hinges a door wants: by height and weight after the chart of a hinge maker's quick reference (hardware
/// literature; heights read off its axis), and one more for doors wider than 600 mm (hinge maker's notes on the number
/// of hinges). The maker of the hinges used has the last word.
/// </summary>
internal static class HingeCount
{
    private const double KilogramsPerPound = 0.45359237;

    private static readonly (int Count, Length Height, double Pounds)[] Chart =
    [
        (2, Length.FromInches(40), 15),
        (3, Length.FromInches(60), 30),
        (4, Length.FromInches(80), 45),
        (5, Length.FromInches(100), 60),
    ];

    private static readonly Length Wide = Length.FromMillimetres(600);

    /// <param name="edge">Length of the edge that takes the hinges.</param>
    /// <param name="reach">From that edge to the opposite one.</param>
    public static int For(PieceBuilder piece, Leaf leaf, Length edge, Length reach)
    {
        var kilograms = MassKg(piece, leaf);
        foreach (var (count, height, pounds) in Chart)
        {
            if (edge <= height && kilograms <= pounds * KilogramsPerPound)
                return reach > Wide && leaf.Hinged.Axis() == Axis.X ? count + 1 : count;
        }
        throw NoRoom.Of(
            $"The {leaf.Group.Name} is higher or heavier than the chart of hinges goes: {NoRoom.Show(edge)}, {kilograms:0.0} kg.",
            leaf.Source,
            "`hinges:` with the number that the maker of the hinges gives for such a door"
        );
    }

    /// <summary>What a leaf weighs, before its cuts.</summary>
    public static double MassKg(PieceBuilder piece, Leaf leaf) =>
        piece.Parts.Where(p => p.Group == leaf.Group).Sum(MassKg);

    private static double MassKg(PartDraft part) =>
        part.Length.Length.ToMillimetres()
        * part.Width.Length.ToMillimetres()
        * part.Thickness.Length.ToMillimetres()
        * 1e-9
        * part.Material.DensityKgPerM3;
}
