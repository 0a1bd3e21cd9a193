using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>How the corners of a drawer's box are made.</summary>
internal enum DrawerJoint
{
    /// <summary>Box front and back let into rabbets at the ends of the sides.</summary>
    Rabbeted,

    /// <summary>The same with the back in dados, in from the ends.</summary>
    Dadoed,

    /// <summary>Through dovetails, tails on the sides.</summary>
    Dovetailed,

    /// <summary>Half-blind dovetails at the front, through ones at the back.</summary>
    HalfBlind,

    BoxJointed,

    /// <summary>Box front and back between the sides, screwed through them.</summary>
    Screwed,
}

/// <summary>How the bottom of a drawer is held.</summary>
internal enum BottomSet
{
    /// <summary>In a groove of all four walls.</summary>
    Grooved,

    /// <summary>Slid into grooves of the sides and the front, under the back and screwed to it.</summary>
    SlidIn,

    /// <summary>Screwed on from below.</summary>
    Planted,
}

/// <summary>What a drawer runs on.</summary>
internal enum DrawerRunning
{
    /// <summary>Slides that are bought, beside or under it.</summary>
    Slides,

    /// <summary>Wooden runners under its sides, with kickers over them where there is room.</summary>
    Runners,

    /// <summary>Wooden strips beside it, in grooves of its sides.</summary>
    SideHung,
}

/// <summary>A drawer as the recipe asks for it, habits filled in, before any size is worked out.</summary>
internal sealed record DrawerPlan
{
    public required FrontFit Fit { get; init; }

    public required Material Front { get; init; }

    public required Material Box { get; init; }

    public required Material Bottom { get; init; }

    public required DrawerJoint Joint { get; init; }

    public required BottomSet BottomSet { get; init; }

    /// <summary>Whether the front of the box itself closes the opening.</summary>
    public required bool OwnFront { get; init; }

    public required DrawerRunning Running { get; init; }

    /// <summary>Null: by the opening.</summary>
    public required Figure? BoxHeight { get; init; }

    /// <summary>Its slides, by the figures of their maker's sheet; the house's usual where it runs on wood.</summary>
    public required HardwareFamily Slide { get; init; }

    /// <summary>The material of runners, kickers and strips.</summary>
    public required Material Runners { get; init; }

    /// <summary>Null: the longest that goes in.</summary>
    public required Figure? SlideLength { get; init; }

    /// <summary>The pull or knob; null for none.</summary>
    public required HandlePlan? Handle { get; init; }

    /// <summary>The material of the front's bands; null for none.</summary>
    public required Material? Edging { get; init; }

    public required DividersPlan? Dividers { get; init; }

    /// <summary>The old box that is used again; null for a new one.</summary>
    public required OldBoxPlan? Old { get; init; }

    public required SourcePlace Place { get; init; }

    /// <summary>What the front of the box is made of.</summary>
    public Material Face => OwnFront ? Front : Box;

    public static DrawerPlan Read(PieceBuilder piece, FrontSite site, Node? value, Scope scope)
    {
        var place = value?.Place ?? site.Opening.Source;
        var said = value is Mapping mapping ? new Fields(mapping, scope) : null;
        var spoken = SpokenWords.Of(value, DrawerShapes.Spoken);
        var materials = new FrontMaterials(piece, said, place);
        var front = materials.Named("front", "fronts") ?? site.Material;
        var box = materials.Named("box", "boxes") ?? site.Material;
        var slides = said?.Text("slides") ?? spoken[2] ?? piece.Families.Chosen("slides");
        var running = slides switch
        {
            "runners" => DrawerRunning.Runners,
            "side hung" => DrawerRunning.SideHung,
            _ => DrawerRunning.Slides,
        };
        var slidesPlace = said?.PlaceOf("slides") ?? place;
        return new DrawerPlan
        {
            Fit = new FrontFit(piece, site, said, spoken[0]),
            Front = front,
            Box = box,
            Bottom = materials.Named("bottom", "bottoms", "backs") ?? box,
            Joint = (said?.Text("joint") ?? spoken[1]) switch
            {
                "dadoed" => DrawerJoint.Dadoed,
                "dovetailed" => DrawerJoint.Dovetailed,
                "half-blind dovetailed" => DrawerJoint.HalfBlind,
                "box jointed" => DrawerJoint.BoxJointed,
                "screwed" => DrawerJoint.Screwed,
                _ => DrawerJoint.Rabbeted,
            },
            BottomSet = said?.Text("bottom set") switch
            {
                "slid in" => BottomSet.SlidIn,
                "planted" => BottomSet.Planted,
                _ => BottomSet.Grooved,
            },
            OwnFront = said?.YesNo("own front") ?? false,
            Running = running,
            BoxHeight = said?.LengthOrNull("box height"),
            Slide = piece.Families.Slide(running == DrawerRunning.Slides ? slides : "side", slidesPlace),
            Runners = piece.Materials.Has("runners") ? piece.Materials.Get("runners", place) : box,
            SlideLength = said?.LengthOrNull("slide length"),
            Handle = HandlePlan.Read(piece, said, place),
            Edging = materials.Edging(front),
            Dividers = DividersPlan.Read(piece, said, box),
            Old = OldBoxPlan.Read(said, box),
            Place = place,
        };
    }
}
