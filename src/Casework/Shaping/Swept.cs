using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>Takes an outline that is thought of in the piece out of a part, however the part lies.</summary>
internal static class Swept
{
    /// <param name="origin">Where the outline starts to count; its third coordinate plays no part.</param>
    /// <param name="first">The direction of the piece in which the first coordinates of the outline grow.</param>
    /// <param name="second">The direction in which the second ones grow.</param>
    /// <param name="outline">What is taken away, walked either way round.</param>
    /// <param name="isFurther">Whether it belongs to the shape that the cut before it tells.</param>
    /// <param name="stretch">From where to where it runs, on the third axis of the piece; null: right through the part.</param>
    public static void Cut(
        PartDraft part,
        CutKind kind,
        Point origin,
        Direction first,
        Direction second,
        IReadOnlyList<OutlineCorner> outline,
        (Length From, Length To)? stretch = null,
        string? joint = null,
        string? called = null,
        bool isFurther = false
    )
    {
        var run = Directions.Cross(first, second).Axis();
        var along = part.Place.ToBoard(Directions.Along(run, 1)).Axis();
        var (a, b) = CutOutlines.AxesOf(along);
        var (from, to) = stretch ?? (part.Extent.Min[run], part.Extent.Max[run]);
        var (one, other) = (
            part.Place.ToBoard(origin.With(run, from))[along],
            part.Place.ToBoard(origin.With(run, to))[along]
        );
        var onBoard = CutOutlines.Carried(
            outline,
            (x, y) =>
            {
                var at = part.Place.ToBoard(origin.Moved(first, x).Moved(second, y));
                return (at[a], at[b]);
            }
        );
        part.Sweep(
            kind,
            along,
            CutOutlines.CounterClockwise(onBoard),
            Length.Min(one, other),
            Length.Max(one, other),
            joint,
            called,
            isFurther
        );
    }

    /// <summary>The edge of a box where two of its sides meet, as a point on it.</summary>
    public static Point Corner(Extent box, Direction one, Direction other) =>
        box.Min.With(one.Axis(), box.Side(one)).With(other.Axis(), box.Side(other));
}
