using System.Globalization;
using System.Text;
using System.Xml;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.FrontView;

/// <summary>Writes one SVG drawing whose user unit is a millimetre of paper, Y down. Text and names are escaped here.</summary>
internal sealed class SvgWriter : IDisposable
{
    /// <summary>Faces that most systems have one of; digits of equal width in all of them.</summary>
    private const string Fonts = "\"Helvetica Neue\", Helvetica, Arial, \"Liberation Sans\", sans-serif";

    private readonly StringBuilder _text = new();
    private readonly XmlWriter _xml;

    /// <param name="widthMm">Width of the paper.</param>
    /// <param name="heightMm">Height of the paper.</param>
    /// <param name="title">What it shows, for who cannot see it.</param>
    /// <param name="description">More of the same, or "".</param>
    public SvgWriter(double widthMm, double heightMm, string title, string description)
    {
        _xml = XmlWriter.Create(
            _text,
            new()
            {
                Indent = true,
                IndentChars = " ",
                NewLineChars = "\n",
                OmitXmlDeclaration = true,
            }
        );
        _xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Attribute("width", Number(widthMm) + "mm");
        Attribute("height", Number(heightMm) + "mm");
        Attribute("viewBox", $"0 0 {Number(widthMm)} {Number(heightMm)}");
        Attribute("role", "img");
        Attribute("font-family", Fonts);
        _xml.WriteElementString("title", "http://www.w3.org/2000/svg", PlainText.Clean(title));
        if (description.Length > 0)
            _xml.WriteElementString("desc", "http://www.w3.org/2000/svg", PlainText.Clean(description));
    }

    /// <summary>Closes the drawing and gives its text, without an XML declaration.</summary>
    public string Finish()
    {
        _xml.WriteEndElement();
        _xml.Flush();
        return _text.Append('\n').ToString();
    }

    public void Dispose() => _xml.Dispose();

    /// <summary>Opens an element that others go into; close it with <see cref="End"/>.</summary>
    public void Begin(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _xml.WriteStartElement(element, "http://www.w3.org/2000/svg");
        foreach (var (name, value) in attributes)
            Attribute(name, value);
    }

    public void End() => _xml.WriteEndElement();

    public void Shape(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Begin(element, attributes);
        End();
    }

    /// <summary>A path, with a name that shows where a pointer rests on it; "" for none.</summary>
    public void Path(string data, string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Begin("path", attributes);
        Attribute("d", data);
        if (name.Length > 0)
            _xml.WriteElementString("title", "http://www.w3.org/2000/svg", name);
        End();
    }

    public void Line(PaperPoint from, PaperPoint to, params ReadOnlySpan<(string Name, string Value)> attributes) =>
        Path($"M{from}L{to}", "", attributes);

    public void Rect(Area area, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Begin("rect", attributes);
        Attribute("x", Number(area.Left));
        Attribute("y", Number(area.Top));
        Attribute("width", Number(area.Width));
        Attribute("height", Number(area.Height));
        End();
    }

    /// <summary>One line of text.</summary>
    /// <param name="at">Where its base line starts, ends or has its middle, by the lettering.</param>
    public void Text(string text, PaperPoint at, Lettering lettering)
    {
        _xml.WriteStartElement("text", "http://www.w3.org/2000/svg");
        Attribute("stroke", "none");
        Attribute("x", Number(at.X));
        Attribute("y", Number(at.Y));
        Attribute("font-size", Number(lettering.Size));
        if (lettering.Anchor != Anchor.Start)
            Attribute("text-anchor", lettering.Anchor == Anchor.Middle ? "middle" : "end");
        if (lettering.Bold)
            Attribute("font-weight", "bold");
        Attribute("fill", lettering.Colour);
        if (lettering.ReadsUpwards)
            Attribute("transform", $"rotate(-90 {Number(at.X)} {Number(at.Y)})");
        _xml.WriteString(PlainText.Clean(text));
        _xml.WriteEndElement();
    }

    /// <summary>A number of millimetres to a thousandth, the same in every country.</summary>
    public static string Number(double value)
    {
        var rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero) + 0.0; // no minus zero
        return rounded.ToString("0.###", CultureInfo.InvariantCulture);
    }

    private void Attribute(string name, string value) => _xml.WriteAttributeString(name, value);
}

/// <summary>How a line of text is set.</summary>
/// <param name="Size">Type size in millimetres.</param>
/// <param name="ReadsUpwards">Turned a quarter, to be read from the right.</param>
internal readonly record struct Lettering(
    double Size,
    Anchor Anchor = Anchor.Start,
    bool Bold = false,
    string Colour = Ink.Black,
    bool ReadsUpwards = false
)
{
    /// <summary>Half the height of a figure in parts of the type size: how far its middle stands over the base line.</summary>
    public const double HalfFigure = 0.36;
}

/// <summary>Which end of a text stands at its point.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}
