using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Draws pulls and knobs, which are bought and no parts, in their places and sizes.</summary>
internal static class HandleMarks
{
    public static void Draw(SvgWriter svg, View view, Piece piece, LabelField field)
    {
        svg.Begin(
            "g",
            ("fill", Ink.White),
            ("stroke", Ink.Black),
            ("stroke-width", SvgWriter.Number(Pen.Edge)),
            ("stroke-linejoin", "round")
        );
        var parts = piece.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        foreach (var hardware in piece.Hardware)
        {
            if (hardware.Handle is not { } size || !parts.TryGetValue(hardware.Ties[0], out var part))
                continue;
            var (length, across) = (piece.Grid.ToUnits(size.Length) / 2, piece.Grid.ToUnits(size.Across) / 2);
            var half = size.Along == Axis.X ? new Vec3(length, 0, across) : new Vec3(across, 0, length);
            var at = piece.Grid.ToUnits(hardware.At);
            var (low, high) = (
                (at - half).Seen(part.Turn, null, piece.Grid.UnitsPerMm),
                (at + half).Seen(part.Turn, null, piece.Grid.UnitsPerMm)
            );
            // On a front that looks away nothing of it is seen.
            if (low.X >= high.X)
                continue;
            var area = view.ToPaper(new Span2(low.X, low.Z, high.X, high.Z));
            field.Take(area);
            // A knob is as wide as long, and round; a pull has rounded ends.
            var radius = SvgWriter.Number(Math.Min(area.Width, area.Height) / 2);
            svg.Rect(area, ("rx", radius), ("ry", radius));
        }
        svg.End();
    }
}
