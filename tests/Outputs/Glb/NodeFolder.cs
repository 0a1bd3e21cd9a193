namespace Dryfit.Outputs.Tests.Glb;

/// <summary>Where what runs in node lies, with its packages.</summary>
internal static class NodeFolder
{
    /// <summary>A folder of the clone, by its path from there.</summary>
    /// <remarks>The compiler maps source paths to "/", so the folder is found from the built tests upward.</remarks>
    public static string Of(string path)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var folder = Path.Combine(at.FullName, path);
            if (Directory.Exists(folder))
                return folder;
        }

        throw new DirectoryNotFoundException(path);
    }
}
