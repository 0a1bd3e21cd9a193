using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Room;

/// <summary>What a tape, a plumb bob or a level read at several places of a line, straight from each place to the next.</summary>
/// <param name="Points">Places along the line, rising, and what was read there.</param>
internal sealed record Readings(IReadOnlyList<(Length At, Figure Value)> Points)
{
    public Length At(Length place)
    {
        if (place <= Points[0].At)
            return Points[0].Value.Length;
        for (var n = 1; n < Points.Count; n++)
        {
            var ((fromAt, from), (toAt, to)) = (Points[n - 1], Points[n]);
            if (place <= toAt)
                return from.Length + ((to.Length - from.Length) * ((place - fromAt) / (toAt - fromAt)));
        }
        return Points[^1].Value.Length;
    }

    public Figure Least => Points.Select(p => p.Value).Aggregate(Figure.Min);

    public Figure Most => Points.Select(p => p.Value).Aggregate(Figure.Max);
}
