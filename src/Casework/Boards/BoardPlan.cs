using Dryfit.Casework.Own;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Boards;

/// <summary>A loose board as the recipe says it, before it has its place.</summary>
internal sealed record BoardPlan
{
    /// <summary>The name of the board where it is said, or that of one of its copies.</summary>
    public required string Local { get; init; }

    /// <summary>The use of an own word that it comes from; null where the recipe itself says it.</summary>
    public OwnUnit? Unit { get; init; }

    /// <summary>Its name in the whole piece.</summary>
    public string Name => Unit is null ? Local : $"{Unit.Use} {Local}";

    /// <summary>All that is said of it, for its cuts.</summary>
    public required Fields Fields { get; init; }

    public required Material Material { get; init; }

    public required Role Role { get; init; }

    public required Lie Lie { get; init; }

    public required Figure? Length { get; init; }

    public required Figure? Width { get; init; }

    /// <summary>What is said of each side; the first line of a side gives its place.</summary>
    public required IReadOnlyDictionary<Direction, IReadOnlyList<SideSaid>> Sides { get; init; }

    public required FaceSaid? CentredOn { get; init; }

    public required IReadOnlyList<MeetsSaid> Joined { get; init; }

    /// <summary>The row it is one of; null where it stands alone.</summary>
    public required RepeatPlan? Repeat { get; init; }

    /// <summary>Which of a row it is, from 0.</summary>
    public int Number { get; init; }

    public required SourcePlace Place { get; init; }

    /// <summary>The size along an axis of the piece, where it is said; the thickness always is.</summary>
    public Figure? SizeAlong(Axis axis) =>
        axis == Lie.Along.Axis() ? Length
        : axis == Lie.Across.Axis() ? Width
        : Material.Thickness;

    public SideSaid? Said(Direction side) => Sides.TryGetValue(side, out var said) ? said[0] : null;
}

/// <summary>A row of equal boards.</summary>
/// <param name="Every">From one to the next; null where they share what lies between two parts.</param>
/// <param name="Between">The two parts, or nothing.</param>
internal sealed record RepeatPlan(
    int Times,
    Figure? Every,
    Direction Towards,
    IReadOnlyList<FaceSaid> Between,
    SourcePlace Place
);
