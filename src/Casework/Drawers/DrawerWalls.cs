using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>Heights of the walls of a drawer, and from where they go up: by how its bottom is held and by its own front.</summary>
internal sealed record DrawerWalls
{
    /// <summary>Height of the sides.</summary>
    public required Figure Height { get; init; }

    /// <summary>The lower edge of the sides.</summary>
    public required Length Z { get; init; }

    public required Figure FrontHeight { get; init; }

    public required Length FrontZ { get; init; }

    public required Figure BackHeight { get; init; }

    public required Length BackZ { get; init; }

    /// <summary>From the lower edge of the sides to the underside of the bottom; zero for one that is planted.</summary>
    public required Length UnderBottom { get; init; }

    /// <summary>How much of the sides the bottom takes; zero for one that is planted.</summary>
    public required Length Bottom { get; init; }

    public static DrawerWalls Of(DrawerPlan plan, DrawerSizes sizes)
    {
        var bottom = plan.Bottom.Thickness.As("bottom thickness");
        var planted = plan.BottomSet == BottomSet.Planted;
        var up = sizes.Run.BottomUp;
        var height = planted ? (sizes.Height - bottom).As("side height") : sizes.Height;
        var z = planted ? sizes.BottomZ + bottom.Length : sizes.BottomZ;
        var slidIn = plan.BottomSet == BottomSet.SlidIn;
        return new DrawerWalls
        {
            Height = height,
            Z = z,
            FrontHeight = plan.OwnFront ? plan.Fit.Height.As("front height") : height,
            FrontZ = plan.OwnFront ? plan.Fit.Edge(Direction.Down) : z,
            BackHeight = slidIn ? (height - up - bottom).As("back height") : height,
            BackZ = slidIn ? z + up.Length + bottom.Length : z,
            UnderBottom = planted ? Length.Zero : up.Length,
            Bottom = planted ? Length.Zero : bottom.Length,
        };
    }
}
