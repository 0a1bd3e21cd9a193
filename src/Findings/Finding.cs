using Dryfit.Measure;

namespace Dryfit.Findings;

/// <summary>One thing found on one piece: where it is, what was measured, what was wanted, and what would mend it.</summary>
public sealed record Finding
{
    public required FindingKind Kind { get; init; }

    /// <summary>One sentence with the numbers left out: "The gap on the hinge side of the left door is too wide."</summary>
    public required string Message { get; init; }

    /// <summary>Ids of the parts concerned, the one to change first.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>The line of the recipe to change, where one is known.</summary>
    public SourcePlace? Place { get; init; }

    /// <summary>Other lines of the recipe that have a say in it.</summary>
    public IReadOnlyList<SourcePlace> Related { get; init; } = [];

    /// <summary>Where on the piece, so that a picture can draw it.</summary>
    public SpacePlace? Where { get; init; }

    /// <summary>What was measured on the solids, with its name: "gap", 5/16 in.</summary>
    public Measured? Measured { get; init; }

    /// <summary>What was wanted: the limits, either of which may be open.</summary>
    public Wanted? Wanted { get; init; }

    /// <summary>What would mend it, where that is known.</summary>
    public Remedy? Remedy { get; init; }

    /// <summary>What was taken for granted in judging it.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>The maker's reason, where the finding was accepted in the recipe; it still prints.</summary>
    public string? AcceptedBecause { get; init; }
}

/// <summary>A place on the piece: the two ends of what was measured (the same point twice where it is a spot).</summary>
/// <remarks>Piece coordinates in millimetres: X to the right, Y from the front to the back, Z up.</remarks>
public sealed record SpacePlace(SpacePoint From, SpacePoint To);

/// <summary>A point of the piece in millimetres, as measured: X right, Y from front to back, Z up.</summary>
public readonly record struct SpacePoint(double XMm, double YMm, double ZMm);

/// <summary>A measured quantity with its name in the shop's words.</summary>
public abstract record Measured(string Name);

/// <summary>A measured length.</summary>
public sealed record MeasuredLength(string Name, Length Value) : Measured(Name);

/// <summary>A measured length that varies along its course: smallest and largest.</summary>
public sealed record MeasuredRange(string Name, Length Smallest, Length Largest) : Measured(Name);

/// <summary>A measured volume in cubic millimetres, with the depth it reaches.</summary>
public sealed record MeasuredVolume(string Name, double CubicMm, Length Depth) : Measured(Name);

/// <summary>A measured angle in whole degrees, rounded down, and the one that was wanted.</summary>
public sealed record MeasuredAngle(string Name, int Degrees, int WantedDegrees) : Measured(Name);

/// <summary>The lengths that would have been right; null is open on that side. Equal ends mean exactly that.</summary>
public sealed record Wanted(Length? AtLeast, Length? AtMost)
{
    public static Wanted Exactly(Length length) => new(length, length);
}

/// <summary>What would mend a finding.</summary>
/// <param name="Text">One sentence a maker would say.</param>
/// <param name="Sure">True where the new value was solved for; false where it is a guess.</param>
public sealed record Remedy(string Text, bool Sure)
{
    /// <summary>The exact edits that do it, in the order of the text; none where they were not looked for or there are none.</summary>
    public IReadOnlyList<Edit> Edits { get; init; } = [];
}
