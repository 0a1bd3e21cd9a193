namespace Dryfit.Slips;

/// <summary>Every kind of slip there is, in the order of the table.</summary>
internal static class SlipKinds
{
    public static IReadOnlyList<SlipKind> All { get; } =
    [.. PartSlips.Kinds, .. UnitSlips.Kinds, .. MeasuredSlips.Kinds];
}
