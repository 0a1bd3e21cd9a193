using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// A turn about a line along one axis: in plan where that is upright, leaning where it is level. What stands at an angle is
/// built square in a frame of its own, where all of its lengths stay exact, and is then turned as a whole.
/// </summary>
/// <param name="Pivot">A point on the line, in the frame that is turned; where on the line makes no difference.</param>
/// <param name="Degrees">Exact. Above zero the right end goes to the back, so that the front comes to look to the right.</param>
/// <param name="Within">The turn of the frame that this one stands in; null where that is the piece's own.</param>
public sealed record PlanTurn(Point Pivot, Rational Degrees, PlanTurn? Within = null)
{
    /// <summary>
    /// The axis that the line runs along. Groups turn about upright lines only; a single part may lean, such as a spline
    /// across a mitre: above zero about Y its upper end then goes to the right, about X its rear end goes up.
    /// </summary>
    public Axis About { get; init; } = Axis.Z;
}
