using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>One check of a piece. It measures solids; it may know what a part is for, never what sized it.</summary>
internal interface ICheck
{
    /// <summary>What is checked, as a maker says it: "gaps around inset fronts".</summary>
    string Name { get; }

    /// <summary>What the things looked at are, in the plural: "gaps".</summary>
    string Of { get; }

    /// <summary>How it is checked, and what it takes for granted: a paragraph for the list of findings.</summary>
    string How { get; }

    /// <summary>The kinds of finding it can raise.</summary>
    IReadOnlyList<FindingKind> Kinds { get; }

    Outcome Run(InspectedPiece piece);
}

/// <summary>What a check has to say.</summary>
/// <param name="Covered">How many things it looked at.</param>
internal sealed record Outcome(int Covered, IReadOnlyList<Finding> Findings);
