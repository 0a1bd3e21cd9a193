using System.Globalization;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Outputs.Findings;

/// <summary>The numbers of a finding in the maker's own unit: one wording for terminal, page, drawing and file.</summary>
internal static class FindingWords
{
    /// <summary>What was measured, with its unit: "5/16 in", "1/16 to 5/16 in".</summary>
    public static string Measured(Measured measured, LengthFormat format) =>
        measured switch
        {
            MeasuredLength length => format.WriteWithUnit(format.ByTape(length.Value)),
            MeasuredRange range => Range(format.ByTape(range.Smallest), format.ByTape(range.Largest), format),
            MeasuredVolume volume =>
                $"{Volume(volume.CubicMm, format)}, {format.WriteWithUnit(format.ByTape(volume.Depth))} deep",
            MeasuredAngle angle => string.Create(
                CultureInfo.InvariantCulture,
                $"{angle.Degrees} of {angle.WantedDegrees} degrees"
            ),
            _ => "",
        };

    /// <summary>What was wanted: "3/32 in", "1/16 to 1/8 in", "at least 1/2 in"; "" where both ends are open.</summary>
    public static string Wanted(Wanted wanted, LengthFormat format) =>
        wanted switch
        {
            { AtLeast: { } least, AtMost: { } most } => Range(least, most, format),
            { AtLeast: { } least } => "at least " + format.WriteWithUnit(least),
            { AtMost: { } most } => "at most " + format.WriteWithUnit(most),
            _ => "",
        };

    /// <summary>By how much it missed: "7/32 in too much", "1/16 in too little"; "" where that cannot be said.</summary>
    public static string Missed(Finding finding, LengthFormat format)
    {
        var words = Misses(finding)
            .Select(miss =>
                format.WriteWithUnit(format.ByTape(miss.By)) + (miss.TooMuch ? " too much" : " too little")
            );
        return string.Join(", ", words);
    }

    /// <summary>By how much it missed, above zero; both ways where a range does both.</summary>
    public static IEnumerable<Miss> Misses(Finding finding)
    {
        var (smallest, largest) = finding.Measured switch
        {
            MeasuredLength length => (length.Value, length.Value),
            MeasuredRange range => (range.Smallest, range.Largest),
            _ => ((Length?)null, (Length?)null),
        };
        if (smallest is not { } low || largest is not { } high || finding.Wanted is not { } wanted)
            yield break;
        if (wanted.AtMost is { } most && high > most)
            yield return new(high - most, TooMuch: true);
        if (wanted.AtLeast is { } least && low < least)
            yield return new(least - low, TooMuch: false);
    }

    public static string Severity(Severity severity) =>
        severity switch
        {
            Dryfit.Findings.Severity.Stop => "stop",
            Dryfit.Findings.Severity.Warn => "warn",
            _ => "note",
        };

    private static string Range(Length from, Length to, LengthFormat format) =>
        from == to ? format.WriteWithUnit(to) : $"{format.Write(from)} to {format.WriteWithUnit(to)}";

    private static string Volume(double cubicMm, LengthFormat format)
    {
        const double CubicMmPerCubicInch = 16387.064; // 25.4 cubed
        const double CubicMmPerCubicCm = 1000;
        return format.Unit == LengthUnit.Inch
            ? (cubicMm / CubicMmPerCubicInch).ToString("0.###", CultureInfo.InvariantCulture) + " in³"
            : (cubicMm / CubicMmPerCubicCm).ToString("0.##", CultureInfo.InvariantCulture) + " cm³";
    }
}

/// <summary>By how much a measured length missed what was wanted; above zero.</summary>
internal readonly record struct Miss(Length By, bool TooMuch);
