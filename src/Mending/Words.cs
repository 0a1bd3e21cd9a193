using System.Globalization;
using Dryfit.Findings;

namespace Dryfit.Mending;

/// <summary>How edits are said.</summary>
internal static class Words
{
    /// <summary>"In line 41: 390 -> 397"; of other files than the recipe the name too.</summary>
    public static string Of(IReadOnlyList<Edit> edits, string recipe)
    {
        var text = string.Join("; and ", edits.Select(edit => Of(edit, recipe)));
        return char.ToUpperInvariant(text[0]) + text[1..];
    }

    /// <summary>"in line 41: 390 -> 397".</summary>
    public static string Of(Edit edit, string recipe)
    {
        var file = edit.Place.File == recipe ? "" : $" of {edit.Place.File}";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"in line {edit.Place.Line}{file}: {edit.OldText} -> {edit.NewText}"
        );
    }
}
