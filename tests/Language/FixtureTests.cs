using Dryfit.Casework;
using Dryfit.Recipe;

namespace Dryfit.Language.Tests;

/// <summary>
/// Pieces a maker wrote from the reference page alone, unlike the starters: every one becomes sound parts, by the
/// built-in house rules as well as by another shop's.
/// </summary>
public sealed class FixtureTests
{
    private const string Folder = "tests/Language/Fixtures";

    private const string MakerShop = "maker-shop.yaml";

    public static TheoryData<string, string?> Pieces { get; } =
    [
        .. Shipped
            .FilesIn(Folder, "*.dryfit.yaml")
            .SelectMany(file =>
                (TheoryDataRow<string, string?>[])
                    [new(Path.GetFileName(file), null), new(Path.GetFileName(file), MakerShop)]
            ),
    ];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void A_piece_written_from_the_page_alone_becomes_sound_parts(string recipe, string? shop)
    {
        var built = Design.Build(Read(recipe), shop is null ? null : Read(shop), new DesignOptions([], null));

        Assert.True(built.Errors.Count == 0, string.Join('\n', built.Errors.Select(e => $"{e.Place}: {e.Message}")));
        var parts = built.Value!.Parts;
        Assert.True(parts.Count > 5, $"{parts.Count} parts");
        Assert.All(parts, part => Assert.True(part.Solid.PieceCount == 1, $"{part.Name}: {part.Solid.PieceCount}"));
    }

    private static Mapping Read(string name)
    {
        var file = Assert.Single(
            Shipped.FilesIn(Folder, name),
            f => string.Equals(Path.GetFileName(f), name, StringComparison.Ordinal)
        );
        var read = RecipeReader.Read(name, File.ReadAllBytes(file));
        Assert.Empty(read.Errors);
        return Assert.IsType<Mapping>(read.Value);
    }
}
