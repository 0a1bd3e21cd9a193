namespace Dryfit.Solids.Tests;

/// <summary>Every board that ever came out wrong, kept as a file so that it never does again; each file says what was hard.</summary>
public sealed class CorpusTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "corpus");

    public static TheoryData<string> Boards =>
        new(
            Directory.GetFiles(Folder, "*.json").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal)!
        );

    [Theory]
    [MemberData(nameof(Boards))]
    public void Board_is_sound_and_as_expected(string name)
    {
        var board = BoardFile.Read(Path.Combine(Folder, name + ".json"));
        var solid = Build(board.Size, board.Cuts);
        Assert.Equal(1, solid.Volume / board.Volume, 1e-9);
        Assert.Equal(board.Pieces, solid.PieceCount);
        Assert.Equal(board.Touches ?? solid.TouchesItself, solid.TouchesItself);
    }

    [Theory]
    [MemberData(nameof(Boards))]
    public void Board_is_the_same_with_its_cuts_in_any_order_and_made_twice(string name)
    {
        var board = BoardFile.Read(Path.Combine(Folder, name + ".json"));
        var solid = Build(board.Size, board.Cuts);
        solid.AssertSame(Build(board.Size, [.. board.Cuts.Reverse()]));
        solid.AssertSame(Build(board.Size, [.. board.Cuts, .. board.Cuts]));
    }

    [Theory]
    [MemberData(nameof(Boards))]
    public void Board_mirrored_has_the_same_volume(string name)
    {
        var board = BoardFile.Read(Path.Combine(Folder, name + ".json"));
        Assert.Equal(1, Build(board.Size, Mirror.Cuts(board.Cuts, board.Size.X)).Volume / board.Volume, 1e-9);
    }

    private static Solid Build(Vec3 size, Cut[] cuts) => SolidBuilder.Build(size, cuts).Checked(mayHaveSlivers: true);
}
