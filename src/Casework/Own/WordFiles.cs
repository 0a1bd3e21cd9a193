using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Recipe;

namespace Dryfit.Casework.Own;

/// <summary>Reads the files of own words, each once: only such as lie in the recipe's folder, and not too much of them.</summary>
internal sealed class WordFiles(Mapping recipe, INeighbourFiles? files)
{
    private const int MostFiles = 50;
    private const int LongestPath = 200;

    private readonly Dictionary<string, Result<Mapping>> _read = new(StringComparer.Ordinal);
    private int _bytes;

    /// <summary>The file of a word, or what is wrong with it; said once, at its first use.</summary>
    /// <param name="word">The word's name as it is used.</param>
    public Result<Mapping> Read(Scalar word)
    {
        if (PathOf(word, out var said) is not { } path)
            return Refuse(Unknown(word));
        if (Wrong(path) is { } wrong)
            return Refuse(
                new InputError(
                    $"{Excerpt.Quote(path)} {wrong}",
                    said.Place,
                    "a file in the recipe's folder: words/spice-rack.yaml"
                )
            );
        if (_read.TryGetValue(path, out var before))
            return before with { Errors = [] };
        return _read[path] = ReadFile(path, word, said);
    }

    private Result<Mapping> ReadFile(string path, Scalar word, Scalar said)
    {
        if (files is null)
            return Refuse(new InputError("Own words cannot be read here.", word.Place, "a recipe that is a file"));
        if (_read.Count >= MostFiles)
            return Refuse(new InputError($"There are more than {MostFiles} files of own words.", word.Place, "fewer"));
        var file = files.Read(path);
        if (file.Trouble is { } trouble)
            return Refuse(new InputError(trouble, said.Place, "a file in the recipe's folder"));
        _bytes += file.Bytes.Length;
        if (_bytes > ReadLimits.Bytes)
            return Refuse(new InputError("The files of own words are larger than 1 MiB in all.", word.Place, "less"));
        var read = RecipeReader.Read(file.Name, file.Bytes);
        return read.Errors.Count == 0
            ? read
            : new(
                null,
                [
                    .. read.Errors.Select(e =>
                        e with
                        {
                            Place = e.Place is null ? word.Place : e.Place with { UsedAt = word.Place },
                        }
                    ),
                ]
            );
    }

    /// <summary>Where the file of a word is, from the recipe's folder, and what in the recipe says so.</summary>
    private string? PathOf(Scalar word, out Scalar said)
    {
        said = word;
        switch (recipe["words"])
        {
            case Scalar { IsEmpty: false } folder:
                said = folder;
                return $"{folder.Text.Trim().TrimEnd('/')}/{Slug.Of(word.Text)}{OwnWord.Ending}";
            case Mapping names when names[word.Text.Trim()] is Scalar path:
                said = path;
                return path.Text.Trim();
            default:
                return null;
        }
    }

    private InputError Unknown(Scalar word)
    {
        IReadOnlyList<string> known = [.. (recipe["words"] as Mapping)?.Entries.Select(e => e.Key) ?? []];
        return new(
            $"There is no own word {Excerpt.Quote(word.Text)}.",
            word.Place,
            known.Count == 0 ? "words: in the recipe, with the word's name and its file" : ShapeWords.OneOf(known),
            NearestWord.To(word.Text, known)
        );
    }

    /// <summary>What is wrong with a path, as the end of a sentence; a file lies in the recipe's folder, or it is not read.</summary>
    private static string? Wrong(string path)
    {
        if (path.Length > LongestPath)
            return "is longer than any path a maker writes.";
        if (path.StartsWith('/') || path.StartsWith('~') || path.Contains(':', StringComparison.Ordinal))
            return "is not told from the recipe's folder.";
        if (path.Contains('\\', StringComparison.Ordinal))
            return "has a backslash; the parts of a path are parted by /.";
        if (path.Any(char.IsControl))
            return "is no name of a file.";
        var parts = path.Split('/');
        if (parts.Contains("..", StringComparer.Ordinal))
            return "leads out of the recipe's folder.";
        return parts.Any(part => part.Trim().Length == 0 || part == ".") ? "is no path to a file." : null;
    }

    private static Result<Mapping> Refuse(InputError error) => new(null, [error]);
}
