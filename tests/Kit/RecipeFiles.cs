using Dryfit.Recipe;

namespace Dryfit.Kit;

/// <summary>The recipes that ship or stand beside tests, each sound as it stands.</summary>
internal static class RecipeFiles
{
    /// <summary>Where small pieces stand that show one word each, with their drawings.</summary>
    public const string Words = "templates/reference/words";

    /// <summary>Every folder with recipes that must build as they stand.</summary>
    public static IReadOnlyList<string> Folders { get; } = ["templates/starters", Words, "tests/Language/Fixtures"];

    /// <summary>The folder of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Full paths of the files of a folder of the repository, in the order of their names.</summary>
    public static IEnumerable<string> In(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), pattern).Order(StringComparer.Ordinal);

    /// <summary>The files beside a recipe.</summary>
    /// <param name="recipe">Full path of the recipe.</param>
    public static INeighbourFiles Beside(string recipe) => new Neighbours(Path.GetDirectoryName(recipe)!);

    private sealed class Neighbours(string folder) : INeighbourFiles
    {
        public NeighbourFile Read(string path) => new(path, File.ReadAllBytes(Path.Combine(folder, path)));
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Dryfit.slnx")))
            folder = folder.Parent ?? throw new InvalidOperationException("This runs outside the repository.");
        return folder.FullName;
    }
}
