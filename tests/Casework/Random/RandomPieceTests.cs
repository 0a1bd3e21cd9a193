using CsCheck;
using Dryfit.Casework.Tests.Kit;
using Dryfit.Parameters;

namespace Dryfit.Casework.Tests.Random;

/// <summary>Whatever is asked for is built soundly, or refused with a place; never half, never with a crash.</summary>
public sealed class RandomPieceTests
{
    [Fact]
    public void Any_recipe_is_built_soundly_or_refused_at_a_place() =>
        RandomPieces.Recipes.Sample(said => SoundOrRefused(said(false)), iter: 40, threads: 1);

    [Fact]
    public void The_same_recipe_gives_the_same_piece() =>
        RandomPieces.Recipes.Sample(said => Assert.Equal(Told(said(false)), Told(said(false))), iter: 30, threads: 1);

    [Fact]
    public void A_mirrored_recipe_gives_a_mirrored_piece() =>
        RandomPieces.Recipes.Sample(
            said =>
            {
                var (one, other) = (Built.Try(said(false)), Built.Try(said(true)));
                Assert.Equal(one.Ok, other.Ok);
                if (!one.Ok)
                    return;
                Assert.Equal(Volumes(one.Value!), Volumes(other.Value!));
                Assert.Equal(Heights(one.Value!), Heights(other.Value!));
                Assert.Equal(one.Value!.Joints.Count, other.Value!.Joints.Count);
                Assert.Equal(one.Value!.Hardware.Sum(h => h.Count), other.Value!.Hardware.Sum(h => h.Count));
            },
            iter: 30,
            threads: 1
        );

    [Fact]
    public void The_display_cupboard_is_sound_in_any_size_its_parameters_allow()
    {
        var recipe = Built.Starter("studio-cupboard");
        Gen.Select(Gen.Int[40 * 8, 72 * 8], Gen.Int[28, 40], Gen.Int[2 * 4, 9 * 4], Gen.Int[8, 16])
            .Sample(
                (width, height, step, bay) =>
                    SoundOrRefused(
                        recipe,
                        new Setting("width", $"{width}/8"),
                        new Setting("base_height", $"{height}"),
                        new Setting("step", $"{step}/4"),
                        new Setting("side_bay", $"{bay}")
                    ),
                iter: 6,
                threads: 1
            );
    }

    [Fact]
    public void The_frameless_run_is_sound_in_any_size_its_parameters_allow()
    {
        var recipe = Built.Starter("utility-room");
        Gen.Select(Gen.Int[1000, 2400], Gen.Int[400, 800])
            .Sample(
                (run, drawers) =>
                    SoundOrRefused(recipe, new Setting("run", $"{run}"), new Setting("drawers_width", $"{drawers}")),
                iter: 10,
                threads: 1
            );
    }

    [Fact]
    public void The_wings_of_the_old_chest_are_sound_in_any_alcove_its_parameters_allow()
    {
        var recipe = Built.Starter("alcove-chest");
        Gen.Select(Gen.Int[15000, 24000], Gen.Int[2, 20], Gen.Int[60, 150])
            .Sample(
                (alcove, wall, plinth) =>
                    SoundOrRefused(
                        recipe,
                        new Setting("alcove", $"{alcove / 10}.{alcove % 10}"),
                        new Setting("to_wall", $"{wall}"),
                        new Setting("plinth", $"{plinth}")
                    ),
                iter: 10,
                threads: 1
            );
    }

    private static void SoundOrRefused(string recipe, params IReadOnlyList<Setting> settings)
    {
        var tried = Built.Try(recipe, shop: null, settings);
        if (tried.Ok)
            Assert.True(tried.Value!.Faults().Count == 0, $"{string.Join('\n', tried.Value!.Faults())}\n{recipe}");
        else
            Assert.All(tried.Errors, e => Assert.NotNull(e.Place));
    }

    /// <summary>Everything that later stages read of a piece, or its errors, as lines.</summary>
    private static string Told(string recipe)
    {
        var tried = Built.Try(recipe);
        if (!tried.Ok)
            return string.Join('\n', tried.Errors);
        var piece = tried.Value!;
        return string.Join(
            '\n',
            [
                .. piece.Parts.Select(p =>
                    $"{p.Id} {p.Extent} {p.Solid.Volume:R} {string.Join(' ', p.Cuts.Select(c => c.Id))}"
                ),
                .. piece.Joints.Select(j => j.ToString()),
                .. piece.Hardware.Select(h => $"{h.Id} {h.Kind} {h.At} {string.Join(' ', h.Ties)}"),
                .. piece.Openings.Select(o => $"{o.Id} {o.Clear}"),
                .. piece.Fronts.Select(f => $"{f.Group} {f.Pivot}"),
            ]
        );
    }

    /// <summary>Cubic millimetres to the hundredth, from small to large.</summary>
    private static IEnumerable<double> Volumes(Piece piece) =>
        piece.Parts.Select(p => Math.Round(piece.Grid.ToCubicMm(p.Solid.Volume), 2)).Order();

    private static IEnumerable<string> Heights(Piece piece) =>
        piece.Parts.Select(p => piece.Write(p.Extent.Min.Z)).Order(StringComparer.Ordinal);
}
