using System.Globalization;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// Names that any reader of glTF takes: letters, digits, <c>_</c> and <c>-</c>, each only once.
/// <c>upper/left-door/top-rail</c> becomes <c>upper_left-door_top-rail</c>.
/// </summary>
internal sealed class NodeNames
{
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    public string Take(string id)
    {
        var name = string.Concat(id.Select(Allowed));
        if (name.Length == 0)
            name = "unnamed";
        var unique = name;
        for (var n = 2; !_taken.Add(unique); n++)
            unique = string.Create(CultureInfo.InvariantCulture, $"{name}-{n}");
        return unique;
    }

    private static char Allowed(char c) =>
        char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c
        : c == '/' ? '_'
        : '-';
}
