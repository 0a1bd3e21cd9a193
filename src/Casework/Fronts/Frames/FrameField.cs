using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>A member of a door's frame as the panel or pane beside it sees it.</summary>
/// <param name="Depth">Of its groove or rabbet, from its inner edge.</param>
/// <param name="IsBar">A glazing bar: rabbeted from end to end, with a thin web between its panes.</param>
internal sealed record FrameMember(PartDraft Part, Figure Depth, bool IsBar = false)
{
    /// <summary>How much higher its edge is in the middle, where it is arched; null where it is straight.</summary>
    public Figure? Rise { get; init; }
}

/// <summary>One clear field of a door's frame, for one panel or pane, with the four members around it.</summary>
internal sealed record FrameField
{
    /// <summary>What goes before "panel" or "pane": empty in an undivided door, else "upper", "lower left".</summary>
    public required string Name { get; init; }

    public required FrameMember Left { get; init; }

    public required FrameMember Right { get; init; }

    public required FrameMember Below { get; init; }

    public required FrameMember Above { get; init; }

    /// <summary>Between the members at its sides, as reckoned.</summary>
    public required Figure Width { get; init; }

    /// <summary>Between the members below and above it, as reckoned.</summary>
    public required Figure Height { get; init; }

    /// <summary>The members with the way something inside goes to meet each.</summary>
    public IEnumerable<(FrameMember Member, Direction Into)> Around =>
        [(Left, Direction.Left), (Right, Direction.Right), (Below, Direction.Down), (Above, Direction.Up)];

    /// <summary>The clear space between the members as it left the clamps: X and Z bound it.</summary>
    public Extent Inside =>
        new(
            new(Left.Part.Extent.Max.X, Left.Part.Extent.Min.Y, Below.Part.Extent.Max.Z),
            new(
                Right.Part.Extent.Min.X,
                Left.Part.Extent.Max.Y,
                Above.Part.Extent.Min.Z + (Above.Rise?.Length ?? Length.Zero)
            )
        );

    /// <summary>The corner of something that lies in the middle between the bottoms of the grooves around.</summary>
    public Point Centred(Length width, Length height, Length y)
    {
        var inside = Inside;
        return new(
            (inside.Min.X - Left.Depth.Length + inside.Max.X + Right.Depth.Length - width) / 2,
            y,
            (inside.Min.Z - Below.Depth.Length + inside.Max.Z + Above.Depth.Length - height) / 2
        );
    }

    /// <summary>The name of something in this field: "upper left panel".</summary>
    public string NameOf(string local) => Name.Length == 0 ? local : $"{Name} {local}";
}

/// <summary>What the fields of a divided door are called.</summary>
internal static class FieldNames
{
    /// <param name="n">From the top.</param>
    public static string Row(int n, int count) =>
        count switch
        {
            1 => "",
            2 => n == 0 ? "upper" : "lower",
            3 => n switch
            {
                0 => "upper",
                1 => "middle",
                _ => "lower",
            },
            _ => $"row {n + 1}",
        };

    /// <param name="n">From the left.</param>
    public static string Column(int n, int count) =>
        count switch
        {
            1 => "",
            2 => n == 0 ? "left" : "right",
            3 => n switch
            {
                0 => "left",
                1 => "centre",
                _ => "right",
            },
            _ => $"column {n + 1}",
        };

    public static string Joined(string first, string second) => $"{first} {second}".Trim();
}
