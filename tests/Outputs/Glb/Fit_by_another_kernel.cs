using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Outputs.Glb;
using Dryfit.Recipe;
using Dryfit.Solids;

namespace Dryfit.Outputs.Tests.Glb;

/// <summary>
/// Gaps, overlaps and swings as the checks measure them, against manifold-3d, which reads the exported 3D file: within one
/// micrometre.
/// </summary>
public sealed class Fit_by_another_kernel(ITestOutputHelper output)
{
    private const double MicrometreMm = 0.001;

    /// <summary>How far apart two parts may stand and still be asked about.</summary>
    private const double NearMm = 4;

    private const string Wrong = """
        piece: Cupboard with a small door and a long shelf
        units: mm
        materials: { body: birch plywood 18, backs: birch plywood 6.5 }
        carcases:
          cupboard:
            size: [800, 900, 350]
            front: { doors: slab pair }
            shelves: { fixed: 1 }
        as cut:
          left door: { width: 390 }
          fixed shelf: { length: 785 }
        """;

    [Theory]
    [InlineData("studio-cupboard")]
    [InlineData("utility-room")]
    [InlineData("wall-dresser")]
    [InlineData("studio-kitchen")]
    public void Parts_that_stand_near_share_and_part_as_it_says(string starter) => Compare(Starters.Get(starter));

    [Fact]
    public void So_do_those_of_a_piece_that_is_wrong() => Assert.NotEqual(0, Compare(Build(Wrong)));

    [Fact]
    public void The_gap_that_a_finding_tells_is_that_of_the_file()
    {
        var piece = Build(Wrong);
        using var kernel = AnotherKernel.Reading(GlbWriter.Write(piece).Bytes);
        var finding = Assert.Single(Inspector.Inspect(piece).Findings, found => found.Kind.Id == "front-gap-too-wide");
        var told = Assert.IsType<MeasuredLength>(finding.Measured).Value.ToMillimetres();
        Assert.Equal(10, told, MicrometreMm);
        Assert.Equal(told, kernel.Between(finding.Parts[0], finding.Parts[1], 50).GapMm, MicrometreMm);
    }

    [Theory]
    [InlineData("studio-cupboard", 30)]
    [InlineData("studio-cupboard", 85)]
    [InlineData("utility-room", 60)]
    public void Doors_that_are_opened_stand_as_far_from_what_stands_about_them(string starter, int degrees)
    {
        var piece = Starters.Get(starter);
        using var kernel = AnotherKernel.Reading(GlbWriter.Write(piece).Bytes);
        var asked = 0;
        var worst = 0.0;
        foreach (var door in piece.Fronts.Where(front => front.Motion.TurnsOn() is Direction.Left or Direction.Right))
        {
            var sign = door.Motion == FrontMotion.TurnsOnLeftEdge ? -1 : 1;
            var turn = new Turn(piece.Grid.ToUnits(door.Pivot), new(0, 0, 1), sign * degrees * Math.PI / 180);
            foreach (var moving in piece.Parts.Where(part => part.Group == door.Group))
            {
                var opened = moving.Placed with { Frame = turn.At(moving.Placed.Frame, 1) };
                foreach (var standing in piece.Parts.Where(part => part.Group != door.Group))
                {
                    if (Pair.Gap(opened, standing.Placed, 30 * piece.Grid.UnitsPerMm) is not { Distance: > 0 } gap)
                        continue;
                    var said = kernel.Between(
                        moving.Id,
                        standing.Id,
                        40,
                        new GroupTurn(door.Group, [0, 1, 0], sign * degrees)
                    );
                    worst = Math.Max(worst, Math.Abs(said.GapMm - piece.Grid.ToMm(gap.Distance)));
                    asked++;
                }
            }
        }

        output.WriteLine($"{asked} pairs, the worst {worst * 1e6:F3} nm apart");
        Assert.InRange(asked, 5, int.MaxValue);
        Assert.InRange(worst, 0, MicrometreMm);
    }

