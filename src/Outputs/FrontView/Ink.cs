using Dryfit.Findings;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// Every ink is dark enough on white to read in print (contrast above 4.5 to 1, WCAG 2.2), and none carries a meaning
/// that a shape or a word does not carry too.
/// </summary>
internal static class Ink
{
    public const string Black = "#111";
    public const string Grey = "#595959";
    public const string White = "#fff";
    public const string Stop = "#a8001c";
    public const string Warn = "#7a4a00";
    public const string Note = "#0b4f8a";

    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Stop => Stop,
            Severity.Warn => Warn,
            _ => Note,
        };
}

/// <summary>Line widths in millimetres: wide ones at least twice the narrow ones (ISO 128-2).</summary>
internal static class Pen
{
    /// <summary>The silhouette of the piece, outside of its edges.</summary>
    public const double Contour = 0.35;

    /// <summary>Visible edges.</summary>
    public const double Edge = 0.25;

    /// <summary>Glass, kept parts, outlines of signs.</summary>
    public const double Fine = 0.18;

    /// <summary>Dimension lines, leaders, swing marks.</summary>
    public const double Thin = 0.13;
}
