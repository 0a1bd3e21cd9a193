using System.Text;
using Dryfit.Recipe;

namespace Dryfit.Casework.Tests.Kit;

/// <summary>Files beside a recipe, by their paths.</summary>
internal sealed class Files(params (string Path, string Text)[] files) : INeighbourFiles
{
    public int Reads { get; private set; }

    public NeighbourFile Read(string path)
    {
        Reads++;
        var found = files.Where(f => f.Path == path).ToList();
        return found.Count == 0
            ? new NeighbourFile(path, default, $"There is no own word '{path}'.")
            : new NeighbourFile(path, Encoding.UTF8.GetBytes(found[0].Text));
    }
}
