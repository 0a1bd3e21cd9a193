using System.CommandLine;
using System.CommandLine.Parsing;
using Dryfit.Findings;

namespace Dryfit.Cli;

/// <summary>What is wrong with a command line, and the nearest thing that would have been right.</summary>
internal static class UsageText
{
    public static IReadOnlyList<string> Explain(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        // What is missing or left over is often what was misspelt: then the misspelling is all there is to say.
        var unknown = parsed.UnmatchedTokens.Where(token => token.StartsWith('-')).ToList();
        var stray = unknown.Count > 0 ? unknown : parsed.UnmatchedTokens;
        return stray.Count > 0
            ? [.. stray.Select(token => Stray(token, command))]
            : [.. parsed.Errors.Select(error => Explain(error, command)).Distinct(StringComparer.Ordinal)];
    }

    private static string Stray(string token, Command command)
    {
        var path = HelpWriter.CommandPath(command);
        if (token.StartsWith('-'))
        {
            var name = token.Split('=', 2)[0];
            return $"'{path}' has no option {Excerpt.Quote(name)}.{Meant(name, OptionNames(command, name))}";
        }
        if (command.Subcommands.Count > 0)
        {
            var names = command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name);
            return $"There is no command {Excerpt.Quote(token)}.{Meant(token, names)}";
        }
        return $"'{path}' cannot use {Excerpt.Quote(token)}: it is one argument too many.";
    }

    private static string Explain(ParseError error, Command command)
    {
        var path = HelpWriter.CommandPath(command);
        return error.SymbolResult switch
        {
            OptionResult { Implicit: true, Option: { Required: true } missing } =>
                $"'{path}' needs {missing.Name} {missing.HelpName}, {missing.Description}.",
            OptionResult { Implicit: false, Tokens.Count: 0 } option =>
                $"{option.Option.Name} needs a value: {option.Option.Name} {option.Option.HelpName}.",
            OptionResult { Tokens.Count: > 1, Option: { Arity.MaximumNumberOfValues: 1 } named } =>
                $"{named.Name} is given more than once.",
            ArgumentResult { Tokens.Count: 0, Parent: OptionResult option } =>
                $"{option.Option.Name} needs a value: {option.Option.Name} {option.Option.HelpName}.",
            ArgumentResult { Tokens.Count: 0 } argument => $"'{path}' needs {Article(argument.Argument.Name)}.",
            _ => error.Message,
        };
    }

    private static string Article(string name) => name.StartsWith('R') ? $"a {name}" : name;

    private static string Meant(string written, IEnumerable<string> names) =>
        NearestWord.To(written, names) is { } near ? $" Did you mean '{near}'?" : "";

    private static IEnumerable<string> OptionNames(Command command, string like) =>
        command
            .Options.Concat(command.Parents.OfType<Command>().SelectMany(p => p.Options))
            .SelectMany(o => o.Aliases.Append(o.Name))
            // A long name is a slip of another long one, never of a letter.
            .Where(name =>
                name.StartsWith("--", StringComparison.Ordinal) == like.StartsWith("--", StringComparison.Ordinal)
            );
}
