using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// Lumber is counted in board feet: a board foot is one inch by twelve by twelve, 144 cubic inches. Softwood counts by its
/// nominal section, hardwood by its rough thickness and its measured width.
/// </summary>
/// <remarks>
/// Thickness x width x length in inches over 144: published shop guide to ordering lumber. Nothing is rounded on the way;
/// a sum is rounded once, by <see cref="ToBuy"/>.
/// </remarks>
public static class BoardFeet
{
    private static readonly Length OneInch = Length.FromInches(1);

    /// <summary>Board feet of a board, exact.</summary>
    public static Rational Of(Length thickness, Length width, Length length) =>
        thickness.Inches * width.Inches * length.Inches / 144;

    /// <summary>Board feet charged for rough hardwood: thinner than 4/4 counts as one inch (common practice, from memory).</summary>
    public static Rational OfRoughHardwood(Length thickness, Length width, Length length) =>
        Of(Length.Max(thickness, OneInch), width, length);

    /// <summary>Whole board feet to ask for: up, so that the stock is not short (common practice).</summary>
    public static Rational ToBuy(Rational boardFeet) => boardFeet.Ceiling();
}
