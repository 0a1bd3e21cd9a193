using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Casework.Building;

/// <summary>
/// Which family of hardware is meant: the one said at a place, else the one the recipe says for the whole piece, else the
/// shop's usual.
/// </summary>
/// <param name="chosen">The recipe's <c>hardware:</c>; null where it says nothing.</param>
internal sealed class Families(Shop shop, Mapping? chosen)
{
    /// <summary>Hinges: <c>cup</c>, <c>butt</c>, or the name of a family of either.</summary>
    /// <param name="usual">The kind where nothing is said.</param>
    public HardwareFamily Hinge(string? said, SourcePlace place, HardwareKind usual) =>
        Of("hinges", said, place, usual, HardwareKinds.Hinges);

    /// <summary>Slides: <c>side</c>, <c>under</c>, or the name of a family of either; wooden runners are none.</summary>
    public HardwareFamily Slide(string? said, SourcePlace place) =>
        Of("slides", said, place, HardwareKinds.SideSlide, HardwareKinds.Slides);

    /// <summary>Handles: <c>pull</c>, <c>knob</c>, or the name of a family of either.</summary>
    /// <param name="usual">The kind where nothing is said.</param>
    public HardwareFamily Handle(string? said, SourcePlace place, HardwareKind usual) =>
        Of("pulls", said, place, usual, HardwareKinds.Handles);

    public HardwareFamily ShelfPin(string? said, SourcePlace place) =>
        Of("shelf pins", said, place, HardwareKinds.ShelfPin, [HardwareKinds.ShelfPin]);

    public HardwareFamily Connector(string? said, SourcePlace place) =>
        Of("connectors", said, place, HardwareKinds.Connector, [HardwareKinds.Connector]);

    /// <summary>What the recipe says for the whole piece under a key of its <c>hardware:</c>; null where it says nothing.</summary>
    public string? Chosen(string key) => (chosen?[key] as Scalar)?.Text;

    private HardwareFamily Of(
        string key,
        string? said,
        SourcePlace place,
        HardwareKind usual,
        IReadOnlyList<HardwareKind> kinds
    )
    {
        var name = said ?? Chosen(key);
        if (name is null)
            return shop.Family(usual, null)!;
        // The first word of a kind stands for the house's usual of it: "cup", "side".
        var plain = kinds.FirstOrDefault(kind => string.Equals(Word(kind), name, StringComparison.Ordinal));
        if (plain is not null)
            return shop.Family(plain, null)!;
        return kinds.Select(kind => shop.Family(kind, name)).FirstOrDefault(family => family is not null)
            ?? throw new CannotBuildException(
                new InputError(
                    $"The shop file has no {string.Join(" or ", kinds.Select(kind => kind.Name))} called '{name}'.",
                    place,
                    $"one of {string.Join(", ", kinds.Select(Word).Concat(kinds.SelectMany(shop.FamilyNames)))}"
                )
            );
    }

    private static string Word(HardwareKind kind) => kind.Name.Split(' ')[0];
}
