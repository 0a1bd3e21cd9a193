using Dryfit.Casework.Building;
using Dryfit.Casework.Own;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>All boards of the recipe: each with its fellow at the other end and the rest of its row.</summary>
internal static class BoardCopies
{
    /// <summary>More loose boards than any piece has; each may be told from any other.</summary>
    private const int Most = 1000;

    public static IReadOnlyList<BoardPlan> Read(Written written, Scope scope, Materials materials)
    {
        var plans = new List<BoardPlan>();
        foreach (var entry in (written.Recipe["boards"] as Mapping)?.Entries ?? [])
        {
            if (entry.Value is not Mapping said)
                continue;
            var unit = written.Units.GetValueOrDefault(entry.Key);
            foreach (var (name, one) in Pair(unit?.Local ?? entry.Key, said, scope))
            {
                var plan = BoardWord.Read(name, new Fields(one, scope), entry.KeyPlace, materials) with { Unit = unit };
                plans.AddRange(Row(plan));
                if (plans.Count > Most)
                    throw new CannotBuildException(
                        new InputError($"There are more than {Most} loose boards.", entry.KeyPlace, "fewer boards")
                    );
            }
        }
        return plans;
    }

    private static IEnumerable<(string Name, Mapping Said)> Pair(string name, Mapping said, Scope scope)
    {
        if (!new Fields(said, scope).YesNo("mirrored"))
            return [(name, said)];
        var other = (Mapping)Mirror.Of(said, scope);
        var mirrored = Mirror.Of(name);
        if (mirrored != name)
            return [(name, said), (mirrored, other)];
        return (said["left"] is not null, said["right"] is not null) switch
        {
            (true, false) => [($"left {name}", said), ($"right {name}", other)],
            (false, true) => [($"right {name}", said), ($"left {name}", other)],
            _ => throw new CannotBuildException(
                new InputError(
                    $"Which end the {name} is at cannot be told, so neither can its fellow's.",
                    said["mirrored"]!.Place,
                    "either left: or right: for the board"
                )
            ),
        };
    }

    private static IEnumerable<BoardPlan> Row(BoardPlan plan) =>
        plan.Repeat is not { } row
            ? [plan]
            : Enumerable
                .Range(0, row.Times)
                .Select(n =>
                    plan with
                    {
                        Local = string.Create(
                            System.Globalization.CultureInfo.InvariantCulture,
                            $"{plan.Local} {n + 1}"
                        ),
                        Number = n,
                    }
                );
}
