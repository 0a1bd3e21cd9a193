using CsCheck;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Inspection.Tests;

/// <summary>Whole recipes: the sound ones raise nothing, and a wrong number shows with its real measure.</summary>
public sealed class StarterTests
{
    private const string Cupboard = "studio-cupboard";
    private const string UtilityRun = "utility-room";
    private const string Alcove = "alcove-chest";

    [Theory]
    [InlineData(Cupboard)]
    [InlineData(UtilityRun)]
    [InlineData(Alcove)]
    public void Starter_raises_nothing(string starter) => Inspect(starter).IsClean();

    [Fact]
    public void Cupboard_raises_nothing_at_any_width_height_and_step() =>
        Gen.Select(Gen.Int[46 * 8, 72 * 8], Gen.Int[28 * 8, 40 * 8], Gen.Int[2 * 8, 9 * 8], Gen.Int[8 * 8, 11 * 8])
            .Sample(
                (width, height, step, bay) =>
                    Inspect(
                            Cupboard,
                            "",
                            Eighths("width", width),
                            Eighths("base_height", height),
                            Eighths("step", step),
                            Eighths("side_bay", bay)
                        )
                        .IsClean(),
                iter: 12
            );

    [Fact]
    public void Run_raises_nothing_at_any_width() =>
        Gen.Select(Gen.Int[1300, 2400], Gen.Int[400, 800])
            .Sample(
                (run, drawers) =>
                    Inspect(UtilityRun, "", new("run", $"{run}"), new("drawers_width", $"{drawers}")).IsClean(),
                iter: 12
            );

    [Fact]
    public void Door_cut_to_a_wrong_width_shows_as_its_gap()
    {
        // 900 mm, less 1.5 mm at each side and 3 mm between, makes two doors of 447 mm.
        var finding = Inspect(UtilityRun, "as cut:\n  cupboard left door: { width: 440 }\n").Only(FrontGaps.TooWide);
        Assert.Equal(Bench.Mm(10), finding.Length());
        Assert.Equal(Wanted.Exactly(Bench.Mm(3)), finding.Wanted);
        Assert.Equal("Make the cupboard left door 7 mm wider.", finding.Remedy?.Text);
    }

    [Fact]
    public void Door_cut_to_a_wrong_height_shows_as_its_overlay()
    {
        // 900 mm on a toe space of 100 mm: the side is 800 mm high, the door 797, and its top laps 16.5 mm over the stretcher.
        var finding = Inspect(UtilityRun, "as cut:\n  cupboard left door: { height: 790 }\n")
            .Only(FrontOverlays.TooSmall);
        Assert.Equal(Bench.Mm(9.5m), finding.Length());
    }

    [Fact]
    public void Rails_cut_short_show_as_a_gap_and_as_a_panel_too_wide()
    {
        // 54 less stiles of 1 3/4, a bay of 16 and a mullion of 1 1/2 leaves 33; less three gaps of 3/32 two doors of
        // 16 23/64; less stiles of 2 1/4 and with tenons of 3/8 the rails are 12 39/64. Cut to 12 they lack 39/64.
        var report = Inspect(Cupboard, "as cut:\n  base left door rails: { length: 12 }\n");

        Assert.Equal(2, report.Findings.Count);
        Assert.True(report.StopsTheSaw);
        var gap = report.The(FrontGaps.TooWide);
        Assert.Equal(Length.FromInches(0, 45, 64), gap.Length());
        Assert.Contains(" wider: the base left door", gap.Remedy?.Text, StringComparison.Ordinal);
        // The panel had 1/32 in at each side and now lacks 39/64 less that.
        var panel = report.The(LooseFit.TooBig);
        Assert.Equal(Length.FromInches(0, 35, 64), panel.Volume().Depth);
        Assert.All(report.Findings, finding => Assert.Equal(report.Findings[0].Place, finding.Place));
    }

    [Fact]
    public void One_rail_cut_short_shows_as_an_open_joint()
    {
        var finding = Inspect(Cupboard, "as cut:\n  base left door top rail: { length: 12 }\n").Only(JointMeets.Open);
        Assert.Equal(Length.FromInches(0, 39, 64), finding.Length());
    }

    [Fact]
    public void Panel_cut_too_wide_says_by_how_much()
    {
        // 11 55/64 between the stiles, two grooves of 3/8, less 1/32 at each side: 12 35/64.
        var finding = Inspect(Cupboard, "as cut:\n  base left door panel: { width: 13 }\n").Only(LooseFit.TooBig);
        Assert.Equal(Length.FromInches(0, 25, 64), finding.Volume().Depth);
        Assert.True(finding.Remedy?.Sure);
    }

    [Fact]
    public void Shelf_cut_short_stands_off_its_side()
    {
        var finding = Inspect(Alcove, "as cut:\n  left wing shelf 1: { length: 400 }\n").Only(JointMeets.Open);
        Assert.StartsWith("The left wing fixed shelf 1 stands off", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Opening_measured_out_of_square_tapers_and_does_not_overlap_what_is_drawn()
    {
        var report = Inspect(Cupboard, "as measured:\n  base right bay opening: { width: [33 1/2, 33 7/16] }\n");
        // The doors are made to 33 7/16; the 1/16 more at the bottom is shared by both sides.
        Assert.Equal([FrontGaps.Tapers, FrontGaps.Tapers], report.Findings.Select(finding => finding.Kind));
    }

    private static Setting Eighths(string name, int eighths) => new(name, $"{eighths / 8} {eighths % 8}/8");

    private static Report Inspect(string starter, string more = "", params Setting[] settings)
    {
        var file = $"{starter}.dryfit.yaml";
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "starters", file)) + "\n" + more;
        var recipe = RecipeReader.Read(file, System.Text.Encoding.UTF8.GetBytes(text));
        Assert.Empty(recipe.Errors);
        var piece = Design.Build(recipe.Value!, null, new DesignOptions(settings, null));
        Assert.Empty(piece.Errors);
        return Inspector.Inspect(piece.Value!);
    }
}
