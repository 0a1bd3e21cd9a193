using Dryfit.Casework.Carcases;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving;

/// <summary>A clear space of a bay between its fixed shelves.</summary>
/// <param name="FromFloor">From the floor of the bay to the floor of the space; null for the lowest.</param>
/// <param name="Height">Its clear height.</param>
internal sealed record Space(Figure? FromFloor, Figure Height)
{
    public Length Bottom => FromFloor?.Length ?? Length.Zero;

    public Length Top => Bottom + Height.Length;

    /// <summary>The part of a bay that is this space.</summary>
    public Cell In(Cell bay) =>
        bay with
        {
            InsideHeight = Height,
            Inside = bay
                .Inside.With(Direction.Down, bay.Inside.Min.Z + Bottom)
                .With(Direction.Up, bay.Inside.Min.Z + Top),
        };
}

/// <summary>How shelves share the height of a bay.</summary>
internal static class Spaces
{
    /// <summary>Heights over the floor of a space at which shelves leave equal spaces; null before the first for none.</summary>
    public static IReadOnlyList<Figure> Evenly(Figure height, Figure thickness, int count)
    {
        if (count == 0)
            return [];
        var clear = (height - (thickness * count)) / (count + 1);
        return [.. Enumerable.Range(0, count).Select(n => (clear * (n + 1)) + (thickness * n))];
    }

    /// <summary>The spaces that shelves at some heights leave, from the lowest.</summary>
    public static IReadOnlyList<Space> Between(Figure height, Figure thickness, IReadOnlyList<Figure> shelves)
    {
        var spaces = new List<Space>();
        Figure? floor = null;
        foreach (var shelf in shelves)
        {
            spaces.Add(new(floor, floor is null ? shelf : shelf - floor));
            floor = shelf + thickness;
        }
        spaces.Add(new(floor, floor is null ? height : height - floor));
        return spaces;
    }

    /// <summary>
    /// Shares loose shelves among spaces so that the spaces they leave are as even as may be: each next one goes where the
    /// clear height is largest, the lower one where two are equal.
    /// </summary>
    public static int[] Share(IReadOnlyList<Space> spaces, Length thickness, int count)
    {
        var shares = new int[spaces.Count];
        for (; count > 0; count--)
        {
            var best = 0;
            for (var n = 1; n < spaces.Count; n++)
            {
                if (Clear(n) > Clear(best))
                    best = n;
            }
            shares[best]++;
        }
        return shares;

        Length Clear(int n) => (spaces[n].Height.Length - (thickness * shares[n])) / (shares[n] + 1);
    }
}
