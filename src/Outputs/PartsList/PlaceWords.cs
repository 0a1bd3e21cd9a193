using System.Globalization;
using Dryfit.Casework;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>How a part stands in the piece.</summary>
internal static class PlaceWords
{
    /// <summary>"length up and down, shows left": the line of its length (a board runs both ways) and its show face.</summary>
    public static string Lie(Part part) => $"length {Along(part)}, shows {Words.Of(part.Place.Lie.Shows)}";

    /// <summary>", turned 45 degrees to the left", ", leaning 45 degrees"; nothing for what stands square.</summary>
    public static string Angle(Part part) => InPlan(part) + Lean(part);

    private static string Lean(Part part) =>
        part.Turn is { } turn && turn.About != Axis.Z
            ? string.Create(CultureInfo.InvariantCulture, $", leaning {turn.Degrees.ToDouble():0.###} degrees")
            : "";

    private static string InPlan(Part part)
    {
        var degrees = Turned.Degrees(part.Turn, null);
        if (degrees.Sign == 0)
            return "";
        var (by, way) = degrees <= 180 ? (degrees, "right") : (360 - degrees, "left");
        return string.Create(CultureInfo.InvariantCulture, $", turned {by.ToDouble():0.###} degrees to the {way}");
    }

    private static string Along(Part part) =>
        part.Place.Lie.Along.Axis() switch
        {
            Axis.X => "left to right",
            Axis.Y => "front to back",
            _ => "up and down",
        };
}
