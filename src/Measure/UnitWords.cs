namespace Dryfit.Measure;

/// <summary>The words for units of length, in either spelling, singular and plural; case does not matter.</summary>
internal static class UnitWords
{
    private static readonly (string Word, WrittenUnit Unit)[] Words =
    [
        ("mm", WrittenUnit.Millimetre),
        ("millimetre", WrittenUnit.Millimetre),
        ("millimetres", WrittenUnit.Millimetre),
        ("millimeter", WrittenUnit.Millimetre),
        ("millimeters", WrittenUnit.Millimetre),
        ("cm", WrittenUnit.Centimetre),
        ("centimetre", WrittenUnit.Centimetre),
        ("centimetres", WrittenUnit.Centimetre),
        ("centimeter", WrittenUnit.Centimetre),
        ("centimeters", WrittenUnit.Centimetre),
        ("m", WrittenUnit.Metre),
        ("metre", WrittenUnit.Metre),
        ("metres", WrittenUnit.Metre),
        ("meter", WrittenUnit.Metre),
        ("meters", WrittenUnit.Metre),
        ("in", WrittenUnit.Inch),
        ("inch", WrittenUnit.Inch),
        ("inches", WrittenUnit.Inch),
        ("ft", WrittenUnit.Foot),
        ("foot", WrittenUnit.Foot),
        ("feet", WrittenUnit.Foot),
    ];

    /// <summary>The unit a word stands for; <see cref="WrittenUnit.None"/> where it stands for none.</summary>
    public static WrittenUnit Find(ReadOnlySpan<char> word)
    {
        foreach (var (known, unit) in Words)
        {
            if (word.Equals(known, StringComparison.OrdinalIgnoreCase))
                return unit;
        }
        return WrittenUnit.None;
    }

    /// <summary>The unit word a misspelt one begins like (three letters or more in common), or null.</summary>
    public static string? Nearest(string word)
    {
        if (word.Length < 3)
            return null;
        foreach (var (known, _) in Words)
        {
            if (known.StartsWith(word[..3], StringComparison.OrdinalIgnoreCase))
                return known;
        }
        return null;
    }
}
