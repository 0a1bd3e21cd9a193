using Dryfit.Recipe;

namespace Dryfit.Cli;

/// <summary>
/// The files in the recipe's folder and below, as far as the recipe asks for them. A link is not followed: what it leads to
/// may lie anywhere.
/// </summary>
internal sealed class BesideRecipe(InputFile recipe, Surroundings surroundings) : INeighbourFiles
{
    private readonly List<InputFile> _read = [];

    /// <summary>What was read, to show lines of it.</summary>
    public IReadOnlyList<InputFile> Read => _read;

    NeighbourFile INeighbourFiles.Read(string path)
    {
        var folder = Path.GetDirectoryName(recipe.Name) ?? "";
        var name = folder.Length == 0 ? path : Path.Combine(folder, path);
        try
        {
            if (Link(folder, path) is { } link)
                return Trouble(name, $"'{link}' is a link; a file of the recipe's own folder is wanted.");
            var file = InputFile.Read(name, "own word", surroundings);
            _read.Add(file);
            return new NeighbourFile(name, file.Bytes);
        }
        catch (FileTroubleException trouble)
        {
            return Trouble(name, trouble.Message);
        }
    }

    /// <summary>The first part of a path that is a link; null where none is.</summary>
    private string? Link(string folder, string path)
    {
        var at = folder;
        foreach (var part in path.Split('/'))
        {
            at = at.Length == 0 ? part : Path.Combine(at, part);
            var full = surroundings.FullPath(at);
            if (new FileInfo(full).LinkTarget is not null || new DirectoryInfo(full).LinkTarget is not null)
                return at;
        }
        return null;
    }

    private static NeighbourFile Trouble(string name, string message) => new(name, ReadOnlyMemory<byte>.Empty, message);
}
