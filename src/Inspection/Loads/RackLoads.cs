using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>What racks weigh when they are full, and whether a person standing on the floor reaches their top.</summary>
internal sealed class RackLoads : ICheck
{
    public static FindingKind Weight { get; } =
        new(
            "rack-weight",
            Severity.Note,
            "What a full rack weighs",
            "Its joints, the carcase and whatever hangs on a wall must carry this; whether they do is not reckoned here."
        );

    public static FindingKind OutOfReach { get; } =
        new(
            "rack-out-of-reach",
            Severity.Note,
            "Rack above easy reach",
            "Heavy or fragile things taken from above the head are dropped. Whoever reaches from a chair wants them no higher than 48 in (1220 mm).",
            "48 in from a wheelchair: 2010 ADA Standards, 308.2; the shop's reach: common practice"
        );

    public string Name => "weight and reach of racks";

    public string Of => "racks";

    public string How =>
        "A full rack weighs what its bottles, glasses, plates or jars weigh, by the weight of one that is printed with it. "
        + "The place where the highest is taken is measured from the lowest point of the piece, taken as the floor.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Weight, OutOfReach];

    public Outcome Run(InspectedPiece piece)
    {
        var findings = new List<Finding>();
        var floor = piece.Shapes.Count == 0 ? 0 : piece.Shapes.Min(shape => shape.Box.Min.Z);
        foreach (var load in piece.Piece.Loads)
        {
            findings.Add(Weigh(piece, load));
            var up = load.Top - piece.ToLength(floor);
            if (up > load.Reach)
                findings.Add(TooHigh(load, up));
        }
        return new(piece.Piece.Loads.Count, findings);
    }

    private static Finding Weigh(InspectedPiece piece, Load load)
    {
        var grams = (long)load.Count * load.GramsEach;
        var weight =
            piece.Piece.Format.Unit == LengthUnit.Inch
                ? $"{Rounded(grams, Pound)} lb ({Rounded(grams, Kilogram)} kg)"
                : $"{Rounded(grams, Kilogram)} kg";
        return new()
        {
            Kind = Weight,
            Message = $"The {load.Name} holds {load.Count} {load.What}: some {weight} when it is full.",
            Parts = load.Parts,
            Place = load.Source,
            Assumptions = [$"one weighs {load.GramsEach} g: {load.Assumption}"],
        };
    }

    private static Finding TooHigh(Load load, Length up) =>
        new()
        {
            Kind = OutOfReach,
            Message = $"The top of the {load.Name} is hard to reach.",
            Parts = load.Parts,
            Place = load.Source,
            Measured = new MeasuredLength("over the floor", up),
            Wanted = new Wanted(null, load.Reach),
            Remedy = new("Fewer rows, a lower place for it, or a step to stand on.", Sure: false),
        };

    private static readonly Rational Kilogram = new(1000, 1);

    /// <summary>The pound, in grams: exact by the international agreement of 1959.</summary>
    private static readonly Rational Pound = new(45359237, 100000);

    private static System.Numerics.BigInteger Rounded(long grams, Rational unit) =>
        (new Rational(grams, 1) / unit).Round();
}
