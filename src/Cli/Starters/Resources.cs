namespace Dryfit.Cli;

/// <summary>Files that are built into the program, by the names the project file gives them.</summary>
internal static class Resources
{
    /// <summary>Names of all in a folder, in order.</summary>
    public static IEnumerable<string> In(string folder) =>
        typeof(Resources)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    public static byte[] Read(string name)
    {
        using var stream =
            typeof(Resources).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The resource '{name}' is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
