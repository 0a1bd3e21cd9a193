using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>The recipe's <c>parameters:</c>: names with values that formulas use and that can be set from outside.</summary>
public static class ParameterSection
{
    /// <summary>One parameter written out.</summary>
    public static RecordShape Word { get; } =
        new(
            "parameter",
            "A named size, number or word that formulas use and that may be changed without touching the rest.",
            "width: { default: 54, from: 36, to: 72, step: 1/8, note: outside the base's frame }",
            () => Fields("The value unless it is set from outside; a formula may use other parameters.", isOwn: false)
        );

    /// <summary>One parameter of a maker's own word, written out.</summary>
    public static RecordShape OwnWord { get; } =
        new(
            "parameter of an own word",
            "What an own word may be told where it is used: a size, a number, a word, or the name of something there.",
            "width: { default: 300, from: 200, to: 450 }",
            () =>
                Fields(
                    "The value unless another is given where the word is used; without one it must be given.",
                    isOwn: true
                )
        );

    private static IReadOnlyList<Field> Fields(string meaning, bool isOwn) =>
        [
            new Field(
                "default",
                new QuantityShape(),
                meaning,
                Required: !isOwn,
                Default: isOwn ? "must be given" : null
            ),
            new Field(
                "is",
                new ChoiceShape("length", "number", "count", "name") { TakesNames = false },
                "What it is: a length, a plain number, a whole number, or the name of a material, carcase, board or part.",
                Default: "a length, or a number where its formula gives one"
            ),
            new Field("from", new QuantityShape(), "The smallest value allowed.", Default: "no limit"),
            new Field("to", new QuantityShape(), "The largest value allowed.", Default: "no limit"),
            new Field(
                "step",
                new QuantityShape(),
                "Values lie on whole steps, counted from the smallest allowed (from zero without one).",
                Default: "any value"
            ),
            new Field(
                "choices",
                new ListShape(new QuantityShape(), AtLeast: 1, AtMost: 100),
                "The only values allowed: lengths, numbers, or words. Words are asked for in conditions, and their name may stand wherever one of them may."
            ),
            new Field("note", new TextShape(), "What it measures, and from where to where."),
        ];

    /// <summary>All parameters of an own word.</summary>
    public static NamedShape OwnShape { get; } = new(new EitherShape(new QuantityShape(), OwnWord), "parameter");

    /// <summary>All parameters: each a value alone, or written out.</summary>
    public static NamedShape Shape { get; } = new(new EitherShape(new QuantityShape(), Word), "parameter");

    /// <summary>Defines every parameter in the scope, with the values set from outside in place of their defaults.</summary>
    /// <param name="parameters">The section, or null where the recipe has none.</param>
    /// <param name="settings">What was set from outside; the last of a name counts.</param>
    /// <param name="scope">Takes the names and the errors.</param>
    public static void Bind(Mapping? parameters, IReadOnlyList<Setting> settings, Scope scope)
    {
        var given = new Dictionary<string, Scalar>(StringComparer.Ordinal);
        var entries = parameters?.Entries ?? [];
        foreach (var setting in settings)
        {
            if (entries.Any(e => string.Equals(e.Key, setting.Name, StringComparison.Ordinal)))
                given[setting.Name] = ValueOf(setting);
            else
                scope.Report(NoSuch(setting, entries));
        }
        foreach (var entry in entries)
        {
            if (
                CheckName(entry, scope)
                && Parameter.Read(entry, given.GetValueOrDefault(entry.Key), scope) is { } parameter
            )
                parameter.Define();
        }
    }

    /// <summary>Defines the parameters of a maker's own word in one use of it.</summary>
    /// <param name="given">The values given there, by name; all of them are names of parameters.</param>
    /// <returns>The names of parameters that have no value.</returns>
    public static IReadOnlyList<string> Bind(
        Mapping? parameters,
        IReadOnlyDictionary<string, Scalar> given,
        Scope scope,
        InnerNames inner
    )
    {
        var missing = new List<string>();
        foreach (var entry in parameters?.Entries ?? [])
        {
            if (!CheckName(entry, scope))
                continue;
            if (Parameter.Read(entry, given.GetValueOrDefault(entry.Key), scope, inner) is { } parameter)
                parameter.Define();
            else
                missing.Add(entry.Key);
        }
        return missing;
    }

    private static Scalar ValueOf(Setting setting) =>
        new(setting.Text, new SourcePlace(SettingFile, 1, setting.Name.Length + 2, Math.Max(1, setting.Text.Length)));

    private static InputError NoSuch(Setting setting, IReadOnlyList<Entry> entries) =>
        new(
            $"There is no parameter {Excerpt.Quote(setting.Name)} to set.",
            new SourcePlace(SettingFile, 1, 1, Math.Max(1, setting.Name.Length)),
            entries.Count == 0
                ? "nothing: the recipe has no parameters"
                : ShapeWords.OneOf([.. entries.Select(e => e.Key)]),
            NearestWord.To(setting.Name, entries.Select(e => e.Key))
        );

    private static bool CheckName(Entry entry, Scope scope)
    {
        if (FormulaNames.IsName(entry.Key) && !entry.Key.Contains('.', StringComparison.Ordinal))
            return true;
        var reserved = FormulaNames.IsReserved(entry.Key);
        scope.Report(
            new InputError(
                reserved
                    ? $"'{entry.Key}' means something in formulas; it cannot name a parameter."
                    : $"{Excerpt.Quote(entry.Key)} cannot be used in formulas.",
                entry.KeyPlace,
                reserved
                    ? $"another name, such as {entry.Key}_size"
                    : "a name of letters, digits and _, beginning with a letter",
                reserved ? null : FormulaNames.Mend(entry.Key)
            )
        );
        return false;
    }

    /// <summary>Stands as the file in places of values set from outside.</summary>
    internal const string SettingFile = "--set";
}
