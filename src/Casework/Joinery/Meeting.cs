using Dryfit.Casework.Building;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>Places where two parts meet.</summary>
internal static class Meeting
{
    /// <summary>The middle of one side of a box.</summary>
    public static Point Centre(Extent box, Direction side)
    {
        var middle = new Point((box.Min.X + box.Max.X) / 2, (box.Min.Y + box.Max.Y) / 2, (box.Min.Z + box.Max.Z) / 2);
        return middle.With(side.Axis(), box.Side(side));
    }

    /// <summary>
    /// From where to where two boxes lie beside each other along an axis: fastenings of an end that reaches past what
    /// takes it, such as a partition under a stretcher, share this stretch and no more.
    /// </summary>
    /// <returns>The whole of the second where they lie nowhere beside each other.</returns>
    public static (Length From, Length To) Shared(PartDraft receives, PartDraft enters, Axis along) =>
        Shared(receives.Open, enters.Reckoned, along);

    /// <summary>The same of two boxes.</summary>
    public static (Length From, Length To) Shared(Extent receives, Extent enters, Axis along)
    {
        var from = Length.Max(receives.Min[along], enters.Min[along]);
        var to = Length.Min(receives.Max[along], enters.Max[along]);
        return from < to ? (from, to) : (enters.Min[along], enters.Max[along]);
    }
}
