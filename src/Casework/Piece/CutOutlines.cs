using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>Small questions about the outlines of cuts.</summary>
public static class CutOutlines
{
    /// <summary>The two axes that an outline lies on, by the axis along which it is swept.</summary>
    public static (Axis First, Axis Second) AxesOf(Axis along) =>
        ((Axis)(((int)along + 1) % 3), (Axis)(((int)along + 2) % 3));

    /// <summary>The same outline walked the other way round.</summary>
    public static IReadOnlyList<OutlineCorner> Reversed(IReadOnlyList<OutlineCorner> outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var reversed = new OutlineCorner[outline.Count];
        for (var i = 0; i < reversed.Length; i++)
        {
            // The side that led here now leads away from here, and bends the other way.
            var at = outline.Count - 1 - i;
            var led = outline[(at + outline.Count - 1) % outline.Count].Arc;
            reversed[i] = outline[at] with { Arc = led is null ? null : led with { Clockwise = !led.Clockwise } };
        }
        return reversed;
    }

    /// <summary>The outline, walked counter-clockwise.</summary>
    public static IReadOnlyList<OutlineCorner> CounterClockwise(IReadOnlyList<OutlineCorner> outline) =>
        AreaMm2(outline) < 0 ? Reversed(outline) : outline;

    /// <summary>The outline carried to other axes.</summary>
    /// <param name="carry">Where a point goes: turned, moved or mirrored, with all distances kept.</param>
    public static IReadOnlyList<OutlineCorner> Carried(
        IReadOnlyList<OutlineCorner> outline,
        Func<Length, Length, (Length A, Length B)> carry
    )
    {
        ArgumentNullException.ThrowIfNull(carry);
        var (zero, one) = (Length.Zero, Length.FromMillimetres(1));
        var (origin, right, up) = (carry(zero, zero), carry(one, zero), carry(zero, one));
        var turn =
            ((right.A - origin.A).Millimetres * (up.B - origin.B).Millimetres)
            - ((right.B - origin.B).Millimetres * (up.A - origin.A).Millimetres);
        return
        [
            .. outline.Select(corner =>
            {
                OutlineCorner carried = carry(corner.A, corner.B);
                if (corner.Arc is not { } arc)
                    return carried;
                var centre = carry(arc.A, arc.B);
                return carried with { Arc = new(centre.A, centre.B, arc.Clockwise != turn.Sign < 0) };
            }),
        ];
    }

    /// <summary>The area within, arcs taken true; below zero where the outline is walked clockwise.</summary>
    public static double AreaMm2(IReadOnlyList<OutlineCorner> outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var twice = 0.0;
        for (var i = 0; i < outline.Count; i++)
        {
            var (from, to) = (outline[i], outline[(i + 1) % outline.Count]);
            var (fromA, fromB) = (from.A.ToMillimetres(), from.B.ToMillimetres());
            var (toA, toB) = (to.A.ToMillimetres(), to.B.ToMillimetres());
            twice += (fromA * toB) - (fromB * toA);
            if (from.Arc is not { } arc)
                continue;
            var (a, b) = (fromA - arc.A.ToMillimetres(), fromB - arc.B.ToMillimetres());
            var angle = AngleOf(from, to, arc);
            twice += ((a * a) + (b * b)) * (angle - Math.Sin(angle)) * (arc.Clockwise ? -1 : 1);
        }
        return twice / 2;
    }

    /// <summary>How far a round side goes about its centre: radians, above 0 and up to a whole turn.</summary>
    public static double AngleOf(OutlineCorner from, OutlineCorner to, OutlineArc arc)
    {
        ArgumentNullException.ThrowIfNull(arc);
        var start = Math.Atan2((from.B - arc.B).ToMillimetres(), (from.A - arc.A).ToMillimetres());
        var end = Math.Atan2((to.B - arc.B).ToMillimetres(), (to.A - arc.A).ToMillimetres());
        var angle = arc.Clockwise ? start - end : end - start;
        return angle > 0 ? angle : angle + (2 * Math.PI);
    }
}
