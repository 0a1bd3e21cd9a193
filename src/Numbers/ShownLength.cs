using Dryfit.Measure;

namespace Dryfit.Numbers;

/// <summary>A length as Dryfit's own lists show it, with what rounding hides behind it: <c>14 13/16 + 0.2/64 in</c>.</summary>
internal static class ShownLength
{
    /// <summary>Null where the text is no such thing.</summary>
    public static Length? Read(string text, LengthUnit unit)
    {
        var at = text.IndexOf(" + ", StringComparison.Ordinal);
        var isLess = at < 0;
        at = isLess ? text.IndexOf(" - ", StringComparison.Ordinal) : at;
        if (at < 0)
            return null;
        var behind = text[(at + 3)..].Replace("under ", "", StringComparison.Ordinal);
        var inches = behind.EndsWith(" in", StringComparison.Ordinal);
        var own =
            inches ? LengthUnit.Inch
            : behind.EndsWith(" mm", StringComparison.Ordinal) ? LengthUnit.Millimetre
            : unit;
        var parts = behind.Split(' ')[0].Split('/');
        var shown = LengthText.Parse(text[..at], own);
        var hidden = LengthText.Parse(parts[0], own);
        if (!shown.Ok || !hidden.Ok)
            return null;
        var per =
            parts.Length < 2 ? 1
            : int.TryParse(
                parts[1],
                System.Globalization.NumberStyles.None,
                System.Globalization.CultureInfo.InvariantCulture,
                out var n
            )
            && n > 0
                ? n
            : 1;
        var amount = hidden.Length / per;
        return isLess ? shown.Length - amount : shown.Length + amount;
    }
}
