using Dryfit.Measure;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>One value of the recipe with what it was understood to mean.</summary>
/// <param name="Value">As written, with its place.</param>
/// <param name="Inches">In inches to 1/64 with what that hides; null where it is no length.</param>
/// <param name="Millimetres">In millimetres to 0.1 with what that hides; null where it is no length.</param>
/// <param name="Number">The plain number; null where it is a length.</param>
public sealed record Understood(Scalar Value, string? Inches, string? Millimetres, string? Number)
{
    /// <summary>What a number without a unit means where this stands.</summary>
    public LengthUnit Unit { get; init; }

    /// <summary>Whether it was understood as a length.</summary>
    public bool IsLength => Inches is not null;

    /// <summary>Every length, number and formula worked out so far, in the order of the text; what had errors is left out.</summary>
    public static IReadOnlyList<Understood> List(Scope scope) =>
        [
            .. scope
                .Sites.Where(s => s is { Refused: false, Value: not null })
                .OrderBy(s => s.Scalar.Place.File, StringComparer.Ordinal)
                .ThenBy(s => s.Scalar.Place.Line)
                .ThenBy(s => s.Scalar.Place.Column)
                .Select(s => Of(s, scope.Unit) with { Unit = s.Names.Unit }),
        ];

    private static Understood Of(Site site, LengthUnit unit)
    {
        var worked = site.WantsNumber ? site.Value!.Value : site.Value!.Value.AsLength(unit);
        if (worked.Dimension != 1)
            return new(site.Scalar, null, null, worked.Figure.Quantity.ToString());
        var length = worked.Figure.Length;
        return new(
            site.Scalar,
            LengthFormat.Inches.WriteWithUnit(length),
            LengthFormat.Millimetres.WriteWithUnit(length),
            null
        );
    }
}
