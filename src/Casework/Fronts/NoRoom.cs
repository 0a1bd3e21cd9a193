using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts;

/// <summary>Refuses what cannot be built, in words that say what takes the room.</summary>
internal static class NoRoom
{
    /// <summary>Refuses a front whose opening is too small for it.</summary>
    public static void Unless(bool fits, string front, FrontSite site, SourcePlace place)
    {
        if (!fits)
            throw Of(
                $"The {front} has no room: its opening is {Show(site.Width.Length)} wide and {Show(site.Height.Length)} high.",
                place,
                "an opening larger than the gaps around its front"
            );
    }

    /// <summary>An error at a line of the recipe.</summary>
    public static CannotBuildException Of(string message, SourcePlace place, string expected) =>
        new(new InputError(message, place, expected));

    /// <summary>A length in both units, since the maker may think in either.</summary>
    public static string Show(Length length) =>
        $"{LengthFormat.Inches.WriteWithUnit(length)} ({LengthFormat.Millimetres.WriteWithUnit(length)})";
}
