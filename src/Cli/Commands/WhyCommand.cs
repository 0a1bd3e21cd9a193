using System.CommandLine;

namespace Dryfit.Cli;

/// <summary><c>dryfit why RECIPE PART[.SIZE]</c>: the sum behind a number, as a maker would write it.</summary>
internal static class WhyCommand
{
    private static readonly HelpPage Page = new(
        "Prints how a size of a part, a door, a drawer, a carcase or an opening came about: the sum, the sums behind its "
            + "terms, and for each number the line of the recipe, the parameter or the shop rule that says it. It is named "
            + "by its id or by words of its name; without a size all of them are told, and without a name everything "
            + "there is to ask about is listed.",
        [
            new("dryfit why cupboard.dryfit.yaml", "All parts, units and openings with their ids and sizes."),
            new("dryfit why cupboard.dryfit.yaml upper/left-door/top-rail.length", "One size of one part."),
            new("dryfit why cupboard.dryfit.yaml upper left door top rail", "All its sizes, the part named in words."),
            new("dryfit why cupboard.dryfit.yaml left door", "Width and height of the whole door."),
        ],
        [
            new(
                "sizes:",
                [
                    ("length", "along the grain, tongues and tenons included"),
                    ("width", "across the grain"),
                    ("thickness", "as it really measures"),
                    ("shoulder-length", "between the shoulders, where there are tongues or tenons"),
                    ("finished-length", "with its edging on, where it has some; so finished-width"),
                ]
            ),
        ]
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("why", "the sum behind a number, as a maker would write it");
        var shared = new SharedOptions();
        shared.AddTo(command);
        var part = new Argument<string[]>("PART[.SIZE]")
        {
            Arity = ArgumentArity.ZeroOrMore,
            Description = "the part, and the size of it that is asked about",
        };
        command.Arguments.Add(part);
        command.SetAction(parsed =>
            Run(
                shared.Read(parsed),
                string.Join(' ', parsed.GetValue(part) ?? []).Trim(),
                shared.IsJson(parsed),
                surroundings
            )
        );
        return (command, Page);
    }

    private static int Run(Request request, string asked, bool json, Surroundings surroundings)
    {
        var proved = new Proof(surroundings).Of(request, json, out var code);
        if (proved is null)
            return code;
        var answer = new WhyAnswer(proved.Piece, request.Recipe, surroundings);
        if (asked.Length == 0)
        {
            answer.WriteParts();
            return ExitCode.Fine;
        }
        var (question, trouble) = SizeQuestion.Read(asked, proved.Piece);
        if (question is null)
        {
            surroundings.Error.WriteLine($"{DryfitCommand.Name}: {trouble}");
            return ExitCode.Usage;
        }
        if (json)
            surroundings.Out.WriteLine(WhyJson.Write(question, proved.Piece.Format, request.Recipe));
        else
            answer.Write(question);
        return ExitCode.Fine;
    }
}
