using System.Globalization;
using Dryfit.Casework;

namespace Dryfit.Outputs.Text;

/// <summary>What a maker calls the parts whose ids a finding carries.</summary>
internal sealed class PartNames
{
    private readonly Dictionary<string, string> _byId = new(StringComparer.Ordinal);

    private PartNames() { }

    /// <summary>The names of all parts, groups and openings; a part wins where two share an id.</summary>
    public static PartNames Of(Piece piece)
    {
        var names = new PartNames();
        foreach (var part in piece.Parts)
            names._byId.TryAdd(part.Id, PlainText.Apart(part.Name));
        foreach (var group in piece.Groups)
            names._byId.TryAdd(group.Id, PlainText.Apart(group.Name));
        foreach (var opening in piece.Openings)
            names._byId.TryAdd(opening.Id, PlainText.Apart(opening.Name));
        return names;
    }

    /// <summary>The name behind an id; the id itself where the piece knows none.</summary>
    public string this[string id] => _byId.TryGetValue(id, out var name) ? name : PlainText.Clean(id);

    /// <summary>Names in a row, no more than so many of them.</summary>
    public string Listed(IReadOnlyList<string> ids, int most)
    {
        var listed = string.Join(", ", ids.Take(most).Select(id => this[id]));
        return ids.Count > most
            ? string.Create(CultureInfo.InvariantCulture, $"{listed} and {ids.Count - most} more")
            : listed;
    }
}
