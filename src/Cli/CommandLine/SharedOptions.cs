using System.CommandLine;
using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Cli;

/// <summary>The argument and the options that mean the same wherever a recipe is read.</summary>
internal sealed class SharedOptions
{
    private readonly Argument<string> _recipe = new("RECIPE")
    {
        Description = "the recipe, a file ending in .dryfit.yaml",
    };

    private readonly Option<string[]> _set = new("--set")
    {
        HelpName = "NAME=VALUE",
        Description = "a parameter's value for this run, instead of its default; repeat it for more",
    };

    private readonly Option<string?> _shop = new("--shop")
    {
        HelpName = "FILE",
        Description = "your shop's own rules and stock, instead of the built-in ones",
    };

    private readonly Option<string?> _units = new("--units")
    {
        HelpName = "UNIT",
        Description = "write sizes in 'in' or 'mm', whatever the recipe is written in",
    };

    private readonly Option<bool> _json = new("--json") { Description = "results as JSON, for other programs" };

    private readonly Option<bool> _quiet = new("--quiet", "-q") { Description = "print only what is wrong" };

    public SharedOptions()
    {
        _set.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(t => Split(t.Value) is ({ Length: 0 }, _) or (_, { Length: 0 })))
                result.AddError($"--set {token.Value} gives no value: write NAME=VALUE, such as --set width=48.");
        });
        _units.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(t => UnitOf(t.Value) is null))
                result.AddError($"--units knows 'in' and 'mm', not '{token.Value}'.");
        });
    }

    /// <summary>Whether results are to be JSON.</summary>
    public bool IsJson(ParseResult parsed) => parsed.GetValue(_json);

    /// <summary>Whether only what is wrong is to be printed.</summary>
    public bool IsQuiet(ParseResult parsed) => parsed.GetValue(_quiet);

    public void AddTo(Command command)
    {
        command.Arguments.Insert(0, _recipe);
        command.Options.Add(_set);
        command.Options.Add(_shop);
        command.Options.Add(_units);
        command.Options.Add(_json);
        command.Options.Add(_quiet);
    }

    /// <summary>What the command line asks of the piece.</summary>
    public Request Read(ParseResult parsed) =>
        new(
            parsed.GetRequiredValue(_recipe),
            parsed.GetValue(_shop),
            [.. (parsed.GetValue(_set) ?? []).Select(text => Split(text))],
            parsed.GetValue(_units) is { } unit ? UnitOf(unit) : null
        );

    private static (string Name, string Value) Split(string text)
    {
        var at = text.IndexOf('=', StringComparison.Ordinal);
        return at < 0 ? (text, "") : (text[..at].Trim(), text[(at + 1)..].Trim());
    }

    private static LengthUnit? UnitOf(string word) =>
        word switch
        {
            "in" => LengthUnit.Inch,
            "mm" => LengthUnit.Millimetre,
            _ => null,
        };
}

/// <summary>A piece as the command line asks for it.</summary>
/// <param name="Recipe">The recipe's file, as named.</param>
/// <param name="Shop">The shop file, as named; null for the built-in shop.</param>
/// <param name="Set">Parameters set for this run, in the order given.</param>
/// <param name="Units">The unit sizes are written in; null for the recipe's own.</param>
internal sealed record Request(
    string Recipe,
    string? Shop,
    IReadOnlyList<(string Name, string Value)> Set,
    LengthUnit? Units
)
{
    /// <summary>Whether the recipe's own numbers (<c>as cut</c>) are left out.</summary>
    public bool AsReckoned { get; init; }

    /// <summary>Numbers of a list of the maker's own, tried in place.</summary>
    public IReadOnlyList<CutNumbers> AsListed { get; init; } = [];
}
