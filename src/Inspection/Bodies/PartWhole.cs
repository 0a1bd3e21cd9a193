using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether a part is one piece after all its cuts.</summary>
internal sealed class PartWhole : ICheck
{
    public static FindingKind FallsApart { get; } =
        new(
            "part-falls-apart",
            Severity.Stop,
            "Part falls apart",
            "The cuts go so deep that the board comes off the saw in pieces: nothing holds them together."
        );

    public static FindingKind CutAway { get; } =
        new("part-cut-away", Severity.Stop, "Nothing left of a part", "The cuts take the whole board.");

    public string Name => "parts that their cuts leave in one piece";

    public string Of => "parts";

    public string How =>
        "Every board less its cuts is one piece of wood: what hangs together only along an edge or in a point is two. A cut is "
        + "named where the board would hold together without it.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [FallsApart, CutAway];

    public Outcome Run(InspectedPiece piece)
    {
        var findings = new List<Finding>();
        foreach (var shape in piece.Shapes)
        {
            if (shape.Part.Solid.PieceCount == 0)
                findings.Add(TellCutAway(piece, shape));
            else if (shape.Part.Solid.PieceCount > 1)
                findings.Add(TellApart(piece, shape.Part));
        }
        return new(piece.Shapes.Count, findings);
    }

    private static Finding TellApart(InspectedPiece piece, Part part)
    {
        var lumps = Lumps.Of(part.Solid);
        var smallest = CutPlaces.InPiece(part, lumps[^1].Bounds);
        var all = string.Join("; ", lumps.Select(lump => SizeOf(piece, lump)));
        var count = lumps.Count.ToString(CultureInfo.InvariantCulture);
        return new()
        {
            Kind = FallsApart,
            Message =
                $"The {part.Name} falls into {count} pieces ({all}), parted by {CutPlaces.Named(part, Lumps.PartedBy(part.Solid))}.",
            Parts = [part.Id],
            Place = part.Source,
            Where = piece.ToSpace(smallest.Min, smallest.Max),
            Remedy = new("Make the cuts shallower or shorter, so that wood is left between the pieces.", Sure: false),
        };
    }

    private static string SizeOf(InspectedPiece piece, Lump lump)
    {
        var size = lump.Bounds.Max - lump.Bounds.Min;
        var sides = string.Join(" x ", new[] { size.X, size.Y, size.Z }.Select(side => Bare(piece, side)));
        var isInches = piece.Piece.Format.Unit == LengthUnit.Inch;
        var cubicMm = piece.Grid.ToCubicMm(lump.Volume);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{sides}, {(isInches ? cubicMm / 16387.064 : cubicMm / 1000):0.##} {(isInches ? "in3" : "cm3")}"
        );
    }

    private static string Bare(InspectedPiece piece, double side) =>
        piece.Say(piece.Piece.Format.ByTape(piece.ToLength(side)));

    private static Finding TellCutAway(InspectedPiece piece, Shape shape)
    {
        var blank = CutPlaces.InPiece(shape.Part, new(default, shape.Part.Solid.Size));
        return new()
        {
            Kind = CutAway,
            Message = $"The cuts leave nothing of the {shape.Part.Name}.",
            Parts = [shape.Part.Id],
            Place = shape.Part.Source,
            Where = piece.ToSpace(blank.Min, blank.Max),
            Remedy = new("Make the cuts smaller, or leave the part out.", Sure: false),
        };
    }
}
