using Dryfit.Casework;

namespace Dryfit.Outputs.PartsList;

/// <summary>How a part stands in the piece.</summary>
internal static class PlaceWords
{
    /// <summary>"runs up, shows left": where its length and its show face point. Grain runs both ways along the length.</summary>
    public static string Lie(Part part) => $"{Along(part)}, shows {Shows(part)}";

    /// <summary>The line of its length: "up and down", "left to right", "front to back".</summary>
    public static string Along(Part part) =>
        part.Place.Lie.Along.Axis() switch
        {
            Axis.X => "left to right",
            Axis.Y => "front to back",
            _ => "up and down",
        };

    /// <summary>Where its show face looks.</summary>
    public static string Shows(Part part) => Text.Words.Of(part.Place.Lie.Shows);
}
