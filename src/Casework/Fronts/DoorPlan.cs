using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>What a door is made as.</summary>
internal enum DoorKind
{
    Framed,
    Glazed,
    Slab,
}

/// <summary>Doors as the recipe asks for them, habits filled in, before any size is worked out.</summary>
internal sealed record DoorPlan
{
    public required DoorKind Kind { get; init; }

    public required bool IsPair { get; init; }

    public required Opens Opens { get; init; }

    /// <summary>The rebate in which a pair meets; null where the two only leave a gap.</summary>
    public required MeetingRebate? Meeting { get; init; }

    /// <summary>The pull or knob; null for none.</summary>
    public required HandlePlan? Handle { get; init; }

    /// <summary>The edge a single door turns on.</summary>
    public required Direction Hinged { get; init; }

    public required FrontFit Fit { get; init; }

    /// <summary>The gap between the doors of a pair.</summary>
    public required Figure PairGap { get; init; }

    public required Material Material { get; init; }

    public required Figure Stile { get; init; }

    public required Figure TopRail { get; init; }

    public required Figure BottomRail { get; init; }

    /// <summary>Middle rails, muntins and bars.</summary>
    public required Division Division { get; init; }

    /// <summary>The arch of the top rail; null where it is straight.</summary>
    public required ArchedRail? Arch { get; init; }

    /// <summary>How panels are raised; null for flat ones.</summary>
    public required RaisedPanel? Raised { get; init; }

    /// <summary>Whether panes lie in grooves for good, and not behind beads.</summary>
    public required bool IsCaptive { get; init; }

    /// <summary>The panel, or the pane of a glazed door; the door's own material for a slab, which has none.</summary>
    public required Material Infill { get; init; }

    /// <summary>Hinges for each door; null: by height and weight.</summary>
    public required int? Hinges { get; init; }

    /// <summary>Whether the rails are tenoned into mortises of the stiles; else stub tenons go into the grooves.</summary>
    public required bool Tenoned { get; init; }

    /// <summary>Whether these tenons come through the stiles.</summary>
    public bool IsThrough { get; init; }

    /// <summary>Whether stiles and outer rails meet in mitres.</summary>
    public bool IsMitred { get; init; }

    /// <summary>Whether these have splines.</summary>
    public bool IsSplined { get; init; }

    /// <summary>What kind of hinge, by the figures of its maker's sheet.</summary>
    public required HardwareFamily Hinge { get; init; }

    /// <summary>The material of a slab's bands; null for none.</summary>
    public required Material? Edging { get; init; }

    public required SourcePlace Place { get; init; }

    public static DoorPlan Read(PieceBuilder piece, FrontSite site, Node value, Scope scope)
    {
        var said = value is Mapping mapping ? new Fields(mapping, scope) : null;
        var spoken = SpokenWords.Of(value, DoorShapes.Spoken);
        var kind = (said?.Text("kind") ?? spoken[0]) switch
        {
            "glazed" => DoorKind.Glazed,
            "slab" => DoorKind.Slab,
            _ => DoorKind.Framed,
        };
        var opens = OpensWord.Read(said?.Text("opens") ?? spoken[5]);
        var leaves = said?.Text("leaves") ?? spoken[1];
        var hinged = said?.Text("hinged") ?? spoken[2]?["hinged ".Length..];
        OpensWord.Refuse(opens, leaves, hinged, value.Place);
        var isPair = leaves == "pair" || opens == Opens.Sliding;
        var materials = new FrontMaterials(piece, said, value.Place);
        var material = materials.Named("material", "fronts") ?? site.Material;
        if (
            kind == DoorKind.Slab
            && material.Kind is MaterialKind.Glass or MaterialKind.Plastic
            && opens != Opens.Sliding
        )
            throw NoRoom.Of(
                $"A door that is a single sheet of {material.Stuff} takes no hinge that is bored or let in.",
                value.Place,
                "`kind: glazed`, with the sheet in a frame; or `opens: sliding`"
            );
        var fit = new FrontFit(piece, site, said, spoken[3] ?? (opens == Opens.Sliding ? "inset" : null));
        if (opens == Opens.Sliding && fit.Hang != Hang.Inset)
            throw NoRoom.Of("Sliding doors run within their opening.", value.Place, "no `hang`, or `inset`");
        var rail = said?.LengthOrNull("rails", "rail") ?? piece.Shop.Length(DoorRules.DoorRail, "rail");
        var division = Division.Read(piece, said, kind);
        var raised = RaisedPanel.Read(piece, said, spoken[4], kind, value.Place);
        return new DoorPlan
        {
            Kind = kind,
            IsPair = isPair,
            Opens = opens,
            Hinged = OpensWord.Edge(site, opens, hinged),
            Meeting = MeetingRebate.Read(piece, said, opens, isPair),
            Handle = HandlePlan.Read(piece, said, value.Place),
            Fit = fit,
            PairGap = said?.LengthOrNull("pair gap") ?? piece.Shop.Length(GapRules.PairGap, "pair gap"),
            Material = material,
            Stile = said?.LengthOrNull("stiles", "stile") ?? piece.Shop.Length(DoorRules.DoorStile, "stile"),
            TopRail = said?.LengthOrNull("top rail") ?? rail,
            BottomRail = said?.LengthOrNull("bottom rail") ?? rail,
            Infill = kind switch
            {
                DoorKind.Framed => materials.Named("panel", "panels") ?? material,
                DoorKind.Glazed => materials.Named("glass", "panes", "glass") ?? throw NoGlass(value.Place),
                _ => material,
            },
            Division = division,
            Raised = raised,
            Arch = ArchedRail.Read(said, kind, division, raised, value.Place),
            IsCaptive = kind == DoorKind.Glazed && said?.Text("panes held by") == "groove",
            Hinges = said is not null && said.Has("hinges") ? said.Count("hinges") : null,
            Tenoned = said?.Text("joint") is "mortise and tenon" or "through mortise and tenon",
            IsMitred = said?.Text("joint") is "mitre" or "splined mitre",
            IsSplined = said?.Text("joint") == "splined mitre",
            IsThrough = said?.Text("joint") == "through mortise and tenon",
            Hinge = piece.Families.Hinge(
                said?.Text("hinge"),
                said?.PlaceOf("hinge") ?? value.Place,
                site.IsFramed && fit.Hang == Hang.Inset ? HardwareKinds.ButtHinge : HardwareKinds.CupHinge
            ),
            Edging = kind == DoorKind.Slab ? materials.Edging(material) : null,
            Place = value.Place,
        };
    }

    private static CannotBuildException NoGlass(SourcePlace place) =>
        new(
            new InputError(
                "A glazed door needs glass, and the recipe names none.",
                place,
                "`glass:` with the name of a material, or a material called `panes`"
            )
        );
}
