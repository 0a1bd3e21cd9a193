using Dryfit.Solids;

namespace Dryfit.Casework.Building;

/// <summary>A board with its cuts, whatever part it is: boards of equal size with equal cuts are one solid.</summary>
internal sealed class Board : IEquatable<Board>
{
    private readonly Point _size;
    private readonly IReadOnlyList<PartCut> _cuts;

    public Board(PartDraft draft)
    {
        _size = new Point(draft.Length.Length, draft.Width.Length, draft.Thickness.Length);
        // Which joint a cut belongs to makes no difference to its shape.
        _cuts = [.. draft.Cuts.Select(cut => cut with { Joint = null })];
    }

    /// <summary>Cuts the solid, in units of the grid.</summary>
    public Solid Build(Grid grid) =>
        SolidBuilder.Build(grid.ToUnits(_size), [.. _cuts.Select(c => SolidCuts.Of(c, grid))]);

    public bool Equals(Board? other) => other is not null && _size == other._size && _cuts.SequenceEqual(other._cuts);

    public override bool Equals(object? obj) => Equals(obj as Board);

    public override int GetHashCode() => HashCode.Combine(_size, _cuts.Count);
}
