using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>A drawer as the recipe asks for it, habits filled in, before any size is worked out.</summary>
internal sealed record DrawerPlan
{
    public required FrontFit Fit { get; init; }

    public required Material Front { get; init; }

    public required Material Box { get; init; }

    public required Material Bottom { get; init; }

    /// <summary>Null: by the opening.</summary>
    public required Figure? BoxHeight { get; init; }

    /// <summary>Its slides, by the figures of their maker's sheet.</summary>
    public required HardwareFamily Slide { get; init; }

    /// <summary>Null: the longest that goes in.</summary>
    public required Figure? SlideLength { get; init; }

    /// <summary>The material of the front's bands; null for none.</summary>
    public required Material? Edging { get; init; }

    public required SourcePlace Place { get; init; }

    public static DrawerPlan Read(PieceBuilder piece, FrontSite site, Node? value, Scope scope)
    {
        var place = value?.Place ?? site.Opening.Source;
        var said = value is Mapping mapping ? new Fields(mapping, scope) : null;
        var materials = new FrontMaterials(piece, said, place);
        var front = materials.Named("front", "fronts") ?? site.Material;
        var box = materials.Named("box", "boxes") ?? site.Material;
        return new DrawerPlan
        {
            Fit = new FrontFit(piece, site, said, SpokenWords.Of(value, DrawerShapes.Spoken)[0]),
            Front = front,
            Box = box,
            Bottom = materials.Named("bottom", "bottoms", "backs") ?? box,
            BoxHeight = said?.LengthOrNull("box height"),
            Slide = piece.Families.Slide(said?.Text("slides"), said?.PlaceOf("slides") ?? place),
            SlideLength = said?.LengthOrNull("slide length"),
            Edging = materials.Edging(front),
            Place = place,
        };
    }
}
