using Dryfit.Casework.Boards;
using Dryfit.Casework.Own;
using Dryfit.Casework.Room;
using Dryfit.Casework.Worktops;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>The whole recipe: the root of the checker, the JSON Schema and the reference page.</summary>
public static class RecipeWord
{
    private static RecordShape Accept { get; } =
        new(
            "accept",
            "A finding the maker knows of and accepts, by its id; it still prints, as accepted.",
            "accept:\n  - { finding: joint-open, parts: left door top rail, because: filled with a slip }\n",
            () =>
                [
                    new(
                        "finding",
                        new TextShape(),
                        "The id of the finding, as it is printed with it; [all of them](findings.md).",
                        Required: true
                    ),
                    new("parts", new TextShape(), "A phrase that names the parts it is accepted for.", Default: "all"),
                    new("because", new TextShape(), "The reason.", Required: true),
                ]
        );

    public static RecordShape Shape { get; } =
        new(
            "recipe",
            "A piece of furniture, said as briefly as a maker would say it. What the trade does by habit comes from the shop file.",
            "piece: Hall cupboard\nunits: mm\nmaterials: { body: birch plywood 18 }\ncarcases:\n  cupboard:\n    size: [800, 900, 350]\n    front: { doors: slab pair }\n",
            () =>
                [
                    new("piece", new TextShape(), "What the piece is called.", Required: true),
                    new("note", new TextShape(), "A line about it, for the papers."),
                    new(
                        "units",
                        new ChoiceShape("in", "mm") { TakesNames = false },
                        "The unit of bare numbers, and of everything written.",
                        Required: true
                    ),
                    new(
                        "show",
                        new LengthShape(LengthSign.AboveZero),
                        "The finest step shown; sizes stay exact.",
                        Default: "1/64 in or 0.1 mm"
                    ),
                    new(
                        "parameters",
                        ParameterSection.Shape,
                        "Sizes and numbers with names, for formulas and for trying out."
                    ),
                    new("materials", MaterialWord.Shape, "What it is made of.", Required: true),
                    new("room", RoomWord.Shape, "The spaces between walls that it must go into."),
                    new(
                        "words",
                        OwnWord.Words,
                        "The maker's own words: each name with its file, from the recipe's folder; or the folder they all lie in."
                    ),
                    new("carcases", OwnWord.OrUse(CarcaseWord.Shape), "The boxes it is made of."),
                    new(
                        "hardware",
                        HardwareWord.Word,
                        "Which hinges, slides and fittings are used.",
                        Default: "by the house rules"
                    ),
                    new("worktops", WorktopWord.Shape, "Tops over runs of carcases."),
                    new("kept", KeptWord.Shape, "Old carcases that stay."),
                    new(
                        "boards",
                        OwnWord.OrUse(BoardWord.Shape),
                        "Single boards with their own cuts, for all that has no word of its own."
                    ),
                    new("trim", TrimWord.Shape, "Strips that hide a gap between two carcases on purpose."),
                    new("as cut", OverruleWords.CutShape, "The maker's own numbers for parts that are cut already."),
                    new("as measured", OverruleWords.MeasuredShape, "What was measured of what stands already."),
                    new(
                        "finishes",
                        new NamedShape(new NamedShape(new TextShape(), "phrase that names parts"), "finish"),
                        "Named finishes: which parts get what. A part is named by `all`, `fronts`, `inside`, a material or a phrase of its name; where several fit, the longest counts. The parts lists tell them."
                    ),
                    new("accept", new ListShape(Accept), "Findings the maker knows of and accepts."),
                ]
        );
}
