using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>One hole or slot for a fastening in one part, as its solid was cut.</summary>
/// <param name="Index">Its place among the cuts of the part.</param>
internal sealed record Bored(Part Part, int Index, Hollow Hollow)
{
    public PartCut Cut => Part.Cuts[Index];

    /// <summary>The round hole in the solid; null for a slot.</summary>
    public BoreCut? Round => Part.Solid.Cuts[Index] as BoreCut;

    /// <summary>Which way it goes in, where it is round.</summary>
    public Vec3 Into => Round?.Frame.W ?? default;

    /// <summary>The holes and slots of a part that took something away from it.</summary>
    public static IReadOnlyList<Bored> In(Part part)
    {
        if (part.IsKept || !part.Cuts.Any(IsBored))
            return [];
        var cuts = part.Solid.Cuts;
        var left = new bool[part.Cuts.Count];
        foreach (var face in part.Solid.Faces)
        {
            if (face.Cut >= 0 && face.Cut < left.Length)
                left[face.Cut] = true;
        }
        var blank = new Box(default, part.Solid.Size);
        var bored = new List<Bored>();
        for (var n = 0; n < part.Cuts.Count; n++)
        {
            if (!left[n] || !IsBored(part.Cuts[n]))
                continue;
            if (cuts[n] is BoreCut bore)
                bored.Add(new(part, n, new RoundHollow(bore)));
            else if (cuts[n] is BoxCut box && Within(box, blank) is { } slot)
                bored.Add(new(part, n, new SquareHollow(slot)));
        }
        return bored;
    }

    private static bool IsBored(PartCut cut) => cut is RoundCut || cut.Kind is CutKind.BiscuitSlot;

    private static Box? Within(BoxCut cut, Box blank)
    {
        var min = new Vec3(
            Math.Max(cut.Min.X, blank.Min.X),
            Math.Max(cut.Min.Y, blank.Min.Y),
            Math.Max(cut.Min.Z, blank.Min.Z)
        );
        var max = new Vec3(
            Math.Min(cut.Max.X, blank.Max.X),
            Math.Min(cut.Max.Y, blank.Max.Y),
            Math.Min(cut.Max.Z, blank.Max.Z)
        );
        return min.X < max.X && min.Y < max.Y && min.Z < max.Z ? new(min, max) : null;
    }
}
