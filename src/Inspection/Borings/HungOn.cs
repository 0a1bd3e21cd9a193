using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>A door or flap with the hinges it hangs on, seen squarely.</summary>
internal sealed record HungOn(InspectedPiece Seen, Front Front, Direction Edge, IReadOnlyList<Hardware> Hinges)
{
    /// <summary>All that turn on hinges which are known.</summary>
    public static IEnumerable<HungOn> In(InspectedPiece piece)
    {
        var hinges = piece
            .Piece.Hardware.Where(fitting => fitting is { Hinge: not null, Ties.Count: > 1 })
            .ToLookup(fitting => piece.Shape(fitting.Ties[0]).Part.Group, StringComparer.Ordinal);
        foreach (var front in piece.Piece.Fronts)
        {
            if (front.Motion.TurnsOn() is { } edge && hinges.Contains(front.Group))
                yield return new(piece.From(front), front, edge, [.. hinges[front.Group]]);
        }
    }

    /// <summary>The axis along the edge it turns on.</summary>
    public Axis Along => Edge.Axis() == Axis.X ? Axis.Z : Axis.X;

    /// <summary>The box around all that is seen of it from the front.</summary>
    public Box Face => Seen.ShapesOf(Front.Face).Select(shape => shape.Box).Aggregate((all, one) => all.Around(one));

    public string Name => Seen.GroupName(Front.Group);

    /// <summary>What a hinge cut into one of its two parts, as boxes seen from here.</summary>
    public IReadOnlyList<(PartCut Cut, Box Box)> Cut(Hardware hinge, int tie)
    {
        var shape = Seen.Shape(hinge.Ties[tie]);
        var cuts = new List<(PartCut, Box)>();
        for (var n = 0; n < shape.Part.Cuts.Count; n++)
        {
            if (!string.Equals(shape.Part.Cuts[n].Joint, hinge.Id, StringComparison.Ordinal))
                continue;
            var points = new List<Vec3>();
            foreach (var face in shape.Part.Solid.Faces.Where(face => face.Cut == n))
            {
                for (var i = 3 * face.FirstTriangle; i < 3 * (face.FirstTriangle + face.TriangleCount); i++)
                    points.Add(shape.Points[shape.Part.Solid.Triangles[i]]);
            }
            if (points.Count > 0)
                cuts.Add((shape.Part.Cuts[n], Boxes.Of(points)));
        }
        return cuts;
    }
}
