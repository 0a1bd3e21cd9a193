namespace Dryfit.Cli;

/// <summary>Colour for a person's terminal; plain text everywhere else.</summary>
internal sealed record Paint(bool On)
{
    public string Red(string text) => Sgr("31;1", text);

    public string Yellow(string text) => Sgr("33;1", text);

    public string Blue(string text) => Sgr("34;1", text);

    public string Bold(string text) => Sgr("1", text);

    public string Dim(string text) => Sgr("2", text);

    // ECMA-48, 8.3.117 (select graphic rendition).
    private string Sgr(string code, string text) => On ? $"\u001b[{code}m{text}\u001b[0m" : text;
}
