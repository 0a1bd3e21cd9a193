namespace Dryfit.Cli;

/// <summary>The help of the program as a whole.</summary>
internal static class RootHelp
{
    public static HelpPage Page { get; } =
        new(
            "Dryfit reads a short recipe of a cabinet or a piece of furniture, builds it in solid parts, measures how "
                + "those parts really meet, and tells what is wrong while the timber is still in the rack.",
            [
                new("dryfit new", "The starters there are."),
                new("dryfit new studio-cupboard mine.dryfit.yaml", "A recipe of your own to change."),
                new("dryfit build mine.dryfit.yaml --out mine", "Everything, into the folder 'mine'."),
                new("dryfit check mine.dryfit.yaml --set width=48", "Would it still fit at 48?"),
                new("dryfit why mine.dryfit.yaml upper left door top rail", "The sum behind a number."),
            ],
            [
                new(
                    "more help:",
                    [
                        ("dryfit COMMAND --help", "all about a command"),
                        ("dryfit help recipe", "the recipe, word by word"),
                        ("dryfit help own-words", "words of your own, in files beside the recipe"),
                        ("dryfit help shop", "the shop file, rule by rule"),
                    ]
                ),
                new(
                    "exit codes:",
                    [
                        ("0", "fine"),
                        ("1", "a finding says not to cut"),
                        ("2", "the command line is wrong"),
                        ("3", "the recipe or the shop file is wrong"),
                        ("4", "a file could not be read or written"),
                        ("70", "an internal error, which is our fault"),
                    ]
                ),
                new("environment:", [("NO_COLOR", "set to anything: no colours")]),
            ]
        );
}
