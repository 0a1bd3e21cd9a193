using Dryfit.Measure;

namespace Dryfit.Casework.Shaping;

/// <summary>
/// The shape run along an edge: what a cutter takes away there. Points are told as in from the edge and down from the face;
/// the edge itself, where face and edge meet, is (0, 0).
/// </summary>
/// <param name="Kind">What the cut is called.</param>
/// <param name="Called">Its name with its size, as it is asked for: "ogee 1/2".</param>
/// <param name="Outlines">What is taken away.</param>
internal sealed record EdgeShape(
    CutKind Kind,
    string Called,
    params IReadOnlyList<IReadOnlyList<OutlineCorner>> Outlines
)
{
    private static readonly Length Zero = Length.Zero;

    /// <summary>How far it reaches over the face, in from the edge.</summary>
    public Length In => Outlines.SelectMany(outline => outline).Aggregate(Zero, (most, c) => Length.Max(most, c.A));

    /// <summary>How far it reaches down the edge from the face.</summary>
    public Length Down => Outlines.SelectMany(outline => outline).Aggregate(Zero, (most, c) => Length.Max(most, c.B));

    /// <summary>A corner taken off straight.</summary>
    public static EdgeShape Chamfer(Length across, Length down, string called) =>
        new(CutKind.Chamfer, called, [(Zero, Zero), (across, Zero), (Zero, down)]);

    /// <summary>A corner rounded over: a quarter of a circle that runs out into face and edge.</summary>
    public static EdgeShape Round(Length radius, string called) =>
        new(
            CutKind.RoundedEdge,
            called,
            [(Zero, Zero), new(radius, Zero, new(radius, radius, Clockwise: true)), (Zero, radius)]
        );

    /// <summary>A corner hollowed out: a quarter of a circle about the edge itself.</summary>
    public static EdgeShape Cove(Length radius, string called) =>
        new(CutKind.Cove, called, [(Zero, Zero), new(radius, Zero, new(Zero, Zero, Clockwise: false)), (Zero, radius)]);

    /// <summary>Round above and hollow below, in two quarters of circles half as large as the whole.</summary>
    public static EdgeShape Ogee(Length size, string called)
    {
        var half = size / 2;
        return new(
            CutKind.Moulding,
            called,
            [
                (Zero, Zero),
                new(size, Zero, new(size, half, Clockwise: true)),
                new(half, half, new(Zero, half, Clockwise: false)),
                (Zero, size),
            ]
        );
    }

    /// <summary>
    /// A half round that stands at the edge, flush with the face, parted from it by a quirk a quarter as wide as the bead
    /// and as deep as its middle.
    /// </summary>
    public static EdgeShape Bead(Length size, string called)
    {
        var half = size / 2;
        var quirk = size + (size / 4);
        return new(
            CutKind.Moulding,
            called,
            [(Zero, Zero), new(half, Zero, new(half, half, Clockwise: true)), (Zero, half)],
            [(half, Zero), (quirk, Zero), (quirk, half), new(size, half, new(half, half, Clockwise: true))]
        );
    }
}
