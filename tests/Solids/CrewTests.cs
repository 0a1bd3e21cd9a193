using Dryfit.Bench;

namespace Dryfit.Solids.Tests;

public sealed class CrewTests
{
    [Fact]
    public void Boards_built_on_all_cores_are_the_same_to_the_last_bit()
    {
        var boards = Workload.Read(Path.Combine(AppContext.BaseDirectory, "data", "casework-80.json"));
        var built = SolidBuilder.BuildAll(boards.ConvertAll(board => (board.Size, board.Cuts)));
        Assert.Equal(boards.Count, built.Length);
        for (var i = 0; i < built.Length; i++)
        {
            var alone = SolidBuilder.Build(boards[i].Size, boards[i].Cuts);
            Assert.Equal(alone.Vertices, built[i].Vertices);
            Assert.Equal(alone.Triangles, built[i].Triangles);
            Assert.Equal(alone.Faces, built[i].Faces);
            Assert.Equal(alone.Volume, built[i].Volume);
            Assert.Equal(alone.Area, built[i].Area);
            Assert.Equal(alone.Centroid, built[i].Centroid);
        }
    }

    [Fact]
    public void The_first_board_at_fault_is_told()
    {
        var boards = Enumerable.Repeat((new Vec3(10, 10, 10), (IReadOnlyList<Cut>)[]), 100).ToList();
        boards[70] = (new Vec3(0, 1, 1), []);
        boards[30] = (new Vec3(1, 1, 1), [new BoreCut(Frame.Identity with { U = new(2, 0, 0) }, 1, 1, 8)]);
        var fault = Assert.Throws<ArgumentException>(() => SolidBuilder.BuildAll(boards));
        Assert.Contains("Cut 0", fault.Message, StringComparison.Ordinal);
    }
}
