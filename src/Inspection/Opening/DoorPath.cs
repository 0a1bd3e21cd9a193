using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>A door or flap on its way from shut to its full angle, seen squarely to it.</summary>
/// <param name="Bodies">All that turns with it.</param>
/// <param name="Axis">The axis of the frame along which it turns: X for flaps.</param>
/// <param name="Within">What comes no deeper than this into something is not met: grid units.</param>
/// <param name="Met">What it meets before its full angle; null where it meets nothing.</param>
internal sealed record DoorPath(
    Front Front,
    Swing Swing,
    IReadOnlyList<Body> Bodies,
    Turn Turn,
    Axis Axis,
    double Within,
    Met? Met
)
{
    /// <summary>The angle it reaches, in degrees.</summary>
    public double Degrees => Swing.Degrees * (Met?.Share ?? 1);

    /// <exception cref="InvalidOperationException">The front does not turn: a fault of ours.</exception>
    public static DoorPath Follow(InspectedPiece piece, Front front)
    {
        var swing = front.Swing ?? throw new InvalidOperationException($"The front '{front.Group}' has no hinges.");
        var bodies = Inspection.Bodies.Of(piece, front.Group);
        var (axis, sign) = front.Motion switch
        {
            FrontMotion.TurnsOnLeftEdge => (Axis.Z, -1),
            FrontMotion.TurnsOnRightEdge => (Axis.Z, 1),
            FrontMotion.TurnsOnTopEdge => (Axis.X, -1),
            _ => (Axis.X, 1),
        };
        var unit = axis == Axis.Z ? Direction.Up.Unit() : Direction.Right.Unit();
        var turn = new Turn(piece.Grid.ToUnits(swing.Pin), unit, sign * swing.Degrees * Math.PI / 180);
        var within = piece.ToUnits(Measure.Length.Max(swing.Wander, Tolerance.Fitting));
        var path = new DoorPath(front, swing, bodies, turn, axis, within, null);
        return path with { Met = path.Meets(box => path.Obstacles(piece, box)) };
    }

    /// <summary>The same way no further than some angle.</summary>
    public DoorPath To(double degrees)
    {
        var share = Math.Min(1, degrees / Swing.Degrees);
        return this with
        {
            Turn = Turn with { Angle = Turn.Angle * share },
            Met = Met is { } met && met.Share < share ? met with { Share = met.Share / share } : null,
        };
    }

    /// <summary>What it meets among other things than those that stand about it.</summary>
    public Met? Meets(Func<Box, IEnumerable<Body>> others) => Paths.Turning(Bodies, Turn, Axis, others, Within);

    /// <summary>What stands in a box and does not move with it; the leaf that it meets in a rebate is opened first, or after.</summary>
    public IEnumerable<Body> Obstacles(InspectedPiece piece, Box box) =>
        Inspection
            .Bodies.Near(
                piece,
                box,
                group =>
                    string.Equals(group, Front.Group, StringComparison.Ordinal)
                    || Front.Neighbours.Any(neighbour =>
                        neighbour.IsRebated && string.Equals(neighbour.Group, group, StringComparison.Ordinal)
                    )
            )
            .Where(body => !Inspection.Bodies.IsDrawnElsewhere(piece, Front, body));

    /// <summary>All of it where it stands when it is opened as far as it goes, but no further than some angle.</summary>
    public IReadOnlyList<Body> Opened(double degrees = 360)
    {
        var share = Math.Min(Degrees, degrees) / Swing.Degrees;
        return [.. Bodies.Select(body => body.After(Turn, share))];
    }
}
