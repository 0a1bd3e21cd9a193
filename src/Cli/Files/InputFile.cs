using System.Text;
using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Cli;

/// <summary>A recipe or shop file as read: its name as the user gave it, and its bytes.</summary>
internal sealed record InputFile(string Name, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Reads a file named on the command line.</summary>
    /// <param name="what">What it is for the user: "recipe", "shop file".</param>
    /// <exception cref="FileTroubleException">It is not there, is a folder, or may not be read.</exception>
    public static InputFile Read(string name, string what, Surroundings surroundings)
    {
        if (name.Length == 0)
            throw new FileTroubleException($"The name of the {what} is empty.");
        try
        {
            var path = surroundings.FullPath(name);
            if (Directory.Exists(path))
                throw new FileTroubleException($"'{name}' is a folder; a {what} is a file.{Inside(path, name)}");
            // One byte more than a recipe may have is enough for the reader to refuse it; a device has no end.
            using var stream = new FileStream(
                path,
                FileMode.Open,
                FileAccess.Read,
                FileShare.ReadWrite | FileShare.Delete
            );
            var bytes = new byte[ReadLimits.Bytes + 1];
            var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return new InputFile(name, bytes.AsMemory(0, length));
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new FileTroubleException($"There is no {what} '{name}'.{Nearest(name, surroundings)}", fault);
        }
        catch (Exception fault) when (FileTroubleException.IsRefusal(fault) || fault is ArgumentException)
        {
            throw new FileTroubleException(
                $"The {what} '{name}' cannot be read: {FileTroubleException.Reason(fault)}.",
                fault
            );
        }
    }

    /// <summary>The bytes as text; what is no UTF-8 shows as U+FFFD.</summary>
    public string Text => Encoding.UTF8.GetString(Bytes.Span).TrimStart('\uFEFF');

    /// <summary>Reads a file of a folder named on the command line; null where the folder has none of that name.</summary>
    /// <exception cref="FileTroubleException">The folder is not there, or the file may not be read.</exception>
    public static InputFile? ReadIfThere(string folder, string name, Surroundings surroundings)
    {
        if (folder.Length == 0 || !Directory.Exists(surroundings.FullPath(folder)))
            throw new FileTroubleException($"There is no folder '{folder}'.");
        var path = Path.Combine(folder, name);
        return File.Exists(surroundings.FullPath(path)) ? Read(path, "template", surroundings) : null;
    }

    private static string Inside(string folder, string name)
    {
        var recipes = RecipesIn(folder);
        return recipes.Count == 0 ? "" : $" Did you mean '{Path.Combine(name, recipes[0])}'?";
    }

    private static string Nearest(string name, Surroundings surroundings)
    {
        var (folder, file) = (Path.GetDirectoryName(name) ?? "", Path.GetFileName(name));
        var recipes = RecipesIn(surroundings.FullPath(folder.Length == 0 ? "." : folder));
        var near =
            recipes.FirstOrDefault(recipe => recipe == file + RecipeEnding || recipe == file + ".yaml")
            ?? NearestWord.To(file, recipes);
        return near is null ? "" : $" Did you mean '{Path.Combine(folder, near)}'?";
    }

    /// <summary>How recipes' names end.</summary>
    public const string RecipeEnding = ".dryfit.yaml";

    private static List<string> RecipesIn(string folder)
    {
        try
        {
            return
            [
                .. Directory
                    .EnumerateFiles(folder, "*.yaml")
                    .Take(1000)
                    .Select(path => Path.GetFileName(path))
                    .Order(StringComparer.Ordinal),
            ];
        }
        catch (Exception fault) when (FileTroubleException.IsRefusal(fault) || fault is ArgumentException)
        {
            return []; // Only a hint was lost.
        }
    }
}
