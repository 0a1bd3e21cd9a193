using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// The whole piece as designed: every part, how they are tied, what moves. All outputs and checks read this and
/// nothing else. Lists keep the order in which a maker would name things; it is the same every time.
/// </summary>
public sealed record Piece
{
    public required string Name { get; init; }

    public string? Note { get; init; }

    /// <summary>How lengths are written for this maker.</summary>
    public required LengthFormat Format { get; init; }

    public required Grid Grid { get; init; }

    /// <summary>All groups; the first is the piece itself, parents stand before their children.</summary>
    public required IReadOnlyList<Group> Groups { get; init; }

    public required IReadOnlyList<Part> Parts { get; init; }

    public required IReadOnlyList<Joint> Joints { get; init; }

    public required IReadOnlyList<Hardware> Hardware { get; init; }

    public required IReadOnlyList<Opening> Openings { get; init; }

    public required IReadOnlyList<Front> Fronts { get; init; }

    /// <summary>How fronts of carcases are divided, the parts before the whole.</summary>
    public IReadOnlyList<Bank> Banks { get; init; } = [];

    /// <summary>What racks are made to hold.</summary>
    public IReadOnlyList<Load> Loads { get; init; } = [];

    /// <summary>What of the room stays where it is, and the piece must be clear of.</summary>
    public IReadOnlyList<RoomThing> Room { get; init; } = [];

    /// <summary>Strips that hide gaps on purpose.</summary>
    public IReadOnlyList<Cover> Covers { get; init; } = [];

    /// <summary>The named finish schemes, in the recipe's order.</summary>
    public required IReadOnlyList<FinishScheme> Finishes { get; init; }

    /// <summary>Findings a maker accepts, by kind id, with the reason.</summary>
    public required IReadOnlyList<AcceptedFinding> Accepted { get; init; }
}

/// <summary>A named finish: which look parts get by default.</summary>
public sealed record FinishScheme(string Name, SourcePlace Source);

/// <summary>A finding the maker knows of and accepts.</summary>
/// <param name="Kind">Id of the kind of finding.</param>
/// <param name="Parts">A phrase naming parts, or null for all.</param>
public sealed record AcceptedFinding(string Kind, string? Parts, string Reason, SourcePlace Source);
