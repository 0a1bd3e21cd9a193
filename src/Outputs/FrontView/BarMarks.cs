using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Draws rods and rails, which are bought by the length and no parts, where nothing stands before them.</summary>
internal static class BarMarks
{
    public static void Draw(SvgWriter svg, View view, Piece piece, VisibleSpots spots)
    {
        BoughtMarks.Draw(
            svg,
            piece,
            (hardware, part) =>
            {
                foreach (var bar in hardware.Bars)
                {
                    var (low, high) = (Seen(bar.Min, part), Seen(bar.Max, part));
                    var bounds = new Span2(low.X, low.Z, high.X, high.Z);
                    // On what looks away, or stands across the view, a bar is left out.
                    if (low.X < high.X && spots.IsClearBefore(bounds, Math.Min(low.Y, high.Y)))
                        svg.Rect(view.ToPaper(bounds));
                }
            }
        );

        Vec3 Seen(Point point, Part of) => piece.Grid.ToUnits(point).Seen(of.Turn, null, piece.Grid.UnitsPerMm);
    }
}
