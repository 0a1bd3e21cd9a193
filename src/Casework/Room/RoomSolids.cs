using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Casework.Room;

/// <summary>Turns what was measured of a room into solids that parts must stay clear of.</summary>
internal static class RoomSolids
{
    /// <summary>How thick walls and floor are drawn: only their faces matter.</summary>
    private static readonly Length Thick = Length.FromMillimetres(100);

    /// <summary>Walls stand out before their mouth by this, for what is proud of it.</summary>
    private static readonly Length Before = Length.FromMillimetres(300);

    public static IEnumerable<RoomThing> Of(WallSpace space, Grid grid)
    {
        var depth = space.Depth?.Length ?? Length.FromMillimetres(1000);
        var heights = space.Heights;
        var (low, high) = (-(space.Fall?.Length ?? Length.Zero) - Thick, heights[^1]);
        foreach (var (name, face, side) in Sides(space))
        {
            yield return Wall(space, grid, name, face, side, low, high, Before, depth) with
            {
                Known = Wall(space, grid, name, face, side, low, high, space.GoesOn, depth).Placed,
            };
        }
        var (left, right) = (
            heights.Select(space.Left).Aggregate(Length.Min) - Thick,
            heights.Select(space.Right).Aggregate(Length.Max) + Thick
        );
        yield return Floor(space, grid, left, right, low, depth);
        if (space.Depth is not null)
            yield return Box(space, grid, "back wall", new(new(left, depth, low), new(right, depth + Thick, high)));
        if (space.Ceiling is { } ceiling)
            yield return Ceiling(space, grid, ceiling, left, right, depth);
        if (space.Skirting is { } skirting)
        {
            var (inLeft, inRight) = space.Tightest(skirting.Height);
            var foot = low + Thick;
            yield return Box(
                space,
                grid,
                "left skirting",
                new(new(left, Length.Zero, foot), new(inLeft + skirting.Thickness, depth, skirting.Height))
            );
            yield return Box(
                space,
                grid,
                "right skirting",
                new(new(inRight - skirting.Thickness, Length.Zero, foot), new(right, depth, skirting.Height))
            );
            if (space.Depth is not null)
                yield return Box(
                    space,
                    grid,
                    "back skirting",
                    new(new(left, depth - skirting.Thickness, foot), new(right, depth + Thick, skirting.Height))
                );
        }
        foreach (var fitting in space.Fittings)
            yield return Fitting(space, grid, fitting, depth);
    }

    private static (string Name, Func<Length, Length> Face, Direction Side)[] Sides(WallSpace space) =>
        [("left wall", space.Left, Direction.Left), ("right wall", space.Right, Direction.Right)];

    private static RoomThing Fitting(WallSpace space, Grid grid, WallFitting fitting, Length depth)
    {
        var (from, to) = (fitting.Along, fitting.Along + fitting.Width);
        var (low, high) = (fitting.Height, fitting.Height + fitting.Tall);
        // On a wall that leans it stands out from where the wall is furthest in.
        var heights = (Length[])[low, high];
        var extent = fitting.Wall switch
        {
            Direction.Left => new Extent(
                new(heights.Select(space.Left).Aggregate(Length.Min) - Thick, from, low),
                new(heights.Select(space.Left).Aggregate(Length.Max) + fitting.Out, to, high)
            ),
            Direction.Right => new Extent(
                new(heights.Select(space.Right).Aggregate(Length.Min) - fitting.Out, from, low),
                new(heights.Select(space.Right).Aggregate(Length.Max) + Thick, to, high)
            ),
            _ => new Extent(
                new(space.Left(low) + from, depth - fitting.Out, low),
                new(space.Left(low) + to, depth + Thick, high)
            ),
        };
        return Box(space, grid, fitting.Name, extent) with { Source = fitting.Place };
    }

    private static RoomThing Wall(
        WallSpace space,
        Grid grid,
        string name,
        Func<Length, Length> face,
        Direction side,
        Length low,
        Length high,
        Length before,
        Length depth
    )
    {
        var faces = space.Heights.Select(face).ToList();
        var (inmost, outmost) =
            side == Direction.Left
                ? (faces.Aggregate(Length.Max), faces.Aggregate(Length.Min) - Thick)
                : (faces.Aggregate(Length.Min), faces.Aggregate(Length.Max) + Thick);
        var extent = new Extent(
            new(Length.Min(inmost, outmost), -before, low),
            new(Length.Max(inmost, outmost), depth, high)
        );
        // Below the first reading and above the last the wall goes on plumb. What is cut away lies before the wall's face.
        var line = space.Heights.Select(h => (X: face(h), Z: h)).ToList();
        line.Insert(0, (line[0].X, low - Thick));
        line.Add((line[^1].X, high + Thick));
        var clear = inmost + (Thick * -side.Sign());
        var outline = line.ConvertAll(p => InXz(grid, extent, p.X, p.Z));
        outline.Add(InXz(grid, extent, clear, line[^1].Z));
        outline.Add(InXz(grid, extent, clear, line[0].Z));
        return Cut(space, grid, name, extent, outline, isUnderfoot: false);
    }

