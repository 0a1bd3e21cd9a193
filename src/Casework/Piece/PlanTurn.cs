using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// A turn in plan, about an upright line. What stands at an angle is built square in a frame of its own, where all of its
/// lengths stay exact, and is then turned as a whole.
/// </summary>
/// <param name="Pivot">A point on the upright line, in the frame that is turned; its height makes no difference.</param>
/// <param name="Degrees">Exact. Above zero the right end goes to the back, so that the front comes to look to the right.</param>
/// <param name="Within">The turn of the frame that this one stands in; null where that is the piece's own.</param>
public sealed record PlanTurn(Point Pivot, Rational Degrees, PlanTurn? Within = null);
