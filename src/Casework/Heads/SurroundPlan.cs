using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Heads;

/// <summary>Boards that go round the front and the ends of a carcase: a cornice, a frieze, a planted plinth.</summary>
/// <param name="Name">What the boards are called.</param>
/// <param name="Material">Its thickness is how far they stand out.</param>
/// <param name="Height">From their lower to their upper edge.</param>
/// <param name="Shape">Run along the one edge of the outer face that is shaped; null: square.</param>
/// <param name="AtLeft">Whether there is a length on the left end; else the front one ends flush there.</param>
/// <param name="AtRight">The same at the right end.</param>
/// <param name="Place">Where the recipe asks for them.</param>
internal sealed record SurroundPlan(
    string Name,
    Material Material,
    Figure Height,
    EdgeShape? Shape,
    bool AtLeft,
    bool AtRight,
    SourcePlace Place
)
{
    /// <summary>Whether a spline lies across each mitre.</summary>
    public bool IsSplined { get; init; }
}

/// <summary>What goes round the head of a carcase.</summary>
/// <param name="Frieze">A flat band, against the carcase; null for none.</param>
/// <param name="Cornice">A moulding, against the frieze or the carcase; null for none.</param>
internal sealed record HeadPlan(SurroundPlan? Frieze, SurroundPlan? Cornice);
