namespace Dryfit.Solids;

/// <summary>Which way a way bends, seen as it is walked; an outline that goes counter-clockwise has its inside to the left.</summary>
public enum Bend
{
    /// <summary>Counter-clockwise: on an outline, a side that bulges out.</summary>
    Left,

    /// <summary>Clockwise: on an outline, a side that is hollow.</summary>
    Right,
}

/// <summary>One side of a profile, from its exact start to its exact end; grid units.</summary>
public abstract record ProfileSide(Vec2 From, Vec2 To)
{
    /// <summary>How many straight stretches stand for it in the solid: 1 or more.</summary>
    public abstract int Chords { get; }

    /// <summary>Where its stretch number <paramref name="chord"/> starts; the first one at <see cref="From"/>.</summary>
    internal abstract Vec2 Start(int chord);
}

/// <summary>A straight side.</summary>
public sealed record StraightSide(Vec2 From, Vec2 To) : ProfileSide(From, To)
{
    public override int Chords => 1;

    internal override Vec2 Start(int chord) => From;
}

/// <summary>An arc of a circle: its ends are exact, its inner corners lie on the circle and are rounded once.</summary>
/// <param name="Centre">The middle of the circle.</param>
/// <param name="Radius">The radius of the circle, grid units.</param>
/// <param name="Bend">Which way it goes round the centre.</param>
/// <param name="Chords">How many stretches stand for it, all of one length; one more than asked for where one would
/// run straight on into its neighbour's.</param>
public sealed record ArcSide(Vec2 From, Vec2 To, Vec2 Centre, double Radius, Bend Bend, int Chords)
    : ProfileSide(From, To)
{
    public override int Chords { get; } = Chords;

    /// <summary>The angle that it goes round its centre, radians, above 0 and below a full turn.</summary>
    public double Angle => 2 * Half(out _, out _);

    // From the middle of the arc to both sides, so that arcs that mirror each other have corners that do.
    internal override Vec2 Start(int chord)
    {
        if (chord == 0)
        {
            return From;
        }

        var (sin, cos) = Math.SinCos(Half(out var along, out var outwards) * ((2 * chord) - Chords) / Chords);
        return new(
            Centre.X + (Radius * ((cos * outwards.X) + (sin * along.X))),
            Centre.Y + (Radius * ((cos * outwards.Y) + (sin * along.Y)))
        );
    }

    // Half the angle, the direction of the chord and the one from the centre to the middle of the arc.
    private double Half(out Vec2 along, out Vec2 outwards)
    {
        var (x, y) = (To.X - From.X, To.Y - From.Y);
        var length = Math.Sqrt((x * x) + (y * y));
        along = new(x / length, y / length);
        outwards = Bend == Bend.Left ? new(along.Y, -along.X) : new(-along.Y, along.X);
        var (fromX, fromY) = ((From.X + To.X) / 2, (From.Y + To.Y) / 2);
        var height = ((fromX - Centre.X) * outwards.X) + ((fromY - Centre.Y) * outwards.Y);
        return Math.Atan2(length / 2, height);
    }
}

/// <summary>Any other smooth curve (an ellipse, a line drawn by hand), given by points on it close enough to stand for it.</summary>
/// <param name="Points">The points from the start to the end, both included; two or more.</param>
public sealed record CurveSide(IReadOnlyList<Vec2> Points) : ProfileSide(Points[0], Points[^1])
{
    public override int Chords => Points.Count - 1;

    internal override Vec2 Start(int chord) => Points[chord];

    public bool Equals(CurveSide? other) =>
        other is not null && (ReferenceEquals(this, other) || Points.SequenceEqual(other.Points));

    public override int GetHashCode() => HashCode.Combine(Points.Count, From, To);
}
