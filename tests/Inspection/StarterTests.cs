using CsCheck;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Inspection.Tests;

/// <summary>The starters raise nothing, as they are and at other sizes.</summary>
public sealed class StarterTests
{
    private const string Cupboard = "studio-cupboard";
    private const string UtilityRun = "utility-room";
    private const string Alcove = "alcove-chest";

    [Theory]
    [InlineData(Cupboard)]
    [InlineData(UtilityRun)]
    [InlineData(Alcove)]
    [InlineData("pottery-dresser")]
    [InlineData("writing-cabinet")]
    public void Starter_raises_nothing(string starter) => Inspect(starter).IsClean();

    [Fact]
    public void Cupboard_raises_nothing_at_any_width_height_and_step() =>
        Gen.Select(Gen.Int[46 * 8, 72 * 8], Gen.Int[28 * 8, 40 * 8], Gen.Int[2 * 8, 9 * 8], Gen.Int[8 * 8, 11 * 8])
            .Sample(
                (width, height, step, bay) =>
                    Inspect(
                            Cupboard,
                            Eighths("width", width),
                            Eighths("base_height", height),
                            Eighths("step", step),
                            Eighths("side_bay", bay)
                        )
                        .IsClean(),
                iter: 3
            );

    [Fact]
    public void Run_raises_nothing_at_any_width() =>
        Gen.Select(Gen.Int[1300, 2400], Gen.Int[400, 800])
            .Sample(
                (run, drawers) =>
                    Inspect(UtilityRun, new("run", $"{run}"), new("drawers_width", $"{drawers}")).IsClean(),
                iter: 3
            );

    [Fact]
    public void Three_slips_in_one_piece_are_all_told_though_two_are_in_a_pair_of_glazed_doors()
    {
        var report = Whole.Recipe(
            Text(Cupboard)
                + """
                as cut:
                  upper right door: { width: 11 1/2 }
                  upper left door top rail: { length: 7 3/4 }
                  base right door panel: { width: 11 3/8 }

                """,
            []
        );
        Assert.Equal(
            ["front-gap-too-wide", "joint-open", "panel-falls-out"],
            report
                .Findings.Where(f => f.Kind.Severity == Severity.Stop)
                .Select(f => f.Kind.Id)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    private static Setting Eighths(string name, int eighths) => new(name, $"{eighths / 8} {eighths % 8}/8");

    private static Report Inspect(string starter, params Setting[] settings) => Whole.Recipe(Text(starter), settings);

    private static string Text(string starter) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "starters", $"{starter}.dryfit.yaml"));
}
