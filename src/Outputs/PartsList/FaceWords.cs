using Dryfit.Casework;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>Which face of a board is seen, as it stands in the piece: the one that cuts are told from.</summary>
internal static class FaceWords
{
    /// <summary>"left", or "left, right" where equal boards show different ways; nothing for what has no face of its own.</summary>
    public static string Of(PartsRow row) =>
        string.Join(
            ", ",
            row.Kind.Members.Select(member => member.Part)
                .Where(part =>
                    part.Role is not (Role.Edging or Role.Tongue)
                    && part.Material.Kind is MaterialKind.Solid or MaterialKind.Sheet
                )
                .Select(part => Words.Of(part.Place.Lie.Shows))
                .Distinct(StringComparer.Ordinal)
        );
}
