using System.CommandLine;
using System.Text;

namespace Dryfit.Cli;

/// <summary>All commands with their help.</summary>
internal sealed class CommandMenu
{
    private readonly Dictionary<Command, HelpPage> _pages = [];
    private readonly Option<bool> _help = new("--help", "-h", "-?") { Description = "this help", Recursive = true };
    private readonly Option<bool> _version = new("--version") { Description = "the version" };
    private readonly Command _helpCommand = new("help", "the help of a command") { Hidden = true };
    private readonly Argument<string?> _helpOf = new("COMMAND") { Arity = ArgumentArity.ZeroOrOne };

    public CommandMenu(Surroundings surroundings)
    {
        Root = new RootCommand("sees a cabinet's mistakes before the saw does");
        // The library's own help, version and directives give way to ours.
        Root.Options.Clear();
        Root.Directives.Clear();
        Root.Options.Add(_help);
        Root.Options.Add(_version);
        Add(NewCommand.Make(surroundings));
        Add(BuildCommand.Make(surroundings));
        Add(CheckCommand.Make(surroundings));
        Add(WhyCommand.Make(surroundings));
        Add(ReadCommand.Make(surroundings));
        Add(SurveyCommand.Make(surroundings));
        _helpCommand.Arguments.Add(_helpOf);
        Root.Subcommands.Add(_helpCommand);
        _pages[Root] = RootHelp.Page;
    }

    public RootCommand Root { get; }

    public HelpPage PageOf(Command command) => _pages.GetValueOrDefault(command, RootHelp.Page);

    /// <summary>The reference page that <c>help recipe</c>, <c>help shop</c> or <c>help own-words</c> asks for; null for anything else.</summary>
    public string? AskedForReference(ParseResult parsed) =>
        parsed.CommandResult.Command == _helpCommand && parsed.GetValue(_helpOf) is "recipe" or "shop" or "own-words"
            ? Encoding.UTF8.GetString(Resources.Read($"reference/{parsed.GetValue(_helpOf)}.md"))
            : null;

    /// <summary>The command whose help is asked for, by an option, by <c>help</c>, or by saying nothing at all.</summary>
    public Command? AskedForHelp(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        if (command == _helpCommand)
        {
            var of = parsed.GetValue(_helpOf);
            return of is null ? Root : Root.Subcommands.FirstOrDefault(c => c.Name == of && !c.Hidden) ?? Root;
        }
        if (parsed.GetResult(_help) is { Implicit: false })
            return command;
        return parsed.Tokens.Count == 0 ? Root : null;
    }

    public bool AskedForVersion(ParseResult parsed) => parsed.GetResult(_version) is { Implicit: false };

    private void Add((Command Command, HelpPage Page) entry)
    {
        Root.Subcommands.Add(entry.Command);
        _pages[entry.Command] = entry.Page;
    }
}
