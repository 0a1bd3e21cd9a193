using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Tests.Shaping;

/// <summary>One board on the bench, to be cut and weighed.</summary>
internal sealed class ShapedBoard
{
    private ShapedBoard(PartDraft draft) => Draft = draft;

    public PartDraft Draft { get; }

    /// <summary>Sizes in millimetres; its left, front, lower corner is at zero.</summary>
    public static ShapedBoard Of(int length, int width, int thickness, Direction along, Direction shows)
    {
        var lie = Lie.Of(along, shows);
        var sizes = new Dictionary<Axis, Length>
        {
            [lie.Along.Axis()] = Mm(length),
            [lie.Across.Axis()] = Mm(width),
            [lie.Shows.Axis()] = Mm(thickness),
        };
        var extent = new Extent(default, new(sizes[Axis.X], sizes[Axis.Y], sizes[Axis.Z]));
        var origin = extent.Min;
        foreach (var way in (Direction[])[lie.Along, lie.Across, lie.Shows])
            origin = origin.With(way.Axis(), extent.Side(way.Opposite()));
        var place = new SourcePlace("test", 1, 1, 1);
        return new(
            new PartDraft
            {
                Id = "board",
                Name = "board",
                Role = Role.Shelf,
                Group = new GroupDraft("piece", "piece", GroupKind.Piece, null, place),
                Material = new Material(
                    "body",
                    MaterialKind.Solid,
                    "pine",
                    Size(thickness),
                    null,
                    null,
                    true,
                    500,
                    "the test",
                    place
                ),
                Length = Size(length),
                Width = Size(width),
                Thickness = Size(thickness),
                Place = new Placement(origin, lie),
                Reckoned = extent,
                Extent = extent,
                Source = place,
            }
        );
    }

    /// <summary>What is left, in cubic millimetres.</summary>
    public double VolumeMm3
    {
        get
        {
            var grid = new Grid(640);
            return grid.ToCubicMm(new Board(Draft).Build(grid).Volume);
        }
    }

    /// <summary>The same with rounds truly round.</summary>
    public double TrueVolumeMm3
    {
        get
        {
            var grid = new Grid(640);
            return grid.ToCubicMm(Solids.Round.Volume(new Board(Draft).Build(grid)));
        }
    }

    public static Length Mm(Rational mm) => Length.FromMillimetres(mm);

    private static Figure Size(int mm) => Figure.Given("size", Mm(mm), new TradeOrigin("the test"));
}
