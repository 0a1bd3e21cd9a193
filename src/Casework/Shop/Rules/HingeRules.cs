namespace Dryfit.Casework;

/// <summary>House rules: cup hinges and their borings.</summary>
public static class HingeRules
{
    private const string Section = "hinges";
    private const string CupSource = "hinge maker's quick reference (hardware literature)";
    private const string ArmSource = "hardware literature, from memory: the sheet of the hinge has the last word";
    private const string RowSource = "32 mm rows: common practice, set down by no standards body";

    public static Rule CupDiameter { get; } =
        new(Section, "cup", "35 mm", "35 mm", "Diameter of a hinge cup.", CupSource) { Shape = Rule.AboveZero };
    public static Rule CupDepth { get; } =
        new(Section, "cup depth", "13 mm", "13 mm", "Drilling depth of a hinge cup.", CupSource)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CupSetback { get; } =
        new(
            Section,
            "cup setback",
            "22.5 mm",
            "22.5 mm",
            "From the door's edge to the middle of the cup: 17.5 mm and the boring distance of 5 mm.",
            CupSource
        );
    public static Rule HingeEnd { get; } =
        new(
            Section,
            "from end",
            "3 1/2\"",
            "96 mm",
            "From the end of a door to the middle of its first hinge.",
            Rule.Practice
        );
    public static Rule HingePlateRow { get; } =
        new(
            Section,
            "plate row",
            "37 mm",
            "37 mm",
            "From the front edge of the side to the holes of the hinge plate.",
            RowSource
        );
    public static Rule CupScrew { get; } =
        new(Section, "cup screw", "8 mm", "8 mm", "Diameter of the two holes beside a hinge cup.", CupSource)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CupScrewSpacing { get; } =
        new(Section, "cup screw spacing", "45 mm", "45 mm", "Between the two holes beside a hinge cup.", CupSource)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule CupScrewOffset { get; } =
        new(
            Section,
            "cup screw offset",
            "9.5 mm",
            "9.5 mm",
            "How much further from the door's edge the two holes are than the middle of the cup.",
            CupSource
        );
    public static Rule CupScrewDepth { get; } =
        new(Section, "cup screw depth", "11 mm", "11 mm", "Depth of the two holes beside a hinge cup.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlateHole { get; } =
        new(Section, "plate hole", "5 mm", "5 mm", "Diameter of the two holes for a hinge plate.", RowSource)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlateSpacing { get; } =
        new(Section, "plate spacing", "32 mm", "32 mm", "Between the two holes for a hinge plate.", RowSource)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlateDepth { get; } =
        new(Section, "plate depth", "10 mm", "10 mm", "Depth of the holes for a hinge plate.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };

    public static Rule OpeningAngle { get; } =
        new(Section, "opening angle", "110", "110", "How far a cup hinge opens, in degrees.", Rule.Practice)
        {
            Shape = new Dryfit.Recipe.CountShape(30, 180),
        };
    public static Rule Wander { get; } =
        new(
            Section,
            "wander",
            "3 mm",
            "3 mm",
            "How far, sideways, a hinge on links may carry its door from where a pin at the front corner of the door would; what is nearer is not told.",
            "hardware literature, from memory"
        );
    public static Rule FlapAngle { get; } =
        new(
            Section,
            "flap angle",
            "90",
            "90",
            "How far flaps and drop fronts open on their stays, in degrees.",
            Rule.Practice
        )
        {
            Shape = new Dryfit.Recipe.CountShape(30, 180),
        };

    public static Rule ArmHeight { get; } =
        new(
            Section,
            "arm height",
            "60 mm",
            "60 mm",
            "Room that hinge and plate want inside the carcase, up and down along the edge.",
            ArmSource
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule ArmReach { get; } =
        new(
            Section,
            "arm reach",
            "65 mm",
            "65 mm",
            "Room that they want from the back of the door into the carcase.",
            ArmSource
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule ArmAside { get; } =
        new(Section, "arm aside", "20 mm", "20 mm", "Room that they want beside the side they hang on.", ArmSource)
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [
        CupDiameter,
        CupDepth,
        CupSetback,
        HingeEnd,
        HingePlateRow,
        CupScrew,
        CupScrewSpacing,
        CupScrewOffset,
        CupScrewDepth,
        PlateHole,
        PlateSpacing,
        PlateDepth,
        OpeningAngle,
        Wander,
        FlapAngle,
        ArmHeight,
        ArmReach,
        ArmAside,
    ];
}
