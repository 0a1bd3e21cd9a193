using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Own;

/// <summary>A maker's own words, used as if they were built in.</summary>
public sealed class OwnWordTests
{
    private const string Cleat = """
        word: cleat
        units: mm
        parameters:
          side: { is: name }
          from: { is: name }
          rise: { default: 100 }
          stuff: { default: body, is: name }
        boards:
          strip: { lies: "on edge, facing right", material: stuff, length: 200, width: 30, left: screwed to side, front: flush with side, bottom: rise above from }
        """;

    private const string Tower = """
        word: tower
        units: mm
        parameters: { width: { default: 400, from: 300, to: 600 } }
        carcases:
          box: { size: [width, width * 2, 300], back: planted }
        boards:
          cap: { length: box.width, width: 300, left: flush with box, front: flush with box, bottom: screwed to box }
        """;

    [Fact]
    public void Boards_of_a_word_begin_with_the_name_of_its_use()
    {
        var piece = Build(
            "boards:\n  left one: { use: cleat, side: box left side, from: box bottom, rise: 150 }\n  upper one: { use: cleat, side: box left side, from: box bottom, rise: 250 }\n",
            ("cleat", Cleat)
        );

        // The bottom is 18 thick.
        piece.StandsAt("left one strip", "18, 0, 168");
        piece.StandsAt("upper one strip", "18, 0, 268");
        Assert.Contains(piece.Groups, g => g is { Name: "left one", Kind: GroupKind.OwnWord });
        piece.MustBeSound();
    }

    [Fact]
    public void Carcase_alone_goes_by_the_name_of_the_use_and_stands_where_that_says()
    {
        var piece = Build(
            "carcases:\n  tall: { use: tower, width: 350, right of: box }\nboards:\n  lid: { length: tall.width, width: 100, left: flush with tall cap, front: flush with tall cap, bottom: glued to tall cap }\n",
            ("tower", Tower)
        );

        // 350 wide, 700 high; beside the box of 600.
        piece.StandsAt("tall left side", "600, 0, 0");
        piece.Measures("tall cap", "350 x 300 x 18");
        piece.Measures("lid", "350 x 100 x 18");
        piece.StandsAt("lid", "600, 0, 718");
        piece.MustBeSound();
    }

    [Fact]
    public void Numbers_of_a_file_are_in_its_own_unit()
    {
        var piece = Build(
            "boards:\n  one: { use: cleat, side: box left side, from: box bottom, rise: 50 }\n",
            (
                "cleat",
                Cleat
                    .Replace("units: mm", "units: in", StringComparison.Ordinal)
                    .Replace("200", "4", StringComparison.Ordinal)
                    .Replace("width: 30", "width: 1", StringComparison.Ordinal)
            )
        );

        // 4 in by 1 in by the file; 50 is said in the recipe, and so in millimetres.
        piece.Measures("one strip", "101.6 x 25.4 x 18");
        piece.StandsAt("one strip", "18, 0, 68");
    }

    [Fact]
    public void Front_of_a_word_divides_a_region()
    {
        var piece = Built.From(
            Metric(
                "base: { size: [900, 600, 400], front: { columns: [ { use: bank, width: 300, trays: 2 }, open ] } }",
                "words: { bank: bank.yaml }\n",
                "boxes: birch plywood 12\nbottoms: birch plywood 6.5\n"
            ),
            new Files(
                (
                    "bank.yaml",
                    "word: bank\nunits: mm\nparameters: { trays: { default: 3, is: count } }\nfront: { rows: { equal: trays, of: drawer } }\n"
                )
            )
        );

        Assert.Equal(2, piece.PartsOf(Role.DrawerFront).Count);
        piece.MustBeSound();
    }

    [Fact]
    public void Word_may_use_a_word_and_name_its_own_parts_to_it()
    {
        const string Pair = """
            word: fitted tower
            units: mm
            carcases:
              shell: { size: [400, 800, 300], back: planted }
            boards:
              hold: { use: cleat, side: shell left side, from: shell bottom }
            """;
        var piece = Build(
            "carcases:\n  tall: { use: fitted tower, right of: box }\n",
            ("fitted tower", Pair),
            ("cleat", Cleat)
        );

        piece.StandsAt("tall hold strip", "618, 0, 118");
        piece.MustBeSound();
    }

    [Fact]
    public void Sizes_remember_the_line_of_the_file_and_where_it_is_used()
    {
        var piece = Build("boards:\n  one: { use: cleat, side: box left side, from: box bottom }\n", ("cleat", Cleat));

        var source = piece.Part("one strip").Source;
        Assert.Equal(("words/cleat.dryfit-word.yaml", 9), (source.File, source.Line));
        Assert.Equal(("test.dryfit.yaml", 10), (source.UsedAt!.File, source.UsedAt.Line));
    }

    [Fact]
    public void Material_of_a_word_may_be_told_where_it_is_used()
    {
        var piece = Build(
            "boards:\n  one: { use: cleat, side: box left side, from: box bottom, stuff: backs }\n",
            ("cleat", Cleat)
        );

        Assert.Equal("backs", piece.Part("one strip").Material.Name);
    }

    [Fact]
    public void Mirrored_board_of_a_word_keeps_the_name_of_the_use()
    {
        const string Rests = """
            word: rests
            units: mm
            parameters: { left: { is: name }, right: { is: name }, from: { is: name } }
            boards:
              rest: { lies: "on edge, facing right", length: 200, width: 30, left: screwed to left, front: flush with left, bottom: 100 above from, mirrored: yes }
            """;
        var piece = Build(
            "boards:\n  left pair: { use: rests, left: box left side, right: box right side, from: box bottom }\n",
            ("rests", Rests)
        );

        piece.StandsAt("left pair left rest", "18, 0, 118");
        piece.StandsAt("left pair right rest", "564, 0, 118");
        piece.MustBeSound();
    }

    private static Piece Build(string rest, params (string Word, string Text)[] words)
    {
        var inCarcases = rest.StartsWith("carcases:\n", StringComparison.Ordinal);
        return Built.From(
            Metric(
                "box: { size: [600, 400, 300], back: planted }"
                    + (inCarcases ? "\n" + rest["carcases:\n".Length..].Split("boards:")[0].Trim() : ""),
                "words: words\n"
                    + (
                        inCarcases
                            ? (
                                rest.Contains("boards:", StringComparison.Ordinal)
                                    ? "boards:" + rest.Split("boards:")[1]
                                    : ""
                            )
                            : rest
                    )
            ),
            new Files([.. words.Select(w => ($"words/{w.Word.Replace(' ', '-')}.dryfit-word.yaml", w.Text))])
        );
    }

    private static string Metric(string carcases, string rest, string materials = "") =>
        Recipes.Metric(carcases, rest, materials);
}
