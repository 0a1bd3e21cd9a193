using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Corners;

/// <summary><c>canted:</c> the open end of a run with its front corner cut off.</summary>
internal static class CantedWord
{
    public static RecordShape Word { get; } =
        new(
            "canted",
            "The open end of a run: fixed shelves between bottom and top, carried by one side and the back, with the front corner of the free end cut off so that nobody runs into it.",
            "canted: { end: right, across: 200, deep: 150 }",
            () =>
                [
                    new("end", new ChoiceShape("right", "left"), "The free end.", Default: "right"),
                    new(
                        "across",
                        new LengthShape(LengthSign.AboveZero),
                        "How much of the front is cut off.",
                        Required: true
                    ),
                    new(
                        "deep",
                        new LengthShape(LengthSign.AboveZero),
                        "How much of the end is cut off, from front to back.",
                        Default: "as much as across, at 45 degrees"
                    ),
                ]
        );

    public static CantedPlan? Read(Fields carcase, CarcasePlan plan)
    {
        if (carcase.Map("canted") is not { } fields)
            return null;
        foreach (
            var key in (ReadOnlySpan<string>)
                [
                    "front",
                    "face frame",
                    "stands on",
                    "hangs on",
                    "top",
                    "head",
                    "blind",
                    "filler",
                    "faced",
                    "scribes",
                    "floor scribe",
                    "diagonal",
                ]
        )
        {
            if (carcase.Has(key) && carcase.Text(key) != "none")
                throw Refused($"An end with a canted corner has no '{key}'.", carcase.PlaceOf(key), $"no {key}");
        }
        if (plan.IsCovered || plan.Back is null || plan.Shelves is { Adjustable.Count: > 0 })
            throw Refused(
                plan.IsCovered ? "A worktop over a run would stand over the canted corner."
                    : plan.Back is null ? "The back carries the shelves of an open end, and there is none."
                    : "Loose shelves want a side at both ends, and the canted end has none.",
                fields.Place,
                plan.IsCovered ? "a worktop that ends before it"
                    : plan.Back is null ? "a back"
                    : "shelves: { fixed: 2 }"
            );
        var across = fields.Length("across", "cant across");
        var deep = fields.LengthOrNull("deep", "cant deep") ?? across;
        if (
            across.Length >= plan.Width.Length - (plan.Body.Thickness.Length * 2)
            || deep.Length >= plan.Depth.Length - plan.Back.Material.Thickness.Length - plan.Body.Thickness.Length
        )
            throw Refused(
                "The cant takes all of the front or all of the end.",
                fields.Place,
                "less of it, so that the shelves keep an edge on both"
            );
        return new(fields.Text("end") != "left", across, deep);
    }

    private static CannotBuildException Refused(string message, SourcePlace place, string wanted) =>
        new(new InputError(message, place, wanted));
}
