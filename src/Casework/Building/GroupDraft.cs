using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>A group while it is being built; names of its parts begin with its own.</summary>
/// <param name="Turn">How it is turned in plan, its parents' turns within it; null where it stands square.</param>
internal sealed record GroupDraft(
    string Id,
    string Name,
    GroupKind Kind,
    GroupDraft? Parent,
    SourcePlace Source,
    PlanTurn? Turn = null
)
{
    /// <summary>The sizes of the whole, in the order a maker asks for them.</summary>
    public List<NamedSize> Sizes { get; } = [];

    /// <summary>Says a size of the whole.</summary>
    public void Measures(string name, Figure figure) => Sizes.Add(new NamedSize(name, figure));

    /// <summary>The name a part of this group goes by in the whole piece.</summary>
    public string Full(string local) => Kind == GroupKind.Piece ? local : $"{Name} {local}";
}
