using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Room;

/// <summary>
/// The space between two walls as it was measured. It counts from the foot of the left wall to the right, from its mouth to
/// the back, and up from the highest place of its floor.
/// </summary>
/// <param name="Widths">From wall to wall, by height.</param>
/// <param name="LeftWall">How far the left wall leans in, by height; null where it is plumb.</param>
/// <param name="Floor">How high the floor lies, by the way from the left wall; null where it is level.</param>
/// <param name="Ceiling">How high the ceiling hangs, by the way from the left wall; null where nothing reaches up to it.</param>
/// <param name="Depth">From the mouth to the wall behind; null where there is none.</param>
/// <param name="Skirting">The boards at the foot of the walls; null for none.</param>
internal sealed record WallSpace(
    string Name,
    Readings Widths,
    Readings? LeftWall,
    Readings? Floor,
    Readings? Ceiling,
    Figure? Depth,
    Skirting? Skirting,
    IReadOnlyList<WallFitting> Fittings,
    SourcePlace Place
)
{
    /// <summary>How far the walls go on before the mouth.</summary>
    public Length GoesOn { get; init; }

    /// <summary>How far the floor falls from its highest place to its lowest.</summary>
    public Figure? Fall => Floor is null ? null : (Floor.Most - Floor.Least).As("fall of the floor");

    public Length Left(Length height) => LeftWall?.At(height) ?? Length.Zero;

    public Length Right(Length height) => Left(height) + Widths.At(height);

    /// <summary>Where a wall stands at a height.</summary>
    public Func<Length, Length> Wall(Direction side) => side == Direction.Left ? Left : Right;

    /// <summary>The floor at a distance from the left wall: zero at its highest place, below zero elsewhere.</summary>
    public Length FloorAt(Length x) => Floor is null ? Length.Zero : Floor.At(x) - Floor.Most.Length;

    /// <summary>Every height at which something was read, from the lowest.</summary>
    public IReadOnlyList<Length> Heights =>
        [.. Widths.Points.Concat(LeftWall?.Points ?? []).Select(p => p.At).Distinct().Order()];

    /// <summary>The furthest in that the left wall, and the right one, come between the floor and a height.</summary>
    public (Length Left, Length Right) Tightest(Length height)
    {
        var heights = Heights.Where(h => h <= height).Append(height).ToList();
        return (heights.Select(Left).Aggregate(Length.Max), heights.Select(Right).Aggregate(Length.Min));
    }
}

/// <summary>Boards at the foot of the walls.</summary>
internal sealed record Skirting(Length Height, Length Thickness);

/// <summary>Something on a wall: a socket, a pipe, a radiator.</summary>
/// <param name="Wall">The wall it is on: left, right or back.</param>
/// <param name="Along">From the left wall along the back one; from the mouth along the others.</param>
/// <param name="Out">How far it stands out from its wall.</param>
internal sealed record WallFitting(
    string Name,
    Direction Wall,
    Length Along,
    Length Height,
    Length Width,
    Length Tall,
    Length Out,
    SourcePlace Place
);
