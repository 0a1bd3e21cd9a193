using System.Globalization;
using System.Text;

namespace Dryfit.Findings;

/// <summary>How many cells of a terminal a character takes.</summary>
public static class CellWidth
{
    /// <summary>Blocks that terminals draw two cells wide (Unicode Standard Annex #11, East Asian Width, "W" and "F").</summary>
    private static readonly (int First, int Last)[] Wide =
    [
        (0x1100, 0x115F),
        (0x2E80, 0x303E),
        (0x3041, 0x33FF),
        (0x3400, 0x4DBF),
        (0x4E00, 0x9FFF),
        (0xA000, 0xA4CF),
        (0xA960, 0xA97F),
        (0xAC00, 0xD7A3),
        (0xF900, 0xFAFF),
        (0xFE30, 0xFE6F),
        (0xFF00, 0xFF60),
        (0xFFE0, 0xFFE6),
        (0x1F300, 0x1F64F),
        (0x1F680, 0x1F6FF),
        (0x1F900, 0x1F9FF),
        (0x20000, 0x3FFFD),
    ];

    /// <summary>0 for marks that sit on the character before, 2 for wide ones, 1 for all others.</summary>
    public static int Of(Rune rune)
    {
        var category = Rune.GetUnicodeCategory(rune);
        if (category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format)
            return 0;
        foreach (var (first, last) in Wide)
        {
            if (rune.Value >= first && rune.Value <= last)
                return 2;
        }
        return 1;
    }
}
