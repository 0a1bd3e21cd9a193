using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Measures how far a cover strip stands off the wall or the ceiling that it is sawn to.</summary>
internal static class StripAtWall
{
    /// <param name="wall">Name of the wall among the things of the room.</param>
    public static Finding? Judge(InspectedPiece piece, Cover cover, string wall)
    {
        var strip = piece.Shape(cover.Strip);
        var things = piece.Piece.Room.Where(thing => thing.Name == wall).ToList();
        var run = cover.Towards.Axis() == Axis.X ? Axis.Z : Axis.X;
        var along = run.Measured();
        var slab = (strip.Box.Min.Y, strip.Box.Max.Y);
        var own = Outline.Facing([strip], cover.Towards, run, slab).Lines;
        var walls = Outline
            .Against(things.Select(thing => new SeenSolid(thing.Placed)), cover.Towards, run, slab)
            .Lines;
        var stations = own.Concat(walls)
            .SelectMany(line => new[] { line.From, line.To })
            .Append(strip.Box.Min.On(along))
            .Append(strip.Box.Max.On(along))
            .Where(at => at >= strip.Box.Min.On(along) && at <= strip.Box.Max.On(along))
            .Distinct()
            .Order()
            .ToList();
        var (most, where) = (0.0, stations[0]);
        foreach (var (start, end) in stations.Zip(stations.Skip(1)))
        {
            // An end that is sawn to another wall has no edge along this one.
            if (!At(own, start, end, start).Any())
                continue;
            foreach (var place in (ReadOnlySpan<double>)[start, end])
            {
                // The strip ends in its outermost line, the wall begins with its nearest.
                var reach = At(own, start, end, place).Max();
                var begins = At(walls, start, end, place).DefaultIfEmpty(double.PositiveInfinity).Min();
                if (begins - reach > most)
                    (most, where) = (begins - reach, place);
            }
        }
        var off = piece.ToLength(Math.Min(most, piece.ToUnits(Length.FromMillimetres(1000))));
        if (off <= Tolerance.Fitting)
            return null;
        var centre = strip.Box.Centre();
        var from = centre + (cover.Towards.Unit() * (strip.Box.Size(cover.Towards.Axis()) / 2));
        var at = run == Axis.Z ? new Vec3(from.X, strip.Box.Min.Y, where) : new Vec3(where, strip.Box.Min.Y, from.Z);
        return new()
        {
            Kind = GapsCovered.OffTheWall,
            Message = $"The {strip.Part.Name} does not lie against the {wall}.",
            Parts = [strip.Part.Id],
            Place = strip.Part.Source,
            Related = [cover.Source, .. things.Select(thing => thing.Source)],
            Where = piece.ToSpace(at, at + (cover.Towards.Unit() * piece.ToUnits(off))),
            Measured = new MeasuredLength("gap", off),
            Wanted = new(null, Tolerance.Fitting),
            Remedy = new($"Make the strip {piece.Say(off)} wider there, and scribe it to the wall.", Sure: false),
        };
    }

    private static IEnumerable<double> At(IReadOnlyList<OutlineLine> lines, double start, double end, double place) =>
        lines.Where(line => line.From <= start && line.To >= end).Select(line => line.ReachAt(place));
}
