namespace Dryfit.Casework.Own;

/// <summary>The chapter that says how own words are made and used.</summary>
public static class OwnWordsChapter
{
    public const string Text = """
        ## How it goes

        The recipe says where its words are: `words: words` for a folder in which the word `jar rack` is the file
        `jar-rack.dryfit-word.yaml`, or name by name:

            words: { jar rack: words/jars.dryfit-word.yaml }

        A word is then used where a carcase, a board or a region of a front may stand, with values for its parameters:

            boards:
              left rack: { use: jar rack, left: base left side, right: base partition 1, above: base bottom, height: 200 }
            carcases:
              tower: { use: tall tower, width: 420, right of: base }
              base: { size: [900, 900, 500], front: { columns: [ { use: tray bank, trays: 3 }, { doors: slab } ] } }

        - The names of its boards begin with the name of the use: `left rack shelf`. So do those of its carcases, but a
          carcase alone goes by the name of the use, as does its size in formulas: `tower.width`.
        - A parameter that `is: name` takes the name of a material, part, board or carcase, and may stand wherever one may:
          `left: dadoed into left`. A parameter with words for choices may stand wherever one of several words may.
        - Its formulas know its own parameters and the sizes of its own carcases. Materials are the recipe's.
        - A word may use words of the same recipe, up to eight deep, never itself.
        - Files lie in the recipe's folder or below it: no path leads out of it, and links are not followed.
        - What is wrong in a file is told at its line there, and where it is used. `why` tells both as well.

        """;
}
