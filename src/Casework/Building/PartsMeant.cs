namespace Dryfit.Casework.Building;

/// <summary>What a phrase means in a finished piece, read as <c>as cut</c> reads it.</summary>
public sealed record PartsMeant(IReadOnlyList<Group> Units, IReadOnlyList<Part> Parts)
{
    /// <summary>Whole doors and drawers that the phrase names, else the parts; nothing where it means neither.</summary>
    public static PartsMeant By(string phrase, Piece piece)
    {
        var meant = new Namesake(phrase);
        var isWhole = piece.Parts.Any(part => meant.IsWhole(part.Name)) || piece.Groups.Any(g => meant.IsWhole(g.Name));
        bool Means(string name) => isWhole ? meant.IsWhole(name) : meant.IsIn(name);
        var units = piece.Groups.Where(g => g.Kind is GroupKind.Door or GroupKind.Drawer && Means(g.Name)).ToList();
        return units.Count > 0
            ? new(units, [])
            : new([], [.. piece.Parts.Where(part => Says(meant, part.Role) && Means(part.Name))]);
    }

    /// <summary>Bands carry the name of their panel, and box fronts that of the drawer: they are meant where that is said.</summary>
    private static bool Says(Namesake meant, Role role) =>
        role switch
        {
            Role.Edging => meant.Says("edging"),
            Role.DrawerBoxFront => meant.Says("box"),
            _ => true,
        };
}
