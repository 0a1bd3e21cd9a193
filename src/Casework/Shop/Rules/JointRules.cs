using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>House rules: depths and play of joints.</summary>
public static class JointRules
{
    private const string Section = "joints";

    public static Rule DadoDepth { get; } =
        new(
            Section,
            "dado depth",
            "1/4\"",
            "6 mm",
            "Depth of dados that take panels.",
            "a third to half of the thickness: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule RabbetWidth { get; } =
        new(Section, "back rabbet", "3/8\"", "9 mm", "How far a rabbeted back laps into the side.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BackGrooveDepth { get; } =
        new(Section, "back groove depth", "1/4\"", "6 mm", "Depth of the groove for a slid-in back.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule BackGrooveInset { get; } =
        new(
            Section,
            "back groove inset",
            "1/2\"",
            "12 mm",
            "From the back edge to the groove for a slid-in back.",
            Rule.Practice
        );
    public static Rule BackPlay { get; } =
        new(
            Section,
            "back play",
            "1/32\"",
            "0.5 mm",
            "Room at the bottom of a back's groove, each side.",
            Rule.Practice
        );
    public static Rule DowelDiameter { get; } =
        new(
            Section,
            "dowel",
            "3/8\"",
            "8 mm",
            "Diameter of dowels.",
            "a third to half of the thinner part: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DowelLength { get; } =
        new(Section, "dowel length", "2\"", "40 mm", "Length of dowels; half goes into each part.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DowelRoom { get; } =
        new(
            Section,
            "dowel room",
            "1/16\"",
            "1 mm",
            "How much deeper each dowel hole is than its dowel.",
            Rule.Practice
        );

    public static Rule DovetailPitch { get; } =
        new(
            Section,
            "dovetail pitch",
            "1 1/2\"",
            "38 mm",
            "About how far dovetails stand from each other; as many share the width evenly.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule DovetailPin { get; } =
        new(
            Section,
            "dovetail pin",
            "1/4\"",
            "6 mm",
            "Width of a pin at its narrow end; the half pins at both edges are as wide there.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule SoftwoodSlope { get; } =
        new(
            Section,
            "softwood slope",
            "6",
            "6",
            "Slope of dovetails in softwood, 1 in so many.",
            "1:6: common practice"
        )
        {
            Shape = new CountShape(3, 20),
        };
    public static Rule HardwoodSlope { get; } =
        new(
            Section,
            "hardwood slope",
            "8",
            "8",
            "Slope of dovetails in all else, 1 in so many.",
            "1:8: common practice"
        )
        {
            Shape = new CountShape(3, 20),
        };
    public static Rule CornerLap { get; } =
        new(
            Section,
            "corner lap",
            "3/16\"",
            "5 mm",
            "What is left of a side before half-blind dovetails, but no more than a third of it.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule Finger { get; } =
        new(
            Section,
            "finger",
            "1/2\"",
            "12 mm",
            "About how wide the fingers of a box joint are; an uneven number of them shares the width evenly.",
            "as the stuff is thick: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule TenonShoulder { get; } =
        new(
            Section,
            "tenon shoulder",
            "1/4\"",
            "6 mm",
            "Shoulder at each edge of a tenon, but no more than a sixth of its part.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule MortiseRoom { get; } =
        new(
            Section,
            "mortise room",
            "1/16\"",
            "1.5 mm",
            "How much deeper a mortise is than its tenon is long.",
            "1/16 to 1/8 in: WOOD magazine, sizing mortises and tenons"
        );
    public static Rule SlotLength { get; } =
        new(Section, "slot length", "2 1/2\"", "62 mm", "Length of the slot for a biscuit.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule SlotDepth { get; } =
        new(Section, "slot depth", "1/2\"", "12.5 mm", "Depth of that slot in each part.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule SlotWidth { get; } =
        new(Section, "slot width", "4 mm", "4 mm", "Width of that slot.", Rule.Practice) { Shape = Rule.AboveZero };
    public static Rule Plug { get; } =
        new(Section, "plug", "3/8\"", "10 mm", "Diameter of the plugs over sunk screws.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule PlugDepth { get; } =
        new(
            Section,
            "plug depth",
            "1/4\"",
            "6 mm",
            "Depth of the holes for plugs, but no more than half of the part.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule TongueThickness { get; } =
        new(Section, "tongue thickness", "1/4\"", "6 mm", "Thickness of loose tongues.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule TongueDepth { get; } =
        new(Section, "tongue depth", "3/8\"", "9 mm", "How far a loose tongue goes into each part.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };
    public static Rule TongueRoom { get; } =
        new(Section, "tongue room", "1/32\"", "0.5 mm", "How much deeper its grooves are.", Rule.Practice);
    public static Rule TongueStop { get; } =
        new(Section, "tongue stop", "1\"", "25 mm", "How far its grooves stop before each end.", Rule.Practice)
        {
            Shape = Rule.AboveZero,
        };

    public static Rule SplineThickness { get; } =
        new(
            Section,
            "spline thickness",
            "1/8\"",
            "3 mm",
            "Thickness of the spline in a mitre, no more than a third of what it joins.",
            "the cut of one saw blade: common practice"
        )
        {
            Shape = Rule.AboveZero,
        };
    public static Rule SplineDepth { get; } =
        new(
            Section,
            "spline depth",
            "3/8\"",
            "9 mm",
            "How far it goes into each part, but no more than half of what that is thick.",
            Rule.Practice
        )
        {
            Shape = Rule.AboveZero,
        };

    internal static IReadOnlyList<Rule> All { get; } =
    [
        DadoDepth,
        RabbetWidth,
        BackGrooveDepth,
        BackGrooveInset,
        BackPlay,
        DowelDiameter,
        DowelLength,
        DowelRoom,
        DovetailPitch,
        DovetailPin,
        SoftwoodSlope,
        HardwoodSlope,
        CornerLap,
        Finger,
        TenonShoulder,
        MortiseRoom,
        SlotLength,
        SlotDepth,
        SlotWidth,
        Plug,
        PlugDepth,
        TongueThickness,
        TongueDepth,
        TongueRoom,
        TongueStop,
        SplineThickness,
        SplineDepth,
    ];
}
