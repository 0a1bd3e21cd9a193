namespace Dryfit.Casework.Boards;

/// <summary>The chapter of the reference page that says how loose boards are placed.</summary>
public static class BoardsChapter
{
    public const string Text = """
        ## Loose boards

        What has no word of its own is a board under `boards:`. Its six sides are called `left`, `right`, `front`, `back`,
        `bottom` and `top` as the board lies in the piece. Each way (left and right, front and back, up and down) one of its
        sides says where the board is; where both are said and the size is not, the board is as large as what lies between.

        A side **meets** something and is joined to it:

        | said | joint |
        |---|---|
        | `dadoed 8 into base left side` | let in 8 deep, glued; the other is cut for it. `grooved`, `rabbeted` the same; without a depth the shop's |
        | `loose 6 into left stile` | let into a groove with room to move, not glued |
        | `glued to base back` | face to face, glued |
        | `screwed to base back` | face to face, screwed |
        | `pocket screwed to base left side` | an end or edge, by slanted screws from the reverse face |
        | `dowelled to base left side` | an end or edge, by dowels; both are bored. `biscuited to` the same with biscuits |
        | `screwed and plugged to left post` | an end or edge, by screws from the far side of the other, their heads under plugs |
        | `tenoned 30 into left post` | a tenon of that length in a mortise; without a length two thirds of the other |
        | `resting on base`, `against base back` | touches, is not fixed |

        `without glue` or `with glue` at the end says what the joint does not say by itself. Several are a list:
        `bottom: [screwed to left end, screwed to right end]`; the first gives the place. What else the board lies against is
        said under `joined:`.

        Or a side **stands off** something: `20 behind front of base left side`, `80 below top of base`,
        `3 1/2 right of left post`, `flush with base`, `at 0` (from the left front lower corner of the piece). The ways are
        `above`, `below`, `behind`, `in front of` (or `before`), `left of` and `right of`. What is meant is the nearest face:
        `above base` counts from its top, `right of left post` from its right; `front of`, `left of` and so on before a name
        say another. The distance may be a formula.

        Names are those of parts, boards and carcases, or words that only one part has; `floor` is the floor.

        `mirrored: yes` makes a second board at the other end with left for right in all that is said: `left: screwed to base
        left side` becomes `right: screwed to base right side`.

        The sides in `cuts:` are the board's own as it lies, and places are measured from them: `back 10` is 10 from its back.

        """;
}
