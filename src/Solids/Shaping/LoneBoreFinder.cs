using Dryfit.Solids.Exact;

namespace Dryfit.Solids.Shaping;

/// <summary>Parts the cuts of a board into lone bores and the rest. Only what is clear by a margin far above all rounding is
/// called lone, so that the short way gives the same solid as the long one.</summary>
internal sealed class LoneBoreFinder
{
    private readonly Store<Bounds> bounds = new();
    private readonly Store<bool> mayBeLone = new();

    public Store<LoneBore> Lone { get; } = new();

    public List<int> Rest { get; } = [];

    public void Find(Vec3 size, IReadOnlyList<Cut> cuts, double margin)
    {
        Lone.Clear();
        Rest.Clear();
        bounds.Clear();
        mayBeLone.Clear();
        var any = false;
        for (var i = 0; i < cuts.Count; i++)
        {
            var lone = cuts[i] is BoreCut bore && TryEnter(bore, size, margin, out _);
            mayBeLone.Add(lone);
            bounds.Add(cuts[i].Around().Grown(margin));
            any |= lone;
        }

        for (var i = 0; i < cuts.Count; i++)
        {
            if (!any || !mayBeLone[i] || MeetsAnother(i))
            {
                Rest.Add(i);
            }
            else if (TryEnter((BoreCut)cuts[i], size, margin, out var lone))
            {
                lone.Cut = i;
                Lone.Add(lone);
            }
        }
    }

    private bool MeetsAnother(int cut)
    {
        ref var mine = ref bounds[cut];
        for (var i = 0; i < bounds.Count; i++)
        {
            if (i != cut && mine.Touches(in bounds[i]))
            {
                return true;
            }
        }

        return false;
    }

    // Whether the bore goes in through exactly one face of the blank, or through two opposite ones, all around.
    private static bool TryEnter(BoreCut bore, Vec3 size, double margin, out LoneBore lone)
    {
        lone = default;
        var frame = bore.Frame;
        if (
            bore.Segments < 3
            || !(bore.Radius > margin)
            || !(bore.Depth > margin)
            || Vec3.Dot(Vec3.Cross(frame.U, frame.V), frame.W) < 0.5
        )
        {
            return false;
        }

        // The one axis along which it reaches out of the blank.
        var axis = -1;
        var around = bore.Around();
        for (var other = 0; other < 3; other++)
        {
            if (!(around.Min(other) > margin && around.Max(other) < size.At(other) - margin))
            {
                axis = axis < 0 ? other : 3;
            }
        }

        return axis is >= 0 and < 3 && TryEnter(bore, size.At(axis), axis, margin, out lone);
    }

    private static bool TryEnter(BoreCut bore, double size, int axis, double margin, out LoneBore lone)
    {
        var frame = bore.Frame;
        var (w, o) = (frame.W.At(axis), frame.Origin.At(axis));
        lone = new()
        {
            Bore = bore,
            Round = RoundTable.Of(bore.Segments),
            Axis = axis,
            LowFace = w > 0 ? 0 : size,
            HighFace = w > 0 ? size : 0,
        };

        // How far the ends lie to either side of their middle along the axis.
        var reach = bore.Radius * Math.Sqrt(Math.Max(0, 1 - (w * w)));
        var isFlat = BodyTable.IsAxial(in frame);
        var (low, high) = (o, o + (w * bore.Depth));
        if (w < 0)
        {
            (low, high) = (size - low, size - high);
        }

        // Now both run upwards from the face where the bore may start, at 0, to the one where it may end, at size.
        var slack = isFlat ? 0 : reach + margin;
        if (Math.Abs(w) < 0.2)
        {
            return false;
        }

        lone.IsLowMouth = low <= -slack;
        lone.IsHighMouth = high >= size + slack;
        var isLowInside = low >= slack + margin && low <= size - slack - margin;
        var isHighInside = high >= slack + margin && high <= size - slack - margin;
        return (lone.IsLowMouth && (lone.IsHighMouth || isHighInside)) || (lone.IsHighMouth && isLowInside);
    }
}
