namespace Dryfit.Outputs.FrontView;

/// <summary>Keeps labels off each other: what is placed first stays, what comes later looks for room.</summary>
/// <param name="paper">Where labels may stand at all.</param>
internal sealed class LabelField(Area paper)
{
    private const double Air = 0.4;

    private readonly AreaIndex _taken = new();

    public void Take(Area area) => _taken.Add(area);

    public bool IsFree(Area area) => paper.Holds(area) && !_taken.Touches(area.Grown(Air));

    /// <summary>Takes the first of some places that is free; false where none is.</summary>
    public bool TryTake<T>(IEnumerable<T> places, Func<T, Area> areaOf, out T chosen)
    {
        foreach (var place in places)
        {
            var area = areaOf(place);
            if (!IsFree(area))
                continue;
            Take(area);
            chosen = place;
            return true;
        }
        chosen = default!;
        return false;
    }
}
