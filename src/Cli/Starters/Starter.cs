using System.Text;

namespace Dryfit.Cli;

/// <summary>A recipe or shop file that ships with the tool, for a maker to start from.</summary>
/// <param name="Name">As it is asked for: <c>studio-cupboard</c>, <c>shop-inches</c>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">The whole file.</param>
internal sealed record Starter(string Name, StarterKind Kind, string Text)
{
    private const string SchemaComment = "# yaml-language-server: $schema=";

    /// <summary>All of them: recipes, then shop files, by name.</summary>
    public static IReadOnlyList<Starter> All { get; } =
    [.. new[] { StarterKind.Recipe, StarterKind.Shop }.SelectMany(kind => kind.Starters())];

    /// <summary>What it is, in its own words: its first comment that is not for an editor.</summary>
    public string Description =>
        Text.Split('\n')
            .Where(line => line.StartsWith('#') && !line.StartsWith(SchemaComment, StringComparison.Ordinal))
            .Select(line => line[1..].Trim())
            .FirstOrDefault(line => line.Length > 0, "");

    /// <summary>The text for a place outside the clone: editors find the schema beside it.</summary>
    public string TextBesideSchema =>
        string.Join(
            '\n',
            Text.Split('\n')
                .Select(line =>
                    line.StartsWith(SchemaComment, StringComparison.Ordinal)
                        ? $"{SchemaComment}./{Kind.SchemaFile}"
                        : line
                )
        );
}

/// <summary>What a starter is, where it lies among the program's resources, and the schema that belongs to it.</summary>
/// <param name="Ending">How names of such files end.</param>
/// <param name="Folder">The folder of resources they lie in.</param>
/// <param name="Prefix">What their names are given in front.</param>
/// <param name="SchemaResource">The resource that holds the schema.</param>
/// <param name="SchemaFile">How the schema is called beside a new file.</param>
internal sealed record StarterKind(
    string Ending,
    string Folder,
    string Prefix,
    string SchemaResource,
    string SchemaFile
)
{
    public static StarterKind Recipe { get; } =
        new(InputFile.RecipeEnding, "starters/", "", "schema/recipe.schema.json", "dryfit.schema.json");

    public static StarterKind Shop { get; } =
        new(".dryfit-shop.yaml", "shop/", "shop-", "schema/shop.schema.json", "dryfit-shop.schema.json");

    /// <summary>The schema's content.</summary>
    public byte[] Schema => Resources.Read(SchemaResource);

    public IEnumerable<Starter> Starters() =>
        Resources
            .In(Folder)
            .Where(name => name.EndsWith(Ending, StringComparison.Ordinal))
            .Select(name => new Starter(
                Prefix + name[Folder.Length..^Ending.Length],
                this,
                Encoding.UTF8.GetString(Resources.Read(name))
            ));
}
