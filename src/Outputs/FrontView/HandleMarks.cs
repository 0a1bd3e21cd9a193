using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Draws pulls and knobs, which are bought and no parts, in their places and sizes.</summary>
internal static class HandleMarks
{
    public static void Draw(SvgWriter svg, View view, Piece piece, LabelField field) =>
        BoughtMarks.Draw(
            svg,
            piece,
            (hardware, part) =>
            {
                if (hardware.Handle is { } size)
                    Draw(svg, view, piece, field, (hardware.At, size, part));
            }
        );

    private static void Draw(
        SvgWriter svg,
        View view,
        Piece piece,
        LabelField field,
        (Point At, HandleSize Size, Part On) handle
    )
    {
        var size = handle.Size;
        var (length, across) = (piece.Grid.ToUnits(size.Length) / 2, piece.Grid.ToUnits(size.Across) / 2);
        var half = size.Along == Axis.X ? new Vec3(length, 0, across) : new Vec3(across, 0, length);
        var at = piece.Grid.ToUnits(handle.At);
        var (low, high) = (
            (at - half).Seen(handle.On.Turn, null, piece.Grid.UnitsPerMm),
            (at + half).Seen(handle.On.Turn, null, piece.Grid.UnitsPerMm)
        );
        // On a front that looks away nothing of it is seen.
        if (low.X >= high.X)
            return;
        var area = view.ToPaper(new Span2(low.X, low.Z, high.X, high.Z));
        field.Take(area);
        // A knob is as wide as long, and round; a pull has rounded ends.
        var radius = SvgWriter.Number(Math.Min(area.Width, area.Height) / 2);
        svg.Rect(area, ("rx", radius), ("ry", radius));
    }
}
