using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether adjustable shelves rest on their pins: all pins level, and the shelf long enough to lie on them.</summary>
internal sealed class ShelfPins : ICheck
{
    /// <summary>What a pin stands out of its hole: common 5 mm pins have heads of 8 mm, from memory.</summary>
    private static readonly Length StandsOut = Length.FromMillimetres(8);

    /// <summary>So much of a pin must stay under a shelf that was pushed to the other end: common practice.</summary>
    private static readonly Length Bearing = Length.FromMillimetres(3);

    public static FindingKind TooShort { get; } =
        new(
            "shelf-short-for-pins",
            Severity.Stop,
            "Shelf too short for its pins",
            "Pushed to one end it hardly lies on the pins of the other: it drops with all that stands on it.",
            "pins stand out by 8 mm (from memory), 3 mm of that under the shelf (common practice)"
        );

    public static FindingKind NotLevel { get; } =
        new(
            "shelf-pins-not-level",
            Severity.Stop,
            "Shelf pins not level",
            "A shelf lies on three pins then, rocks on the fourth, and slides off in time."
        );

    public string Name => "shelves on their pins";

    public string Of => "adjustable shelves";

    public string How =>
        "Under each adjustable shelf between two uprights the hole nearest to its underside is taken in each row, and these "
        + "are held level against each other. Then the shelf is pushed to either end, and what a pin, standing out by 8 mm, has "
        + "under it at the other end is measured. Pins of another shape are not known; shelves across corners are not judged.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [NotLevel, TooShort];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var shelves = piece
            .Piece.Hardware.Where(hardware => hardware.Ties.Count > 1)
            .ToLookup(hardware => hardware.Ties[0], StringComparer.Ordinal);
        foreach (var part in piece.Piece.Parts.Where(part => part.Role == Role.Shelf && !part.IsKept))
        {
            var seen = piece.From(part.Turn);
            var shelf = seen.Shape(part.Id);
            var pins = shelves[part.Id]
                .SelectMany(hardware => hardware.Ties.Skip(1))
                .Distinct(StringComparer.Ordinal)
                // What is joined to an upright is no shelf on pins, though holes of others may be near.
                .Where(id => !piece.JoinedPairs.Contains(piece.Pairing(part.Id, id)))
                .SelectMany(id => Holes(seen, shelf, seen.Shape(id)))
                .GroupBy(pin => (pin.Into, Math.Round(pin.Top.Y)))
                .Select(row => row.MinBy(pin => Math.Abs(Off(shelf, pin)))!)
                .ToList();
            if (!pins.Exists(pin => pin.Into == Direction.Left) || !pins.Exists(pin => pin.Into == Direction.Right))
                continue;
            covered++;
            if ((Level(seen, shelf, pins) ?? Long(seen, shelf, pins)) is { } finding)
                findings.Add(finding);
        }
        return new(covered, findings);
    }

    /// <summary>The holes under a shelf that go into an upright away from it.</summary>
    private static IEnumerable<Pin> Holes(InspectedPiece piece, Shape shelf, Shape upright)
    {
        var middle = shelf.Box.Centre();
        foreach (var hole in Bored.In(upright.Part))
        {
            if (hole.Cut.Kind != CutKind.ShelfPinHole || hole.Round is not { } bore)
                continue;
            var mouth = upright.Placed.Frame.ToWorld(bore.Frame.Origin);
            var way = upright.Placed.Frame.ToWorld(bore.Frame.Origin + bore.Frame.W) - mouth;
            // Only what goes in squarely to the left or right of the shelf, within its depth.
            if (Math.Abs(way.X) < 1 - SeenSolid.AtAnySlant || Math.Sign(way.X) != Math.Sign(mouth.X - middle.X))
                continue;
            if (mouth.Y < shelf.Box.Min.Y || mouth.Y > shelf.Box.Max.Y)
                continue;
            var into = way.X < 0 ? Direction.Left : Direction.Right;
            yield return new(upright, into, mouth.With(Direction.Up, mouth.Z + bore.Radius), bore.Radius);
        }
    }

    /// <summary>How far the top of a pin is over the underside of its shelf.</summary>
    private static double Off(Shape shelf, Pin pin) => pin.Top.Z - shelf.Box.Min.Z;

    private static Finding? Level(InspectedPiece piece, Shape shelf, IReadOnlyList<Pin> pins)
    {
        var (low, high) = (pins.MinBy(pin => pin.Top.Z)!, pins.MaxBy(pin => pin.Top.Z)!);
        var off = piece.ToLength(high.Top.Z - low.Top.Z);
        if (off <= Tolerance.Fitting + Tolerance.Rounding)
            return null;
        return new()
        {
            Kind = NotLevel,
            Message = $"The pins of the {shelf.Part.Name} are not level.",
            Parts = PartIds.Together([low.Upright.Part.Id], [high.Upright.Part.Id, shelf.Part.Id]),
            Place = low.Upright.Part.IsAsCut ? low.Upright.Part.Source : shelf.Part.Source,
            Related = [high.Upright.Part.Source],
            Where = piece.ToSpace(low.Top, high.Top),
            Measured = new MeasuredLength("apart in height", off),
            Wanted = new(null, Tolerance.Fitting),
            Remedy = new("Bore all rows with one template, set on the same end of both uprights.", Sure: false),
        };
    }

    private static Finding? Long(InspectedPiece piece, Shape shelf, IReadOnlyList<Pin> pins)
    {
        var held = pins.Select(pin => (Pin: pin, Under: Under(piece, shelf, pins, pin))).MinBy(one => one.Under);
        var under = piece.ToLength(held.Under);
        if (under >= Bearing - Tolerance.Rounding)
            return null;
        var end = held.Pin.Top - (held.Pin.Into.Unit() * piece.ToUnits(StandsOut));
        return new()
        {
            Kind = TooShort,
            Message = $"The {shelf.Part.Name} is too short for its pins when it is pushed to the other end.",
            Parts = [shelf.Part.Id, held.Pin.Upright.Part.Id],
            Place = shelf.Part.Source,
            Related = [held.Pin.Upright.Part.Source],
            Where = piece.ToSpace(held.Pin.Top, end),
            Measured = new MeasuredLength("lies on a pin by", Length.Max(under, Length.Zero)),
            Wanted = new(Bearing, null),
            Remedy = new(
                $"Cut it at least {piece.SayByTape(Bearing - under)} longer, or take pins that stand out further.",
                Sure: false
            ),
            Assumptions = [$"pins stand out by {piece.Say(StandsOut)}"],
        };
    }

    /// <summary>How much of a pin is under its shelf when that is pushed to the other end; below zero by how far it falls short.</summary>
    private static double Under(InspectedPiece piece, Shape shelf, IReadOnlyList<Pin> pins, Pin pin)
    {
        var other = pin.Into.Opposite();
        var most = shelf.Box.Size(Axis.X);
        var play = pins.Where(far => far.Into == other)
            .Select(far => Pair.GapAlong(shelf.Placed, far.Upright.Placed, other.Unit(), most)?.Distance ?? 0)
            .Min();
        var pushed = shelf.Placed with
        {
            Frame = shelf.Placed.Frame with { Origin = shelf.Placed.Frame.Origin + (other.Unit() * play) },
        };
        var (length, width, height) = (piece.ToUnits(StandsOut), 2 * pin.Radius, piece.ToUnits(Tolerance.WrongNumber));
        var corner = new Vec3(
            pin.Into == Direction.Left ? pin.Top.X : pin.Top.X - length,
            pin.Top.Y - pin.Radius,
            shelf.Box.Min.Z
        );
        // What lies over the pin, as a thin slip of it that reaches into the shelf.
        var slip = new Placed(
            SolidBuilder.Build(new(length, width, height), []),
            new(corner, Direction.Right.Unit(), Direction.Back.Unit(), Direction.Up.Unit())
        );
        return Pair.Overlap(pushed, slip)?.Bounds.Size(Axis.X)
            ?? -(Pair.GapAlong(pushed, slip, pin.Into.Unit(), most)?.Distance ?? 0);
    }

    /// <summary>A pin by the top of its mouth.</summary>
    /// <param name="Into">Which way its hole goes in.</param>
    private sealed record Pin(Shape Upright, Direction Into, Vec3 Top, double Radius);
}
