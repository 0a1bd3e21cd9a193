using Dryfit.Recipe;

namespace Dryfit.Cli;

/// <summary>The files beside the recipe as they were read once: however often the piece is built, each is read from the disk once.</summary>
internal sealed class RememberedFiles(INeighbourFiles files) : INeighbourFiles
{
    private readonly Dictionary<string, NeighbourFile> _read = new(StringComparer.Ordinal);

    /// <summary>What was read, each file once.</summary>
    public IEnumerable<NeighbourFile> All =>
        _read.Values.Where(file => file.Trouble is null).DistinctBy(file => file.Name, StringComparer.Ordinal);

    public NeighbourFile Read(string path)
    {
        if (!_read.TryGetValue(path, out var file))
            _read.Add(path, file = files.Read(path));
        return file;
    }

    /// <summary>The same files, some of them with other bytes.</summary>
    /// <param name="bytes">The bytes by the names that files have in places.</param>
    public INeighbourFiles With(IReadOnlyDictionary<string, ReadOnlyMemory<byte>> bytes) => new Changed(this, bytes);

    private sealed class Changed(RememberedFiles files, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> bytes)
        : INeighbourFiles
    {
        public NeighbourFile Read(string path)
        {
            var file = files.Read(path);
            return bytes.TryGetValue(file.Name, out var changed) ? file with { Bytes = changed } : file;
        }
    }
}
