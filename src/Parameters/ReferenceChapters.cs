using System.Text;

namespace Dryfit.Parameters;

/// <summary>The chapters of the reference page that are written by hand; their examples are tried by the tests.</summary>
public static class ReferenceChapters
{
    /// <summary>How lengths are written.</summary>
    public static string Lengths { get; } = Read("Lengths.md");

    /// <summary>How formulas are written, and what they may not say.</summary>
    public static string Formulas { get; } = Read("Formulas.md");

    private static string Read(string name)
    {
        using var stream =
            typeof(ReferenceChapters).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The chapter {name} was not built in.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
