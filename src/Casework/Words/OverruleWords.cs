using Dryfit.Casework.Room;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>as cut:</c> and <c>as measured:</c>: what really came out, in place of what was reckoned.</summary>
internal static class OverruleWords
{
    public static RecordShape Cut { get; } =
        new(
            "as cut",
            "The maker's own numbers for the parts or the unit that a phrase names: every part whose name holds all of its words, or a whole door or drawer. What is not named keeps its reckoned size; a door or a drawer box is put together from what is really there.",
            "as cut:\n  left upper door rails: { length: 8 1/8 }\n",
            () =>
                [
                    new("length", new LengthShape(LengthSign.AboveZero), "Along the grain, tongues included."),
                    new(
                        "width",
                        new LengthShape(LengthSign.AboveZero),
                        "Across the grain; of a door or front, from left to right."
                    ),
                    new("thickness", new LengthShape(LengthSign.AboveZero), "As it came out of the planer."),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "Of a whole door or front, from bottom to top."
                    ),
                ]
        );

    private static EitherShape OneOrTwo { get; } =
        new(new LengthShape(LengthSign.AboveZero), new ListShape(new LengthShape(LengthSign.AboveZero), 2, 2));

    public static RecordShape Measured { get; } =
        new(
            "as measured",
            "What was measured of an opening, a carcase or a space between walls: parts that are not yet cut are sized from it. A phrase that fits several openings is said of them all. Width and height are for openings and carcases; widths, left wall and floor for a space of the `room`. Warp and diagonals are for a door that is made already: its gaps are judged by them.",
            "as measured:\n  upper left bay opening: { width: [15 1/8, 15] }\n",
            () =>
                [
                    new("width", OneOrTwo, "One number, or two: at the bottom and at the top."),
                    new("height", OneOrTwo, "One number, or two: at the left and at the right."),
                    new("depth", new LengthShape(LengthSign.AboveZero), "Of a carcase, or of a space between walls."),
                    new(
                        "warp",
                        new LengthShape(LengthSign.Any),
                        "Of a door: how far the upper corner of its lock edge stands off the plane of the three others, above zero towards the room."
                    ),
                    new(
                        "diagonals",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 2, 2),
                        "Of a door: from its bottom left corner to the top right, and from the bottom right to the top left."
                    ),
                    .. RoomWord.Measurements.Where(field => field.Key != "depth"),
                ]
        );

    public static NamedShape CutShape { get; } = new(Cut, "part or unit");

    public static NamedShape MeasuredShape { get; } = new(Measured, "opening, carcase, door or space");
}
