using System.Text;

namespace Dryfit.Cli;

/// <summary>A recipe or shop file that ships with the tool, for a maker to start from.</summary>
/// <param name="Name">As it is asked for: <c>pottery-cupboard</c>.</param>
/// <param name="Text">The whole file.</param>
internal sealed record Starter(string Name, string Text)
{
    /// <summary>The schema that editors complete recipes by, as it is named beside a new recipe.</summary>
    public const string SchemaFile = "dryfit.schema.json";

    private const string SchemaComment = "# yaml-language-server: $schema=";
    private const string Folder = "starters/";
    private const string SchemaResource = "schema/recipe.schema.json";

    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<Starter> All { get; } =
    [
        .. typeof(Starter)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name => new Starter(
                name[Folder.Length..^InputFile.RecipeEnding.Length],
                Encoding.UTF8.GetString(Resource(name))
            )),
    ];

    /// <summary>The schema's content.</summary>
    public static byte[]? Schema =>
        typeof(Starter).Assembly.GetManifestResourceInfo(SchemaResource) is null ? null : Resource(SchemaResource);

    /// <summary>What it is, in its own words: its first comment that is not for an editor, or its note.</summary>
    public string Description =>
        Text.Split('\n')
            .Where(line => !line.StartsWith(SchemaComment, StringComparison.Ordinal))
            .Select(line =>
                line.StartsWith('#') ? line[1..]
                : line.StartsWith("note:", StringComparison.Ordinal) ? line["note:".Length..]
                : ""
            )
            .Select(line => line.Trim())
            .FirstOrDefault(line => line.Length > 0, "");

    /// <summary>The text for a place outside the clone: editors find the schema beside it.</summary>
    public string TextBesideSchema =>
        string.Join(
            '\n',
            Text.Split('\n')
                .Select(line =>
                    line.StartsWith(SchemaComment, StringComparison.Ordinal) ? SchemaComment + "./" + SchemaFile : line
                )
        );

    private static byte[] Resource(string name)
    {
        using var stream =
            typeof(Starter).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The resource '{name}' is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
