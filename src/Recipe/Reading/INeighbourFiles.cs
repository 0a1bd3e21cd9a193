namespace Dryfit.Recipe;

/// <summary>The files that lie in the recipe's own folder: all that a recipe may ask the outside world for.</summary>
public interface INeighbourFiles
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">From the recipe's folder, with <c>/</c> between its parts; it names nothing outside of it.</param>
    NeighbourFile Read(string path);
}

/// <summary>A file beside the recipe as read, or why it could not be.</summary>
/// <param name="Name">As the user would name it, for places.</param>
/// <param name="Bytes">Its bytes; none where there was trouble.</param>
/// <param name="Trouble">What is wrong, as a sentence; null where it was read.</param>
public sealed record NeighbourFile(string Name, ReadOnlyMemory<byte> Bytes, string? Trouble = null);
