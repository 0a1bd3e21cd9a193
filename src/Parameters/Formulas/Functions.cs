namespace Dryfit.Parameters.Formulas;

/// <summary>The functions formulas know, and the words no name may take.</summary>
internal static class Functions
{
    private static readonly (string Name, Function Function, int Least, int Most, string Form)[] All =
    [
        ("min", Function.Min, 2, 100, "min(a, b)"),
        ("max", Function.Max, 2, 100, "max(a, b)"),
        ("round", Function.Round, 1, 2, "round(size, step)"),
        ("round down", Function.RoundDown, 1, 2, "round down(size, step)"),
        ("round up", Function.RoundUp, 1, 2, "round up(size, step)"),
        ("sqrt", Function.Sqrt, 1, 1, "sqrt(area)"),
    ];

    private static readonly string[] Reserved =
    [
        "if",
        "then",
        "else",
        "and",
        "or",
        "not",
        "min",
        "max",
        "round",
        "up",
        "down",
        "sqrt",
        "mm",
        "cm",
        "m",
        "in",
        "ft",
        "inch",
        "inches",
        "foot",
        "feet",
        "true",
        "false",
        "null",
        "yes",
        "no",
    ];

    public static IEnumerable<string> Names => All.Select(f => f.Name);

    public static Function? Find(string name)
    {
        foreach (var known in All)
        {
            if (string.Equals(known.Name, name, StringComparison.Ordinal))
                return known.Function;
        }
        return null;
    }

    /// <summary>How many values it takes, and how it is written.</summary>
    public static (int Least, int Most, string Form) Takes(Function function)
    {
        var known = All.Single(f => f.Function == function);
        return (known.Least, known.Most, known.Form);
    }

    public static bool IsReserved(string name) => Reserved.Contains(name, StringComparer.Ordinal);
}