    private static RoomThing Floor(WallSpace space, Grid grid, Length left, Length right, Length low, Length depth)
    {
        var extent = new Extent(new(left, -Before, low), new(right, depth, Length.Zero));
        if (space.Floor is not { Points.Count: > 1 } floor)
            return Box(space, grid, "floor", extent) with { IsUnderfoot = true };
        var line = floor.Points.Select(p => (X: p.At, Z: space.FloorAt(p.At))).ToList();
        line.Insert(0, (left - Thick, line[0].Z));
        line.Add((Length.Max(right, line[^1].X) + Thick, line[^1].Z));
        var outline = line.ConvertAll(p => InXz(grid, extent, p.X, p.Z));
        outline.Add(InXz(grid, extent, line[^1].X, Thick));
        outline.Add(InXz(grid, extent, line[0].X, Thick));
        return Cut(space, grid, "floor", extent, outline, isUnderfoot: true);
    }

    private static RoomThing Ceiling(
        WallSpace space,
        Grid grid,
        Readings ceiling,
        Length left,
        Length right,
        Length depth
    )
    {
        var (low, high) = (ceiling.Least.Length, ceiling.Most.Length + Thick);
        var extent = new Extent(new(left, -Before, low), new(right, depth, high));
        if (ceiling.Least.Length == ceiling.Most.Length)
            return Box(space, grid, "ceiling", extent);
        var line = ceiling.Points.Select(p => (X: p.At, Z: p.Value.Length)).ToList();
        line.Insert(0, (Length.Min(left, line[0].X) - Thick, line[0].Z));
        line.Add((Length.Max(right, line[^1].X) + Thick, line[^1].Z));
        var outline = line.ConvertAll(p => InXz(grid, extent, p.X, p.Z));
        outline.Add(InXz(grid, extent, line[^1].X, low - Thick));
        outline.Add(InXz(grid, extent, line[0].X, low - Thick));
        return Cut(space, grid, "ceiling", extent, outline, isUnderfoot: false);
    }

    private static Vec2 InXz(Grid grid, Extent extent, Length x, Length z) =>
        new(grid.ToUnits(x - extent.Min.X), grid.ToUnits(z - extent.Min.Z));

    /// <summary>A block of which an outline of X and Z is cut away right through.</summary>
    private static RoomThing Cut(
        WallSpace space,
        Grid grid,
        string name,
        Extent extent,
        List<Vec2> outline,
        bool isUnderfoot
    )
    {
        var turned = 0.0;
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
            turned += (a.X * b.Y) - (a.Y * b.X);
        }
        if (turned < 0)
            outline.Reverse();
        var through = grid.ToUnits(extent.Depth);
        // X across Z looks to the front: the outline is swept from the back.
        var frame = new Frame(new(0, through, 0), new(1, 0, 0), new(0, 0, 1), new(0, -1, 0));
        var solid = SolidBuilder.Build(Size(grid, extent), [new PrismCut(frame, outline.ToArray(), through)]);
        return Place(space, grid, name, extent, solid, isUnderfoot);
    }

    private static RoomThing Box(WallSpace space, Grid grid, string name, Extent extent) =>
        Place(space, grid, name, extent, SolidBuilder.Build(Size(grid, extent), []), isUnderfoot: false);

    private static RoomThing Place(
        WallSpace space,
        Grid grid,
        string name,
        Extent extent,
        Solid solid,
        bool isUnderfoot
    ) =>
        new(
            $"{space.Name} {name}",
            new Placed(solid, new Frame(grid.ToUnits(extent.Min), new(1, 0, 0), new(0, 1, 0), new(0, 0, 1))),
            isUnderfoot,
            space.Place
        );

    private static Vec3 Size(Grid grid, Extent extent) =>
        new(grid.ToUnits(extent.Width), grid.ToUnits(extent.Depth), grid.ToUnits(extent.Height));
}
