using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Slips;

/// <summary>Single parts that came off the saw or the planer by another number than the piece needs: <c>as cut</c>.</summary>
internal static class PartSlips
{
    /// <summary>Parts that go wrong alike, by what they are called in the table.</summary>
    private static readonly (string Name, Role[] Roles)[] Families =
    [
        ("carcase side", [Role.Side]),
        ("partition", [Role.Partition]),
        ("top", [Role.Top, Role.Worktop]),
        ("bottom", [Role.Bottom]),
        ("shelf", [Role.Shelf]),
        ("back", [Role.Back]),
        ("stretcher or rail of a carcase", [Role.Stretcher, Role.HangingRail, Role.RackRail]),
        ("face frame", [Role.FrameStile, Role.FrameRail, Role.FrameMullion]),
        ("facing", [Role.Facing, Role.FacingStile, Role.FacingRail, Role.FacingPanel, Role.BlindPanel]),
        ("leg", [Role.Leg]),
        ("rail between legs", [Role.StandRail]),
        ("plinth or bracket", [Role.Plinth, Role.Bracket, Role.Block]),
        ("moulding, strip or filler", [Role.Moulding, Role.CoverStrip, Role.Filler, Role.ShelfLip]),
        ("edging", [Role.Edging]),
        ("door stile", [Role.DoorStile]),
        ("door rail", [Role.DoorRail]),
        ("door muntin", [Role.DoorMuntin]),
        ("panel of a door", [Role.DoorPanel]),
        ("pane", [Role.Glass]),
        ("glass bead", [Role.GlassBead]),
        ("slab door", [Role.DoorSlab]),
        ("drawer front", [Role.DrawerFront]),
        ("drawer side", [Role.DrawerSide]),
        ("front or back of a drawer box", [Role.DrawerBack, Role.DrawerBoxFront]),
        ("drawer bottom", [Role.DrawerBottom]),
        ("packer", [Role.Packer]),
        ("runner or divider of drawers", [Role.Runner, Role.Divider]),
        ("loose board or tongue", [Role.Board, Role.Tongue]),
    ];

    /// <summary>Each size of each family is a kind; every other one of them is of no weight.</summary>
    public static IEnumerable<SlipKind> Kinds { get; } =
    [
        .. Families.SelectMany(family =>
            PartSize.All.SelectMany(size => new[] { Kind(family, size, false), Kind(family, size, true) })
        ),
        Kind("part cut without its tongues", HasTongues, WithoutTongues),
        Kind("nominal for actual thickness", IsCalledThicker, NominalForActual),
    ];

    public static Slip Cut(
        SoundPiece sound,
        string kind,
        string mistake,
        PartSize size,
        Length cut,
        params IReadOnlyList<Part> parts
    ) =>
        new(
            sound,
            kind,
            mistake,
            RecipeEdit.Under(
                "as cut",
                sound,
                [.. parts.Select(p => $"\"{p.Name}\": {{ {size.Key}: {RecipeEdit.Typed(cut, sound.IsInInches)} }}")]
            ),
            [.. parts.Select(p => p.Id)]
        );

    private static SlipKind Kind((string Name, Role[] Roles) family, PartSize size, bool isOfNoWeight)
    {
        var name = $"{family.Name}, {size.Name}";
        return Kind(name, part => family.Roles.Contains(part.Role), Make) with { IsOfNoWeight = isOfNoWeight };

        Slip? Make(SoundPiece sound, Part part, Random chance)
        {
            var right = size.Of(part);
            var wrong =
                isOfNoWeight ? Mistakes.OfNoWeight(right, sound.IsInInches, chance)
                : size == PartSize.Thickness ? Mistakes.OfAThickness(right, sound.IsInInches, chance)
                : Mistakes.OfASize(right, sound.IsInInches, chance);
            return wrong is null ? null : Cut(sound, name, wrong.Mistake, size, wrong.Cut, part);
        }
    }

    private static SlipKind Kind(string name, Func<Part, bool> happensTo, Func<SoundPiece, Part, Random, Slip?> make)
    {
        return new(name, piece => piece.Parts.Any(Can), Make);

        bool Can(Part part) => !part.IsKept && !part.IsAsCut && happensTo(part);

        Slip? Make(SoundPiece sound, Random chance)
        {
            var parts = sound.Piece.Parts.Where(Can).ToList();
            return make(sound, parts[chance.Next(parts.Count)], chance);
        }
    }

    private static bool HasTongues(Part part) =>
        part.ShoulderLength is { } shoulders && shoulders.Length < part.Length.Length;

    /// <summary>Ends cut to the shoulders.</summary>
    private static Slip? WithoutTongues(SoundPiece sound, Part part, Random chance) =>
        Cut(
            sound,
            "part cut without its tongues",
            "tongues forgotten",
            PartSize.Length,
            part.ShoulderLength!.Length,
            part
        );

    private static bool IsCalledThicker(Part part) =>
        part.Material.Called is { } called && called > part.Thickness.Length;

    /// <summary>The sheet is as thick as it is called, for once; or its groove was cut by what it really measures.</summary>
    private static Slip? NominalForActual(SoundPiece sound, Part part, Random chance) =>
        Cut(
            sound,
            "nominal for actual thickness",
            "the sheet as it is called",
            PartSize.Thickness,
            part.Material.Called!.Value,
            part
        );
}

/// <summary>One of the three sizes of a part.</summary>
/// <param name="Name">In the table.</param>
/// <param name="Key">In the recipe.</param>
internal sealed record PartSize(string Name, string Key, Func<Part, Length> Of)
{
    public static PartSize Length { get; } = new("length", "length", part => part.Length.Length);

    public static PartSize Width { get; } = new("width", "width", part => part.Width.Length);

    public static PartSize Thickness { get; } = new("thickness", "thickness", part => part.Thickness.Length);

    public static IReadOnlyList<PartSize> All { get; } = [Length, Width, Thickness];
}
