using Dryfit.Casework;

namespace Dryfit.Outputs.FrontView;

/// <summary>Draws what is bought and no part, white with the line of an edge, so that it hides what is behind it.</summary>
internal static class BoughtMarks
{
    /// <param name="draw">Draws one fitting; the part is the first that it is fixed to.</param>
    public static void Draw(SvgWriter svg, Piece piece, Action<Hardware, Part> draw)
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
            if (hardware.Ties.Count > 0 && parts.TryGetValue(hardware.Ties[0], out var part))
                draw(hardware, part);
        }
        svg.End();
    }
}
