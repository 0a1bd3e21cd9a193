using Dryfit.Casework.Boards;
using Dryfit.Casework.Words;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Own;

/// <summary>The file of a maker's own word, and how a recipe uses it.</summary>
public static class OwnWord
{
    /// <summary>How the files of own words end where only their folder is named.</summary>
    public const string Ending = ".dryfit-word.yaml";

    /// <summary>The whole file: the root of its checker, its JSON Schema and its reference page.</summary>
    public static RecordShape Shape { get; } =
        new(
            "own word",
            "A word of the maker's own, in a file beside the recipe: boards, carcases or a division of a front, with parameters.",
            "word: peg rail\nunits: mm\nparameters:\n  at: { is: name }\n  pegs: { default: 5, is: count }\nboards:\n  rail: { lies: on edge, length: 600, width: 80, back: screwed to at, top: flush with at, centred on: at }\n",
            () =>
                [
                    new("word", new TextShape(), "What the word is called.", Required: true),
                    new("note", new TextShape(), "A line about it."),
                    new(
                        "units",
                        new ChoiceShape("in", "mm") { TakesNames = false },
                        "The unit of bare numbers in this file.",
                        Required: true
                    ),
                    new(
                        "parameters",
                        ParameterSection.OwnShape,
                        "What it may be told where it is used. Its formulas know these and the sizes of its own carcases, nothing else of the recipe."
                    ),
                    new("carcases", OrUse(CarcaseWord.Shape), "Carcases; one alone goes by the name of the use."),
                    new("boards", OrUse(BoardWord.Shape), "Loose boards; their names begin with that of the use."),
                    new("front", RegionWord.Word, "What a front, or one region of it, is divided into."),
                ]
        );

    /// <summary>How an own word stands in the place of a board, a carcase or a region.</summary>
    internal static RecordShape Use { get; } =
        new(
            "use",
            "An own word in the place of a carcase, a board or a region of a front.",
            "left rack: { use: spice rack, width: 300, at: cupboard left side }",
            () => [new("use", new TextShape(), "The own word, by its name under `words`.", Required: true)]
        )
        {
            FurtherKeys =
                "The parameters of the word with their values; for a carcase also where it stands, for a region its size.",
        };

    /// <summary>Carcases or boards, or own words that stand for some.</summary>
    internal static NamedShape OrUse(NamedShape named) => named with { Item = new EitherShape(named.Item, Use) };

    /// <summary>The recipe's <c>words:</c>.</summary>
    internal static EitherShape Words { get; } = new(new TextShape(), new NamedShape(new TextShape(), "own word"));
}
