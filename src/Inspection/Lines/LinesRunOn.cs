using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>Whether lines that nearly run on do run on: uprights over uprights, gaps beside gaps.</summary>
internal sealed class LinesRunOn : ICheck
{
    public static FindingKind Upright { get; } =
        new(
            "upright-out-of-line",
            Severity.Warn,
            "Upright not over the one below",
            "A stile or side that stands a little beside the one below it looks like a mistake; one that stands well clear of it looks meant.",
            "common practice"
        );

    public static FindingKind Gap { get; } =
        new(
            "gap-line-breaks",
            Severity.Warn,
            "Line of the fronts breaks",
            "The edges of neighbouring fronts nearly run on and do not: the eye follows the line and finds the step.",
            "common practice"
        );

    public string Name => "lines of uprights and of fronts that should run on";

    public string Of => "lines";

    public string How =>
        "The outermost uprights beside the openings of a carcase are held against those of the carcase under it, and the inner ones too where "
        + "both have as many bays; left edges, middles and right edges are measured, and one of the three in line is enough. Fronts side by side, and in one "
        + "carcase one over the other, are measured edge to edge: outer edges always, inner ones where both stacks have as many fronts. Inset fronts go by "
        + "the edges of their openings. Out by more than 1/128 in (0.2 mm) and no more than 5 mm is a slip; by more it reads as meant.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Upright, Gap];

    public Outcome Run(InspectedPiece piece)
    {
        var (uprights, fronts) = (Uprights.Check(piece), FrontLines.Check(piece));
        return new(uprights.Covered + fronts.Covered, [.. uprights.Findings, .. fronts.Findings]);
    }
}
