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
            "The end of a run with its front corner cut off, so that nobody runs into it: fixed shelves between bottom and top, open to the front and the end, or closed by a panel along the cant.",
            "canted: { end: right, across: 200, deep: 150, closed: yes }",
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
                    new(
                        "closed",
                        new YesNoShape(),
                        "Whether a panel stands along the cant, mitred flush with the front and the end, and a short side behind it; the front stays open.",
                        Default: "no: the boards are seen from the end"
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
        var canted = new CantedPlan(fields.Text("end") != "left", across, deep, fields.YesNo("closed"));
        if (canted.IsClosed)
            RefuseNoEnd(fields, plan, canted);
        return canted;
    }

    /// <summary>Behind the panel a side must be left to joint the boards into, and before it a front.</summary>
    private static void RefuseNoEnd(Fields fields, CarcasePlan plan, CantedPlan canted)
    {
        var shape = new CantedShape(plan.Envelope, canted, plan.Body.Thickness);
        var least = plan.Body.Thickness.Length * 3;
        if (
            shape.BehindAcross.Length + least > plan.Width.Length
            || shape.BehindDeep.Length + least > plan.Depth.Length - plan.Back!.Material.Thickness.Length
        )
            throw Refused(
                "The panel along the cant leaves no front, or no side behind it.",
                fields.Place,
                "less of a cant, or a larger end"
            );
    }

    private static CannotBuildException Refused(string message, SourcePlace place, string wanted) =>
        new(new InputError(message, place, wanted));
}
