using System.Text;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Documents;
using Scriban.Runtime;

namespace Dryfit.Outputs.Survey;

/// <summary>
/// The sheet to take along when a space between two walls is measured: what to read, where, and the lines of the recipe
/// that the readings go into.
/// </summary>
public static class SurveyHtml
{
    private const string TemplateName = "survey.html";

    /// <param name="unit">The unit of the maker's tape.</param>
    /// <param name="template">A template of the maker's own, or null for the one that comes with the tool.</param>
    /// <returns>The file <c>survey.html</c>, or what is wrong with the template and where.</returns>
    public static Result<OutputFile> Write(LengthUnit unit, DocumentTemplate? template = null)
    {
        var page = (template ?? DocumentTemplate.BuiltIn(TemplateName)).Fill(Model(unit));
        return page.Value is { } html
            ? new(new OutputFile(TemplateName, Encoding.UTF8.GetBytes(html)), [])
            : new(null, page.Errors);
    }

    private static ScriptObject Model(LengthUnit unit)
    {
        var inches = unit == LengthUnit.Inch;
        string[] heights = inches ? ["0", "6", "36", "72", "96"] : ["0", "150", "900", "1800", "2400"];
        string[] ways = inches ? ["0", "24", "48", "72"] : ["0", "600", "1200", "1800"];
        return new(StringComparer.Ordinal)
        {
            ["unit"] = inches ? "in" : "mm",
            ["unit_name"] = inches ? "inches" : "millimetres",
            ["rows"] = new ScriptArray
            {
                Row(
                    "A",
                    "Width from wall to wall",
                    "at several heights, up to over the top of the piece; in front and behind, and write the smaller",
                    [.. heights.Select(h => $"at {h}"), "at"]
                ),
                Row(
                    "B",
                    "Left wall against a plumb line",
                    "how far the wall leans in at a height, measured from its foot; with a minus where it leans away",
                    [.. heights.Skip(2).Select(h => $"at {h}"), "at"]
                ),
                Row(
                    "C",
                    "Floor against a level line",
                    "how high the floor lies at a distance from the left wall",
                    [.. ways.Select(w => $"at {w}"), "at right wall"]
                ),
                Row(
                    "D",
                    "Ceiling over the highest place of the floor",
                    "at a distance from the left wall, where the piece or a strip on it goes up to it",
                    [.. ways.Select(w => $"at {w}"), "at right wall"]
                ),
                Row(
                    "E",
                    "Depth to the wall behind",
                    "left, middle and right; write the smallest below",
                    ["left", "middle", "right"]
                ),
                Row("F", "Skirting", "height from the floor, thickness off the wall", ["height", "thickness"]),
                Row(
                    "G",
                    "What is on the walls",
                    "sockets, pipes, radiators, vents: which wall, along, height, width, height of it, how far out",
                    ["wall", "along", "height", "width", "tall", "out"]
                ),
                Row(
                    "H",
                    "The way in",
                    "the narrowest door, the lowest ceiling on the way, the turn of the stairs",
                    ["door wide", "door high", "ceiling", "stairs"]
                ),
            },
            ["recipe_lines"] = new ScriptArray
            {
                "as measured:",
                "  alcove:   # its name under room:",
                $"    widths: [{Pairs(heights)}]",
                $"    left wall: [{Pairs([heights[0], heights[2], heights[3]])}]",
                $"    floor: [{Pairs([ways[0], ways[2]])}, [____, ____]]",
                $"    ceiling: [{Pairs([ways[0], ways[2]])}, [____, ____]]",
                "    depth: ____",
            },
        };
    }

    private static string Pairs(IEnumerable<string> places) => string.Join(", ", places.Select(p => $"[{p}, ____]"));

    private static ScriptObject Row(string letter, string what, string how, IEnumerable<string> boxes) =>
        new(StringComparer.Ordinal)
        {
            ["letter"] = letter,
            ["what"] = what,
            ["how"] = how,
            ["boxes"] = new ScriptArray(boxes),
        };
}
