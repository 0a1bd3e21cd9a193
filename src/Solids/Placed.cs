namespace Dryfit.Solids;

/// <summary>A solid in its place: board coordinates go to world coordinates by the frame.</summary>
public sealed record Placed(Solid Solid, Frame Frame)
{
    /// <summary>The box around it along a frame's directions, in that frame's coordinates: exact for the corners, to
    /// rounding. A round that bulges out between two corners reaches further by no more than the rise of its chord.</summary>
    public Box BoundsIn(Frame frame)
    {
        var bounds = Shaping.Bounds.Empty;
        foreach (var vertex in Solid.Vertices)
        {
            var p = Frame.ToWorld(vertex) - frame.Origin;
            bounds.Include(new(Vec3.Dot(p, frame.U), Vec3.Dot(p, frame.V), Vec3.Dot(p, frame.W)));
        }

        return bounds.IsEmpty ? default : bounds.ToBox();
    }
}