    [Fact]
    public void The_least_gap_over_a_swing_is_met_nowhere_closer()
    {
        var piece = Starters.Get("studio-cupboard");
        using var kernel = AnotherKernel.Reading(GlbWriter.Write(piece).Bytes);
        const int Degrees = 90;
        var door = piece.Fronts.First(front => front.Motion == FrontMotion.TurnsOnLeftEdge);
        var turn = new Turn(piece.Grid.ToUnits(door.Pivot), new(0, 0, 1), -Degrees * Math.PI / 180);
        var asked = 0;
        foreach (var moving in piece.Parts.Where(part => door.Face.Contains(part.Id, StringComparer.Ordinal)))
        {
            foreach (var standing in piece.Parts.Where(part => part.Group != door.Group))
            {
                if (asked == 2)
                    break;
                var cap = 20.0 * piece.Grid.UnitsPerMm;
                var within = MicrometreMm / 2 * piece.Grid.UnitsPerMm;
                if (Sweep.LeastGap(moving.Placed, turn, standing.Placed, cap, within) is not { Distance: > 0 } least)
                    continue;
                asked++;
                var leastMm = piece.Grid.ToMm(least.Distance);
                Assert.Equal(leastMm, Said(least.Share), MicrometreMm);
                for (var step = 0; step <= 30; step++)
                    Assert.InRange(Said(step / 30.0), leastMm - MicrometreMm, double.MaxValue);

                double Said(double share) =>
                    kernel
                        .Between(moving.Id, standing.Id, 40, new GroupTurn(door.Group, [0, 1, 0], -Degrees * share))
                        .GapMm;
            }
        }

        Assert.InRange(asked, 2, int.MaxValue);
    }

    /// <summary>All pairs whose boxes are near; how many of them share wood.</summary>
    private int Compare(Piece piece)
    {
        using var kernel = AnotherKernel.Reading(GlbWriter.Write(piece).Bytes);
        var near = NearMm * piece.Grid.UnitsPerMm;
        var boxes = piece.Parts.Select(part => part.Placed.BoundsIn(Frame.Identity)).ToList();
        var (asked, shared) = (0, 0);
        var worst = 0.0;
        for (var a = 0; a < boxes.Count; a++)
        {
            for (var b = a + 1; b < boxes.Count; b++)
            {
                if (!AreNear(boxes[a], boxes[b], near))
                    continue;
                asked++;
                var (first, second) = (piece.Parts[a], piece.Parts[b]);
                var said = kernel.Between(first.Id, second.Id, NearMm);
                var overlap = Pair.Overlap(first.Placed, second.Placed);
                var gap = Pair.Gap(first.Placed, second.Placed, near)?.Distance ?? near;
                worst = Math.Max(worst, Math.Abs(said.GapMm - piece.Grid.ToMm(gap)));
                var volume = overlap is null ? 0 : piece.Grid.ToCubicMm(overlap.Volume);
                if (volume > 0)
                    shared++;
                Assert.True(
                    Math.Abs(said.CubicMm - volume) <= (1e-6 * volume) + Skin(piece, first, second),
                    $"{first.Id} and {second.Id} share {volume} mm3, by the other kernel {said.CubicMm}"
                );
            }
        }

        output.WriteLine($"{asked} pairs, {shared} of them share wood; gaps at most {worst * 1e6:F3} nm apart");
        Assert.InRange(asked, piece.Parts.Count / 2, int.MaxValue);
        Assert.InRange(worst, 0, MicrometreMm);
        return shared;
    }

    /// <summary>What a hundredth of a micrometre over the smaller part comes to, in mm3: slanted faces that meet in the file's
    /// numbers are rounded to them.</summary>
    private static double Skin(Piece piece, Part a, Part b) =>
        Math.Min(a.Solid.Area, b.Solid.Area) / piece.Grid.UnitsPerMm / piece.Grid.UnitsPerMm * MicrometreMm / 100;

    private static bool AreNear(Box a, Box b, double near) =>
        a.Min.X - b.Max.X < near
        && b.Min.X - a.Max.X < near
        && a.Min.Y - b.Max.Y < near
        && b.Min.Y - a.Max.Y < near
        && a.Min.Z - b.Max.Z < near
        && b.Min.Z - a.Max.Z < near;

    private static Piece Build(string text)
    {
        var recipe = RecipeReader.Read("cupboard.dryfit.yaml", System.Text.Encoding.UTF8.GetBytes(text));
        Assert.Empty(recipe.Errors);
        var piece = Design.Build(recipe.Value!, null, DesignOptions.Plain);
        Assert.Empty(piece.Errors);
        return piece.Value!;
    }
}
