using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>A door or drawer that is seen from the front.</summary>
/// <param name="Bounds">The box around it as it is drawn; narrower than it is where it stands at an angle.</param>
/// <param name="Size">Its real size, seen squarely.</param>
internal sealed record SeenFront(Front Front, Span2 Bounds, Span2 Size);

/// <summary>How fronts that stand at an angle are seen from the front of the piece.</summary>
internal static class Sight
{
    /// <summary>The cosine of some 80 degrees: what is turned farther shows an edge, and what is turned away its back.</summary>
    private const double LeastTowardsViewer = 0.17;

    /// <summary>Whether enough of a front is seen to letter it.</summary>
    public static bool IsSeen(Piece piece, Front front) =>
        TurnOf(piece, front) is not { } turn
        || Math.Cos(Turned.Degrees(turn, null).ToDouble() * Math.PI / 180) > LeastTowardsViewer;

    /// <summary>
    /// A size of the front view in words. Where something stands at an angle the ends of it lie on no mark of any tape,
    /// and the size is told to the step that is shown.
    /// </summary>
    public static string Told(Piece piece, double units)
    {
        var length = piece.Grid.ToLength(units);
        return piece.Format.Write(piece.Parts.Any(part => part.Turn is not null) ? piece.Format.Shown(length) : length);
    }

    /// <summary>The box around a front as it is seen squarely.</summary>
    public static Span2 SizeOf(Piece piece, Front front)
    {
        var face = front.Face.ToHashSet(StringComparer.Ordinal);
        return Span2.Around(
            piece
                .Parts.Where(part => face.Contains(part.Id))
                .SelectMany(part => part.Unturned.Solid.Vertices.Select(part.Unturned.Frame.ToWorld))
                .Select(point => new Vec2(point.X, point.Z))
        );
    }

    /// <summary>A gap measured squarely, as it lies in the front view.</summary>
    /// <param name="depth">Where the face of the front lies in its own frame.</param>
    public static GapCourse ToView(Piece piece, Front front, double depth, GapCourse course)
    {
        if (TurnOf(piece, front) is not { } turn)
            return course;
        return new(Seen(course.FrontStart), Seen(course.FrontEnd), Seen(course.OtherStart), Seen(course.OtherEnd));

        Vec2 Seen(Vec2 square)
        {
            var at = new Vec3(square.X, depth, square.Y).Seen(turn, null, piece.Grid.UnitsPerMm);
            return new(at.X, at.Z);
        }
    }

    private static PlanTurn? TurnOf(Piece piece, Front front) =>
        piece.Groups.FirstOrDefault(group => string.Equals(group.Id, front.Group, StringComparison.Ordinal))?.Turn;
}
