using System.Globalization;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Kit;

/// <summary>Draws values for the parameters of a recipe within what it allows: a choice, or a step between from and to.</summary>
internal static class ParameterDraw
{
    /// <summary>A value for every parameter that names its range or its choices; ends of ranges come often.</summary>
    /// <param name="seed">The same seed draws the same values.</param>
    public static IReadOnlyList<Setting> From(Mapping recipe, int seed)
    {
        var unit = (recipe["units"] as Scalar)?.Text == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
        var chance = new Random(seed);
        var drawn = new List<Setting>();
        foreach (var (name, said) in Ranged(recipe))
        {
            if (Value(said, unit, chance) is { } value)
                drawn.Add(new Setting(name, value));
        }
        return drawn;
    }

    /// <summary>The parameters that can be drawn: those written out with both ends or with choices.</summary>
    public static IEnumerable<(string Name, Mapping Said)> Ranged(Mapping recipe) =>
        ((recipe["parameters"] as Mapping)?.Entries ?? [])
            .Where(e => e.Value is Mapping)
            .Select(e => (e.Key, (Mapping)e.Value))
            .Where(p => p.Item2["choices"] is Sequence || (p.Item2["from"] is Scalar && p.Item2["to"] is Scalar));

    private static string? Value(Mapping said, LengthUnit unit, Random chance)
    {
        if (said["choices"] is Sequence choices)
            return ((Scalar)choices.Items[chance.Next(choices.Items.Count)]).Text;
        var (from, to, step) = ((Scalar)said["from"]!, (Scalar)said["to"]!, said["step"] as Scalar);
        if ((said["is"] as Scalar)?.Text is "count")
            return chance
                .Next(int.Parse(from.Text, CultureInfo.InvariantCulture), Last(to) + 1)
                .ToString(CultureInfo.InvariantCulture);
        // Ends that are formulas over other parameters are left to their defaults.
        if (
            Length(from, unit) is not { } least
            || Length(to, unit) is not { } most
            || Length(step, unit) is not { } each
        )
            return null;
        var steps = (int)((most - least) / each).Floor();
        var n = chance.Next(4) switch
        {
            0 => 0,
            1 => steps,
            _ => chance.Next(steps + 1),
        };
        // Plain numbers and lengths alike are written in the unit that bare numbers have.
        return (least + (each * n)).In(unit).ToString();

        static int Last(Scalar to) => int.Parse(to.Text, CultureInfo.InvariantCulture);
    }

    private static Length? Length(Scalar? said, LengthUnit unit) =>
        said is null ? Measure.Length.From(unit == LengthUnit.Inch ? new Rational(1, 16) : Rational.One, unit)
        : LengthText.Parse(said.Text, unit) is { Ok: true } read ? read.Length
        : null;
}
