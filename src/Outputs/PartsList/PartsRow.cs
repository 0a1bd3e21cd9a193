using Dryfit.Casework;
using Dryfit.Outputs.Alike;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>One line of the parts list: parts that are alike, with what is to be said of all of them.</summary>
/// <param name="Name">What their names have in common, or what they are for where they have nothing in common.</param>
/// <param name="Roles">What they are for; several where equal boards serve as different things.</param>
/// <param name="Kind">The parts.</param>
/// <param name="VolumeCubicMm">Volume of one of them, as the solid has it.</param>
/// <param name="MassKg">Mass of one of them.</param>
public sealed record PartsRow(
    string Name,
    IReadOnlyList<Role> Roles,
    AlikeParts Kind,
    double VolumeCubicMm,
    double MassKg
)
{
    private const double CubicMmPerCubicMetre = 1e9;

    /// <summary>The first of the parts: sizes, cuts and material are told of it.</summary>
    public Part First => Kind.Prototype;

    public int Quantity => Kind.Members.Count;

    /// <summary>All parts of a piece, one row per kind, in the order in which each is first met.</summary>
    public static IReadOnlyList<PartsRow> Of(Piece piece) =>
        [.. AlikeParts.Of(piece.Parts).Select(kind => Of(kind, piece.Grid))];

    private static PartsRow Of(AlikeParts kind, Grid grid)
    {
        Role[] roles = [.. kind.Members.Select(member => member.Part.Role).Distinct()];
        var volume = grid.ToCubicMm(kind.Prototype.Solid.Volume);
        return new(
            CommonName(kind, roles),
            roles,
            kind,
            volume,
            volume * kind.Prototype.Material.DensityKgPerM3 / CubicMmPerCubicMetre
        );
    }

    /// <summary>
    /// "upper left door stile" and "upper right door stile" are both an "upper door stile"; "wing top" and "wing bottom"
    /// are a "wing top, bottom".
    /// </summary>
    private static string CommonName(AlikeParts kind, Role[] roles)
    {
        var names = kind.Members.Select(member => member.Part.Name.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        IEnumerable<string> common = names.Aggregate(CommonWords);
        var uses = string.Join(", ", roles.Select(Words.Of));
        if (roles.Length > 1)
            common = common.Except(uses.Split([' ', ',']), StringComparer.Ordinal).Append(uses);
        var name = string.Join(' ', common);
        return name.Length > 0 ? name : uses;
    }

    /// <summary>The longest run of words that both have in the same order, gaps allowed.</summary>
    private static string[] CommonWords(string[] a, string[] b)
    {
        var length = new int[a.Length + 1, b.Length + 1];
        for (var i = a.Length - 1; i >= 0; i--)
        {
            for (var j = b.Length - 1; j >= 0; j--)
            {
                length[i, j] = string.Equals(a[i], b[j], StringComparison.Ordinal)
                    ? length[i + 1, j + 1] + 1
                    : Math.Max(length[i + 1, j], length[i, j + 1]);
            }
        }

        var common = new List<string>();
        for (int i = 0, j = 0; i < a.Length && j < b.Length; )
        {
            if (string.Equals(a[i], b[j], StringComparison.Ordinal))
            {
                common.Add(a[i++]);
                j++;
            }
            else if (length[i + 1, j] >= length[i, j + 1])
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return [.. common];
    }
}
