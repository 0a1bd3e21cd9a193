namespace Dryfit.Casework.Words;

/// <summary>The chapter of the reference page that says what parts are called, and how a phrase names them.</summary>
public static class NamesChapter
{
    public const string Text = """
        ## Names of parts

        Parts, openings and units get their names from where they are, as a maker would say it: the carcase, the bay where
        there is more than one of the kind, then the part: `upper left door top rail`, `base drawer 2 front`,
        `base left bay opening`. The parts list and the cut list show them all.

        Bays are counted from the left: one has no name, two are `left bay` and `right bay`, three `left bay`, `middle bay`
        and `right bay`, more `bay 1`, `bay 2` and so on. Drawers are counted from the top of their bay, shelves from the
        bottom.

        Where a recipe or a command names parts, any phrase will do whose words all stand in the name, in any order, plural
        or not: `left upper door rails` means the top and the bottom rail of the upper left door, `shelves` every shelf. A
        phrase that fits the name of a whole door or drawer, such as `upper left door`, means that unit.

        Sizes of a carcase can be used in formulas: `base.width`, `base.height`, `base.depth`, and the same for kept
        carcases. Spaces and hyphens in its name become `_` there: `left_wing.width`.

        Parts have a length along the grain, a width across it and a thickness. Coordinates run to the right, to the back
        and up, from the left front lower corner of the first carcase; with `at` another point may be the origin. Kept
        carcases count before new ones: where nothing else is said, a carcase stands right of the one before it, the first
        new one right of the last kept one.

        """;
}
