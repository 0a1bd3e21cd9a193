using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>How far a finding is off the middle of what was wanted.</summary>
/// <param name="Name">What was measured: only misses of one name lie on one line.</param>
/// <param name="By">Above zero where there is too much; where parts stand in each other, that much below.</param>
internal readonly record struct Miss(string Name, Length By)
{
    /// <summary>Null where nothing was measured, or nothing wanted.</summary>
    public static Miss? Of(Finding finding) =>
        finding.Measured switch
        {
            MeasuredVolume volume => new(volume.Name, -volume.Depth),
            MeasuredLength length => Of(length.Name, length.Value, length.Value, finding.Wanted),
            MeasuredRange range => Of(range.Name, range.Smallest, range.Largest, finding.Wanted),
            _ => null,
        };

    private static Miss? Of(string name, Length smallest, Length largest, Wanted? wanted) =>
        wanted switch
        {
            { AtLeast: { } least, AtMost: { } most } => new(name, ((smallest + largest) - (least + most)) / 2),
            { AtLeast: { } least } => new(name, smallest - least),
            { AtMost: { } most } => new(name, largest - most),
            _ => null,
        };
}
