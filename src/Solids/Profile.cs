using System.Collections;
using System.Runtime.CompilerServices;
using Dryfit.Solids.Exact;

namespace Dryfit.Solids;

/// <summary>
/// A closed outline of straight sides, arcs and curves, counter-clockwise, simple, hollow where it likes. As a list it is the
/// corners of the polygon that stands for it in a solid: where solids are decided, an arc is its chords; what it truly is
/// stays with its faces. Corners alone, <c>[new(0, 0), new(40, 0), new(0, 40)]</c>, make a profile of straight sides.
/// </summary>
[CollectionBuilder(typeof(Profile), nameof(Of))]
public sealed class Profile : IReadOnlyList<Vec2>, IEquatable<Profile>
{
    private readonly Vec2[] corners;
    private readonly int[] sideOfChord;

    internal Profile(ProfileSide[] sides)
    {
        PartStraightRuns(sides);
        Sides = sides;
        corners = new Vec2[sides.Sum(side => side.Chords)];
        sideOfChord = new int[corners.Length];
        var at = 0;
        for (var s = 0; s < sides.Length; s++)
        {
            IsStraight &= sides[s] is StraightSide;
            for (var c = 0; c < sides[s].Chords; c++)
            {
                corners[at] = sides[s].Start(c);
                sideOfChord[at++] = s;
            }
        }
    }

    /// <summary>The sides in order; each ends where the next one starts, the last at the start of the first.</summary>
    public IReadOnlyList<ProfileSide> Sides { get; }

    /// <summary>How many corners the polygon has; as many chords.</summary>
    public int Count => corners.Length;

    /// <summary>Whether all sides are straight.</summary>
    public bool IsStraight { get; } = true;

    /// <summary>A corner of the polygon; chord number <paramref name="index"/> starts in it.</summary>
    public Vec2 this[int index] => corners[index];

    /// <summary>Starts to draw one.</summary>
    public static ProfileBuilder From(double x, double y) => new(new(x, y));

    /// <summary>The profile of straight sides with these corners.</summary>
    public static Profile Of(params ReadOnlySpan<Vec2> corners)
    {
        var sides = new ProfileSide[corners.Length];
        for (var i = 0; i < sides.Length; i++)
        {
            sides[i] = new StraightSide(corners[i], corners[(i + 1) % corners.Length]);
        }

        return new(sides);
    }

    public static implicit operator Profile(Vec2[] corners) => Of(corners);

    public static Profile ToProfile(Vec2[] corners) => Of(corners);

    /// <summary>The side that a chord stands for or is a part of.</summary>
    public int SideOf(int chord) => sideOfChord[chord];

    /// <summary>The area within, arcs taken true (curves by their points), square grid units.</summary>
    public double Area
    {
        get
        {
            var twice = 0.0;
            for (var i = 0; i < corners.Length; i++)
            {
                var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
                twice += (a.X * b.Y) - (a.Y * b.X);
            }

            foreach (var side in Sides)
            {
                if (side is ArcSide arc)
                {
                    var bulge = arc.Radius * arc.Radius * (arc.Angle - (arc.Chords * Math.Sin(arc.Angle / arc.Chords)));
                    twice += arc.Bend == Bend.Left ? bulge : -bulge;
                }
            }

            return twice / 2;
        }
    }

    // Where an arc passes into one that bends the other way, the stretches on either side may lie in one line and would be one
    // flat of two rounds. Then one of the arcs gets one stretch more: the one that bends left, so that a mirrored outline is
    // parted alike.
    private static void PartStraightRuns(ProfileSide[] sides)
    {
        // Two for each arc are enough; an arc too flat for its corners to leave the line gets no more.
        var left = 2 * sides.Length;
        for (var i = 0; i < sides.Length; )
        {
            var next = (i + 1) % sides.Length;
            var (before, after) = (sides[i], sides[next]);
            var (a, b) = (before.Start(before.Chords - 1), after.Chords > 1 ? after.Start(1) : after.To);
            if (
                Orientation.Turn(a.X, a.Y, after.From.X, after.From.Y, b.X, b.Y) != 0
                || (before is not ArcSide && after is not ArcSide)
                || left-- <= 0
            )
            {
                i++;
                continue;
            }

            var parted = before is ArcSide { Bend: Bend.Left } || after is not ArcSide ? i : next;
            var arc = (ArcSide)sides[parted];
            sides[parted] = new ArcSide(arc.From, arc.To, arc.Centre, arc.Radius, arc.Bend, arc.Chords + 1);
            i = Math.Max(0, i - 1);
        }
    }

    public bool Equals(Profile? other) =>
        ReferenceEquals(this, other) || (other is not null && Sides.SequenceEqual(other.Sides));

    public override bool Equals(object? obj) => Equals(obj as Profile);

    public override int GetHashCode() =>
        corners.Length == 0 ? 0 : HashCode.Combine(corners.Length, corners[0], corners[^1]);

    public override string ToString() => string.Join(" ", Sides);

    public IEnumerator<Vec2> GetEnumerator() => ((IEnumerable<Vec2>)corners).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
