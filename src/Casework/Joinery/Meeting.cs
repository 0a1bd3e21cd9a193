namespace Dryfit.Casework.Joinery;

/// <summary>Places where two parts meet.</summary>
internal static class Meeting
{
    /// <summary>The middle of one side of a box.</summary>
    public static Point Centre(Extent box, Direction side)
    {
        var middle = new Point((box.Min.X + box.Max.X) / 2, (box.Min.Y + box.Max.Y) / 2, (box.Min.Z + box.Max.Z) / 2);
        return middle.With(side.Axis(), box.Side(side));
    }
}
