using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.CutList;

/// <summary>
/// Plain glass where a person could fall against it: with its lower edge less than 800 mm over the floor, or in a door with
/// its lower edge less than 1500 mm over it. Guidance on glass in buildings draws the line about there (from memory); the
/// local code has the last word.
/// </summary>
internal static class GlassToFallAgainst
{
    private const int MostNamed = 6;
    private static readonly Length Low = Length.FromMillimetres(800);
    private static readonly Length LowInDoor = Length.FromMillimetres(1500);

    /// <summary>The names of such panes; null where there are none.</summary>
    public static string? In(Piece piece)
    {
        var plain = piece.Parts.Where(part => !part.IsKept && IsPlain(part)).ToList();
        if (plain.Count == 0)
            return null;
        var floor = piece.Parts.Min(part => part.Extent.Min.Z);
        var doors = piece.Fronts.Select(front => front.Group).ToHashSet(StringComparer.Ordinal);
        string[] names =
        [
            .. plain
                .Where(part =>
                    part.Place.Lie.Shows.Axis() != Axis.Z
                    && part.Extent.Min.Z - floor < (doors.Contains(part.Group) ? LowInDoor : Low)
                )
                .Select(part => PlainText.Shortened(PlainText.Apart(part.Name), 80)),
        ];
        if (names.Length == 0)
            return null;
        var named = string.Join(", ", names.Take(MostNamed));
        return names.Length > MostNamed ? $"{named} and {names.Length - MostNamed} more" : named;
    }

    private static bool IsPlain(Part part) =>
        part.Material.Kind == MaterialKind.Glass && part.Material.Stuff is not ("toughened glass" or "laminated glass");
}
