using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>The house rules in force: what the shop file says, and the habit of the trade for the rest.</summary>
public sealed class Shop
{
    private readonly Mapping? _file;
    private readonly Scope _fileScope;
    private readonly Scope _defaults;
    private readonly LengthUnit _recipeUnit;
    private readonly Dictionary<Rule, (Length Value, RuleOrigin Origin)> _lengths = [];

    /// <param name="file">The checked shop file, or null where there is none.</param>
    /// <param name="recipeUnit">The recipe's unit: it picks between inch and metric defaults.</param>
    public Shop(Mapping? file, LengthUnit recipeUnit)
    {
        _file = file;
        _recipeUnit = recipeUnit;
        _fileScope = new Scope((file?["units"] as Scalar)?.Text == "in" ? LengthUnit.Inch : LengthUnit.Millimetre);
        _defaults = new Scope(recipeUnit);
        // All that is wrong in a shop file is told at once, in rules this piece does not ask for as well.
        if (file is not null)
            Binding.CheckFormulas(file, ShopFile.Shape, _fileScope);
    }

    /// <summary>What is wrong in the shop file's numbers.</summary>
    public IReadOnlyList<InputError> Errors => _fileScope.Errors;

    /// <summary>A rule that is a length; <paramref name="name"/> is how sums call it (its key where left out).</summary>
    public Figure Length(Rule rule, string? name = null)
    {
        if (!_lengths.TryGetValue(rule, out var length))
        {
            var written = Written(rule);
            var place = written?.Place;
            var figure = written is null
                ? _defaults.Length(new Scalar(DefaultOf(rule), Nowhere), rule.Key)
                : _fileScope.Length(written, rule.Key);
            _lengths[rule] = length = (figure.Length, new RuleOrigin(rule.Name, place));
        }
        return Figure.Given(name ?? rule.Key, length.Value, length.Origin);
    }

    /// <summary>A rule that is a whole number.</summary>
    public int Count(Rule rule)
    {
        var written = Written(rule);
        return written is not null ? _fileScope.Count(written) : _defaults.Count(new Scalar(DefaultOf(rule), Nowhere));
    }

    /// <summary>A rule that is one of some words.</summary>
    public string Choice(Rule rule) => Written(rule)?.Text ?? DefaultOf(rule);

    /// <summary>The family of a kind by its name in the shop file, or the house's usual for null; null where there is none.</summary>
    public HardwareFamily? Family(HardwareKind kind, string? name) =>
        name is null ? new HardwareFamily(this, kind, null, null)
        : Families(kind)?[name] is Mapping said ? new HardwareFamily(this, kind, name, said)
        : null;

    /// <summary>The names of all families of a kind, in the order of the shop file.</summary>
    public IReadOnlyList<string> FamilyNames(HardwareKind kind) =>
        [.. Families(kind)?.Entries.Select(entry => entry.Key) ?? []];

    internal Figure FamilyLength(Scalar written, string name, string rule) =>
        Figure.Given(name, _fileScope.Length(written, name).Length, new RuleOrigin(rule, written.Place));

    internal int FamilyCount(Scalar written) => _fileScope.Count(written);

    internal Rational FamilyNumber(Scalar written) => _fileScope.Number(written, "number").Number;

    /// <summary>How dowels are asked for, by their size.</summary>
    public string DowelText => $"{Write(JointRules.DowelDiameter)} x {Write(JointRules.DowelLength)}";

    private Mapping? Families(HardwareKind kind) => (_file?["hardware"] as Mapping)?[kind.Section] as Mapping;

    private string Write(Rule rule) => LengthFormat.For(_recipeUnit).WriteWithUnit(Length(rule).Length);

    private static SourcePlace Nowhere { get; } = new("built-in", 1, 1, 1);

    private Scalar? Written(Rule rule) => (_file?[rule.Section] as Mapping)?[rule.Key] as Scalar;

    private string DefaultOf(Rule rule) => _recipeUnit == LengthUnit.Inch ? rule.Inch : rule.Metric;
}
