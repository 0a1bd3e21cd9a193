using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether doors hang on enough hinges for their height, width and weight.</summary>
internal sealed class HingeCounts : ICheck
{
    private const string Chart = "hinge maker's quick reference (hardware literature): hinges by height and weight";
    private const double KilogramsPerPound = 0.45359237;

    /// <summary>Up to so high and so heavy, so many.</summary>
    private static readonly (int Count, Length Height, double Pounds)[] Rows =
    [
        (2, Length.FromInches(40), 15),
        (3, Length.FromInches(60), 30),
        (4, Length.FromInches(80), 45),
        (5, Length.FromInches(100), 60),
    ];

    /// <summary>Wider doors want one more (hinge maker's notes on the number of hinges).</summary>
    private static readonly Length Wide = Length.FromMillimetres(600);

    public static FindingKind TooFew { get; } =
        new(
            "hinges-too-few",
            Severity.Warn,
            "Too few hinges",
            "A door that is higher, wider or heavier than its hinges are made for sags and tears its screws out.",
            Chart
        );

    public static FindingKind BeyondChart { get; } =
        new(
            "hinges-beyond-chart",
            Severity.Note,
            "Door beyond the chart of hinges",
            "The door is higher or heavier than the published chart goes: only the maker of the hinges can say how many carry it.",
            Chart
        );

    public string Name => "number of hinges by height, width and weight";

    public string Of => "doors and flaps";

    public string How =>
        "Each door is measured along and across the edge it turns on and weighed: the volume of all its parts, less their cuts, "
        + "times the density of their material; glass counts, pulls do not. Held against a chart for cup hinges; for other hinges it "
        + "is a guide. What stays carry of a flap is not taken off.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [TooFew, BeyondChart];

    public Outcome Run(InspectedPiece piece)
    {
        var doors = HungOn.In(piece).ToList();
        return new(doors.Count, [.. doors.Select(Judge).OfType<Finding>()]);
    }

    private static Finding? Judge(HungOn door)
    {
        var (piece, box) = (door.Seen, door.Face);
        var edge = piece.ToLength(box.Size(door.Along));
        var across = piece.ToLength(box.Size(door.Edge.Axis()));
        var kilograms = piece
            .Members(door.Front.Group)
            .Sum(shape => piece.Grid.ToCubicMm(shape.Part.Solid.Volume) * 1e-9 * shape.Part.Material.DensityKgPerM3);
        var count = door.Hinges.Sum(hinge => hinge.Count);
        var wanted = Wanted(edge, across, kilograms, door.Along == Axis.Z);
        if (count >= wanted)
            return null;
        var most = Rows[^1].Count;
        if (wanted is null && count > most)
            return null;
        var weight = string.Create(
            CultureInfo.InvariantCulture,
            $"{(piece.Piece.Format.Unit == LengthUnit.Inch ? kilograms / KilogramsPerPound : kilograms):0.#} {(piece.Piece.Format.Unit == LengthUnit.Inch ? "lb" : "kg")}"
        );
        var parts = piece.ShapesOf([door.Hinges[0].Ties[0]]);
        var middle = box.Centre().With(door.Edge, box.Reach(door.Edge));
        var run = door.Along == Axis.Z ? Direction.Up : Direction.Right;
        return new()
        {
            Kind = wanted is null ? BeyondChart : TooFew,
            Message = wanted is { } number
                ? $"The {door.Name} hangs on {Number(count)} and wants {Number(number)}: it is {piece.Say(piece.Piece.Format.ByTape(edge))} along its hinges, {piece.Say(piece.Piece.Format.ByTape(across))} across, and weighs {weight}."
                : $"The {door.Name} is beyond the chart of hinges: it is {piece.Say(piece.Piece.Format.ByTape(edge))} along its {Number(count)} and weighs {weight}.",
            Parts = [parts[0].Part.Id],
            Place = piece.Group(door.Front.Group)?.Source ?? parts[0].Part.Source,
            Where = piece.ToSpace(
                middle.With(run.Opposite(), box.Reach(run.Opposite())),
                middle.With(run, box.Reach(run))
            ),
            Measured = new MeasuredLength("height along the hinges", edge),
            Remedy = wanted is { } least
                ? new($"`hinges: {least.ToString(CultureInfo.InvariantCulture)}`, or a lighter door.", Sure: true)
                : new("Ask the maker of the hinges, or make two doors of it.", Sure: false),
            Assumptions = ["the weight without its pull, by the densities in the recipe or the usual ones"],
        };
    }

    /// <summary>How many it wants; null beyond the chart.</summary>
    private static int? Wanted(Length edge, Length across, double kilograms, bool isDoor)
    {
        foreach (var (count, height, pounds) in Rows)
        {
            if (edge <= height + Tolerance.Fitting && kilograms <= pounds * KilogramsPerPound)
                return isDoor && across > Wide + Tolerance.Fitting ? count + 1 : count;
        }
        return null;
    }

    private static string Number(int count) =>
        count == 1 ? "one hinge" : $"{count.ToString(CultureInfo.InvariantCulture)} hinges";
}
