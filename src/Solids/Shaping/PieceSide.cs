namespace Dryfit.Solids.Shaping;

/// <summary>
/// A side of a convex piece of an outline: the exact line that it lies on, and the stretch of it, rounded.
/// </summary>
/// <param name="A">A point of the line; the piece lies to the left of the way from it to <paramref name="B"/>.</param>
/// <param name="B">Another one.</param>
/// <param name="From">Where the stretch starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="IsSeam">Whether it only parts two pieces.</param>
internal readonly record struct PieceSide(Vec2 A, Vec2 B, Vec2 From, Vec2 To, bool IsSeam);
