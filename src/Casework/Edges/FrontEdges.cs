using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;

namespace Dryfit.Casework.Edges;

/// <summary>Runs a shape round the outer edges of doors and drawer fronts, whatever they are put together from.</summary>
internal static class FrontEdges
{
    public static void Cut(PieceBuilder piece, GroupDraft carcase, EdgeShape shape)
    {
        var parts = piece.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        foreach (var front in piece.Fronts)
        {
            if (!front.Group.StartsWith($"{carcase.Id}/", StringComparison.Ordinal) || front.Face.Count == 0)
                continue;
            var members = front.Face.Select(id => parts[id]).Where(part => !part.IsKept).ToList();
            var around = members.Skip(1).Aggregate(members[0].Extent, (all, part) => Around(all, part.Extent));
            foreach (var member in members)
            {
                foreach (var edge in (Direction[])[Direction.Left, Direction.Right, Direction.Down, Direction.Up])
                {
                    var isOuter =
                        member.Extent.Side(edge) == around.Side(edge)
                        && member.Extent.Side(Direction.Front) == around.Side(Direction.Front);
                    if (isOuter)
                        ShapedEdge.Cut(member, edge, Direction.Front, shape);
                }
            }
        }
    }

    private static Extent Around(Extent a, Extent b)
    {
        foreach (var side in Enum.GetValues<Direction>())
        {
            if ((b.Side(side) - a.Side(side)) * side.Sign() > Measure.Length.Zero)
                a = a.With(side, b.Side(side));
        }
        return a;
    }
}
