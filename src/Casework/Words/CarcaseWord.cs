using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Faces;
using Dryfit.Casework.Facings;
using Dryfit.Casework.Hanging;
using Dryfit.Casework.Own;
using Dryfit.Casework.Room;
using Dryfit.Casework.Shelving;
using Dryfit.Casework.Sides;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary>One of the recipe's <c>carcases:</c></summary>
internal static class CarcaseWord
{
    public static RecordShape Word { get; } =
        new(
            "carcase",
            "A box with what stands before, in and under it. Sides, bottom, and a top panel or stretchers come by themselves.",
            "base:\n  size: [54, 34, 19]\n  stands on: { legs: 2 1/4 }\n  face frame: { stiles: 1 3/4 }\n  front: { doors: framed pair }\n",
            () =>
                [
                    new(
                        "size",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 3, 3),
                        "Width, height and depth outside: with its stand and the thickness of its top, without overhangs.",
                        Required: true
                    ),
                    .. PlaceWord.Fields,
                    new(
                        "material",
                        new NameShape("material"),
                        "What the box is made of.",
                        Default: "the material called body"
                    ),
                    new("stands on", StandWord.Word, "Legs, a plinth or a toe space.", Default: "its own sides"),
                    new(
                        "hangs on",
                        HangsWord.Word,
                        "What it hangs on the wall by, where it stands on nothing.",
                        Default: "it stands"
                    ),
                    new(
                        "face frame",
                        new EitherShape(FaceFrameWord.Word, new ChoiceShape("none"), new BareShape()),
                        "A frame on the front; the key alone is one by the shop's habits.",
                        Default: "none: a frameless carcase"
                    ),
                    new(
                        "front",
                        new EitherShape(RegionWord.Word, OwnWord.Use),
                        "What the front is divided into.",
                        Default: "one open bay"
                    ),
                    new(
                        "faced",
                        FacedWord.Word,
                        "What is planted on ends and back that are seen.",
                        Default: "nothing: the sides themselves are seen"
                    ),
                    new(
                        "sides",
                        SidesWord.Shape,
                        "Sides that are frames with panels: `framed` for both by the shop's habits.",
                        Default: "boards of the carcase's material"
                    ),
                    new(
                        "diagonal",
                        DiagonalWord.Word,
                        "A front across the corner of two walls, at 45 degrees.",
                        Default: "square"
                    ),
                    new(
                        "canted",
                        CantedWord.Word,
                        "The open end of a run with its free front corner cut off.",
                        Default: "a whole carcase"
                    ),
                    new(
                        "blind",
                        BlindWord.Word,
                        "An end of the front behind another run, closed by a panel.",
                        Default: "none"
                    ),
                    new(
                        "filler",
                        FillerWord.Shape,
                        "A strip that closes the gap to the carcase it stands beside, flush with its own front: of the material of its fronts, or of another.",
                        Default: "none: the gap stays open"
                    ),
                    new(
                        "scribes",
                        ScribesWord.Shape,
                        "Strips at both walls of the space it stands in, sawn along what was measured: of the material of its fronts, or of another.",
                        Default: "none: the gaps stay open"
                    ),
                    new(
                        "floor scribe",
                        ScribesWord.Shape,
                        "A strip before its plinth or toe board, from wall to wall and down to the floor as measured.",
                        Default: "none"
                    ),
                    new(
                        "fronts",
                        new NameShape("material"),
                        "What doors and drawer fronts are made of.",
                        Default: "the material called fronts, or the carcase's own"
                    ),
                    new(
                        "front edges",
                        EdgeWord.Shape,
                        "The shape run round the outer edges of doors and drawer fronts.",
                        Default: "square"
                    ),
                    new(
                        "grain runs on",
                        new ChoiceShape("across", "down"),
                        "Slab doors and drawer fronts in one line are cut from one board one after the other, so that the grain runs on: across each row, or down each column. The cut list tells where in the board each lies.",
                        Default: "no"
                    ),
                    new(
                        "show faces",
                        ShowFacesWord.Shape,
                        "Which faces of its panels get the good face of their stuff.",
                        Default: "the outside of the sides, the upper face of what lies, the front of the back"
                    ),
                    new("shelves", ShelvesWord.Word, "Shelves behind every opening without a drawer."),
                    new(
                        "back",
                        BackWord.Shape,
                        "The back.",
                        Default: "rabbeted behind a face frame, grooved without one or where it hangs"
                    ),
                    new(
                        "top",
                        new EitherShape(TopWord.Word, new ChoiceShape("none"), new BareShape()),
                        "A board that lies on the carcase; the key alone is a top without overhang.",
                        Default: "none"
                    ),
                    new("head", HeadWord.Word, "Frieze and cornice round its head.", Default: "none"),
                    new(
                        "closed by",
                        new ChoiceShape("panel", "stretchers"),
                        "What closes the box above.",
                        Default: "stretchers under a top that is deep enough for two, else a panel"
                    ),
                    new(
                        "joint",
                        new ChoiceShape(
                            "dado",
                            "shouldered dado",
                            "dowels",
                            "biscuits",
                            "loose tongue",
                            "screws",
                            "plugged screws",
                            "connectors"
                        ),
                        "How flat panels meet the uprights; all but screws and connectors are glued.",
                        Default: "dado behind a face frame, dowels without one"
                    ),
                    CornersWord.Field,
                    new(
                        "edging",
                        new NameShape("material"),
                        "The band on the front edges of sheet goods: a material as thick as the band.",
                        Default: "none"
                    ),
                ]
        );

    public static NamedShape Shape { get; } = new(Word, "carcase");

    /// <summary>Reads a carcase whose place and size are settled.</summary>
    /// <param name="isCovered">Whether a worktop lies on it.</param>
    public static CarcasePlan Read(Fields fields, PieceBuilder piece, GroupDraft group, Body body, bool isCovered)
    {
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : piece.Materials.Get("body", fields.Place);
        var face = FaceFrameWord.Read(fields, piece, material);
        var top = TopWord.Read(fields, piece, material);
        var fronts =
            fields.Text("fronts") is { } said ? piece.Materials.Get(said, fields.PlaceOf("fronts"))
            : piece.Materials.Has("fronts") ? piece.Materials.Get("fronts", fields.Place)
            : material;
        if (isCovered && top is not null)
            throw new CannotBuildException(
                new InputError(
                    $"The {body.Name} has a top of its own and lies under a worktop.",
                    fields.PlaceOf("top"),
                    "one of the two"
                )
            );
        var hangs = HangsWord.Read(fields, piece, material);
        var corners = CornersWord.Read(fields);
        var plan = new CarcasePlan
        {
            Group = group,
            Envelope = body.Envelope,
            Width = body.Width,
            Height = body.Height,
            Depth = body.Depth,
            Body = material,
            Edging = fields.Text("edging") is { } band ? piece.Materials.Get(band, fields.PlaceOf("edging")) : null,
            Joint = fields.Text("joint") switch
            {
                "dado" => PanelJoint.Dado,
                "dowels" => PanelJoint.Dowels,
                "screws" => PanelJoint.Screws,
                "shouldered dado" => PanelJoint.ShoulderedDado,
                "biscuits" => PanelJoint.Biscuits,
                "loose tongue" => PanelJoint.LooseTongue,
                "plugged screws" => PanelJoint.PluggedScrews,
                "connectors" => PanelJoint.Connectors,
                _ => face is null ? PanelJoint.Dowels : PanelJoint.Dado,
            },
            Corners = corners,
            ClosedBy = fields.Text("closed by") switch
            {
                "panel" => ClosedBy.Panel,
                "stretchers" => ClosedBy.Stretchers,
                _ when corners is { Top: not CornerJoint.AsPanels } => ClosedBy.Panel,
                _ => (top is null && !isCovered) || IsShallow(piece, body) ? ClosedBy.Panel : ClosedBy.Stretchers,
            },
            Face = face,
            Back = BackWord.Read(fields, piece, material, face is not null && hangs is null),
            Top = top,
            IsCovered = isCovered,
            FrontEdge = EdgeWord.Read(fields, "front edges", piece.Scope)?.Shape,
            GrainRunsOn = fields.Text("grain runs on") is { } runs
                ? new(runs == "across", fields.PlaceOf("grain runs on"))
                : null,
            Head = HeadWord.Read(fields, piece, material),
            Stand = StandWord.Read(fields.Map("stands on"), piece, material),
            Shelves = ShelvesWord.Read(fields, piece),
            Front = fields.Node("front") as Mapping,
            Fronts = fronts,
            Hangs = hangs,
            Blind = BlindWord.Read(fields, piece, material),
            Scribes = ScribesWord.Read(fields, piece, body, fronts),
            Facing = FacedWord.Read(fields, piece, fronts),
            Sides = SidesWord.Read(fields, piece, fronts),
            Filler = FillerWord.Read(fields, piece, body, fronts),
        };
        var whole = plan with
        {
            Diagonal = DiagonalWord.Read(fields, piece, plan),
            Canted = CantedWord.Read(fields, plan),
        };
        CornersWord.Refuse(whole);
        return whole;
    }

    /// <summary>Two stretchers want a third of the depth free between them; a shallower carcase gets a panel.</summary>
    private static bool IsShallow(PieceBuilder piece, Body body) =>
        body.Depth.Length < piece.Shop.Length(CarcaseRules.StretcherWidth).Length * 3;
}
