using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Mending;

/// <summary>What is to be mended, and how to try.</summary>
public sealed record Job
{
    /// <summary>The files that the piece is built from, the recipe first.</summary>
    public required IReadOnlyList<SourceText> Texts { get; init; }

    /// <summary>How their values were understood.</summary>
    public required IReadOnlyList<Understood> Understood { get; init; }

    /// <summary>The piece as the files say it, and what the checks say of it.</summary>
    public required Tried Now { get; init; }

    /// <summary>Builds and inspects other texts in the same way; null where they cannot be built.</summary>
    public required Func<Attempt, Tried?> Build { get; init; }

    /// <summary>How often the piece may be built in all.</summary>
    public int MostBuilds { get; init; } = 200;

    /// <summary>How often the piece may be built for one finding.</summary>
    public int MostBuildsForOne { get; init; } = 48;
}

/// <summary>Texts to build the piece from.</summary>
/// <param name="AsReckoned">Whether the maker's own numbers are left out.</param>
public sealed record Attempt(IReadOnlyList<SourceText> Texts, bool AsReckoned);

/// <summary>A piece that was built, and what the checks say of it.</summary>
public sealed record Tried(Piece Piece, Report Report);
