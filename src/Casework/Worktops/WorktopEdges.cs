using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Worktops;

/// <summary>Shapes run along the edges of worktops: past the joints of their lengths, and round the corners they turn.</summary>
internal static class WorktopEdges
{
    /// <summary>How far in from its front edge a worktop's face is whole.</summary>
    public static Length BehindFront(Worktop top) => top.Edge?.Shape.In ?? Length.Zero;

    /// <summary>Runs the shape along what is seen: the front over all lengths, the ends but for those in a corner.</summary>
    public static void Shape(Worktop top)
    {
        if (top.Edge is not { } edge)
            return;
        // "front and left" asks for that end by its name.
        if (edge.Edges.Count == 2 && top.EndsInCorners.Contains(edge.Edges[1]))
            throw new CannotBuildException(
                new InputError(
                    $"The {Spoken.Of(edge.Edges[1])} end of the {top.Name} lies in a corner: no shape is seen there.",
                    top.Lengths[0].Source,
                    "another end, or `along: front`"
                )
            );
        for (var n = 0; n < top.Lengths.Count; n++)
        {
            var ends = (IsFirst: n == 0, IsLast: n == top.Lengths.Count - 1);
            var free = edge.Edges.Where(side =>
                side switch
                {
                    Direction.Left => ends.IsFirst && !top.EndsInCorners.Contains(side),
                    Direction.Right => ends.IsLast && !top.EndsInCorners.Contains(side),
                    _ => true,
                }
            );
            (edge with { Edges = [.. free] }).Cut(top.Lengths[n], Direction.Up);
        }
    }

    /// <summary>Two shapes run round an inner corner only where they are the same shape and meet at 45 degrees.</summary>
    public static void RefuseUnlike(Worktop main, Worktop own, bool isMitred)
    {
        if (main.Edge is null && own.Edge is null)
            return;
        if (main.Edge is null || own.Edge is null || !main.Edge.LooksLike(own.Edge))
            throw Refuse(
                own,
                $"The front edges of the {main.Name} and the {own.Name} are not shaped alike where they meet.",
                "the same edge: for both"
            );
        if (isMitred && main.Depth != own.Depth)
            throw Refuse(
                own,
                $"The {main.Name} and the {own.Name} are not equally deep: their mitre is not at 45 degrees, and their shaped edges do not meet in it.",
                "the same depth and overhangs for both, corner: butt, or square edges"
            );
    }

    private static CannotBuildException Refuse(Worktop top, string message, string wanted) =>
        new(new InputError(message, top.Lengths[0].Source, wanted));
}
