using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>
/// One house rule of the shop file, with the habit of the trade as its default. A shop file that does not name it
/// leaves the default standing, in inches or millimetres as the recipe is.
/// </summary>
/// <param name="Section">The section of the shop file: <c>gaps</c>.</param>
/// <param name="Key">Its key there: <c>inset</c>.</param>
/// <param name="Inch">The default for a recipe in inches, as a maker writes it.</param>
/// <param name="Metric">The default for a recipe in millimetres.</param>
/// <param name="Doc">One sentence a maker reads.</param>
/// <param name="Source">Where the default comes from: a published source, or common practice.</param>
public sealed record Rule(string Section, string Key, string Inch, string Metric, string Doc, string Source)
{
    /// <summary>The source of what every shop does and nobody published.</summary>
    internal const string Practice = "common practice";

    /// <summary>A length that cannot be nothing.</summary>
    internal static LengthShape AboveZero { get; } = new LengthShape(LengthSign.AboveZero);

    /// <summary>What may stand there; a length where nothing else is said.</summary>
    public Shape Shape { get; init; } = new LengthShape();

    /// <summary>The name in sums and messages: <c>gaps.inset</c>.</summary>
    public string Name => $"{Section}.{Key}";
}
