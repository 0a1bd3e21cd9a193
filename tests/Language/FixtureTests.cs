using Dryfit.Casework;

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
        var built = Design.Build(
            Shipped.Read(recipe, Folder),
            shop is null ? null : Shipped.Read(shop, Folder),
            new DesignOptions([], null) { Files = Shipped.Beside(recipe, Folder) }
        );

        Assert.True(built.Errors.Count == 0, string.Join('\n', built.Errors.Select(e => $"{e.Place}: {e.Message}")));
        var parts = built.Value!.Parts;
        Assert.True(parts.Count > 5, $"{parts.Count} parts");
        Assert.All(parts, part => Assert.True(part.Solid.PieceCount == 1, $"{part.Name}: {part.Solid.PieceCount}"));
    }
}
