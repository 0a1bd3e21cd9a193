using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>
/// Hardware by the figures of one maker's sheet, as the shop file has it; what it does not say, and a family without a
/// name, follows the house rules.
/// </summary>
public sealed class HardwareFamily
{
    private readonly Shop _shop;
    private readonly Mapping? _said;

    internal HardwareFamily(Shop shop, HardwareKind kind, string? name, Mapping? said)
    {
        (_shop, Kind, Name, _said) = (shop, kind, name, said);
    }

    public HardwareKind Kind { get; }

    /// <summary>Its name in the shop file; null for the house's usual.</summary>
    public string? Name { get; }

    /// <summary>How it is asked for: its own words, else its name, else its kind.</summary>
    public string Called => (_said?["called"] as Scalar)?.Text ?? Name ?? Kind.Name;

    /// <summary>The line of the shop file; null for the house's usual.</summary>
    public SourcePlace? Place => _said?.Place;

    /// <summary>A figure of the family that is a length; <paramref name="name"/> is how sums call it.</summary>
    /// <param name="rule">The house rule behind the figure, which must be one of <see cref="Kind"/>'s.</param>
    public Figure Length(Rule rule, string? name = null) =>
        Written(rule) is { } written
            ? _shop.FamilyLength(written, name ?? KeyOf(rule), $"{Name} {KeyOf(rule)}")
            : _shop.Length(rule, name);

    /// <summary>A figure of the family that is a whole number.</summary>
    public int Count(Rule rule) => Written(rule) is { } written ? _shop.FamilyCount(written) : _shop.Count(rule);

    /// <summary>A figure of the family that is one of some words.</summary>
    public string Choice(Rule rule) => Written(rule)?.Text ?? _shop.Choice(rule);

    /// <summary>A length the family may give and no house rule stands for; null where it does not.</summary>
    public Figure? LengthOrNull(string key) =>
        _said?[key] is Scalar written ? _shop.FamilyLength(written, key, $"{Name} {key}") : null;

    /// <summary>The lengths it is sold in, from short to long; empty where it comes in every step.</summary>
    public IReadOnlyList<Figure> Lengths =>
        _said?["lengths"] is Sequence list
            ?
            [
                .. list
                    .Items.OfType<Scalar>()
                    .Select(item => _shop.FamilyLength(item, $"{Called} length", $"{Name} lengths"))
                    .OrderBy(length => length.Length),
            ]
            : [];

    /// <summary>Kilograms a pair carries by its maker's sheet; null where that is not known.</summary>
    public Rational? LoadKg => _said?["load"] is Scalar written ? _shop.FamilyNumber(written) : null;

    private Scalar? Written(Rule rule) => _said?[KeyOf(rule)] as Scalar;

    private string KeyOf(Rule rule) =>
        Kind.Figures.FirstOrDefault(figure => figure.Rule == rule)?.Key
        ?? throw new InvalidOperationException($"{rule.Name} is no figure of a {Kind.Name}.");
}
