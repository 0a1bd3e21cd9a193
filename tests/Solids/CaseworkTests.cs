using System.Globalization;
using Dryfit.Bench;

namespace Dryfit.Solids.Tests;

/// <summary>
/// Ten carcases of eight boards with 600 cuts, made for this project. Volumes in closed form (bores as the polygons they are
/// cut as); surfaces and the overlaps and gaps of neighbours from manifold-3d 3.5.4, a general-purpose kernel; Open CASCADE
/// 7.6.3 and @jscad/modeling 2.13.0 agree with the volumes to 1e-10.
/// </summary>
public sealed class CaseworkTests
{
    private static readonly List<Board> Boards = Workload.Read(Data("casework-80.json"));
    private static readonly Dictionary<string, Placed> Placed = Boards.ToDictionary(
        board => board.Id,
        board => new Placed(SolidBuilder.Build(board.Size, board.Cuts).Checked(), board.Frame)
    );

    [Fact]
    public void Volumes_are_those_of_the_closed_forms()
    {
        foreach (var row in Rows("analytic-80.tsv"))
        {
            Assert.Equal(1, Placed[row[0]].Solid.Volume / 1e18 / Number(row[1]), 1e-9);
        }
    }

    [Fact]
    public void Surfaces_are_those_of_another_kernel()
    {
        foreach (var row in Rows("manifold-80.tsv"))
        {
            Assert.Equal(1, Placed[row[0]].Solid.Area / 1e12 / Number(row[2]), 1e-9);
        }
    }

    [Fact]
    public void Every_board_is_one_piece()
    {
        Assert.All(Placed.Values, placed => Assert.Equal(1, placed.Solid.PieceCount));
    }

    [Fact]
    public void Overlaps_and_gaps_of_neighbours_are_those_of_another_kernel_with_all_planted_faults_and_no_false_one()
    {
        var faults = 0;
        foreach (var row in Rows("pairs-80.tsv"))
        {
            var (a, b) = (Placed[row[0]], Placed[row[1]]);
            var (volume, gap) = (Number(row[2]), Number(row[3]));
            var overlap = Pair.Overlap(a, b);
            if (volume > 1e-3)
            {
                faults++;
                Assert.Equal(1, overlap!.Volume / 1e18 / volume, 1e-6);
            }
            else
            {
                Assert.Null(overlap);
            }

            var found = Pair.Gap(a, b, 2 * Workload.UnitsPerMm)?.Distance ?? (2 * Workload.UnitsPerMm);
            Assert.Equal(gap, found / Workload.UnitsPerMm, 1e-6);
            if (gap == 0)
            {
                Assert.Equal(0, found);
            }
        }

        Assert.Equal(10, faults);
    }

    [Fact]
    public void Cuts_that_end_flush_give_the_same_solids_as_cuts_that_overshoot()
    {
        foreach (var board in Boards)
        {
            var overshot = Placed[board.Id].Solid;
            var flush = SolidBuilder.Build(board.Size, [.. board.Cuts.Select(cut => Flush(cut, board.Size))]).Checked();
            Assert.Equal(overshot.Volume, flush.Volume, 1e-12 * overshot.Volume);
            Assert.Equal(overshot.Area, flush.Area, 1e-12 * overshot.Area);
            Assert.Equal(overshot.Triangles.Count, flush.Triangles.Count);
        }
    }

    // Boxes end at the blank; holes and prisms along an axis start and end in its faces.
    private static Cut Flush(Cut cut, Vec3 size)
    {
        switch (cut)
        {
            case BoxCut box:
                return new BoxCut(
                    new(Math.Max(box.Min.X, 0), Math.Max(box.Min.Y, 0), Math.Max(box.Min.Z, 0)),
                    new(Math.Min(box.Max.X, size.X), Math.Min(box.Max.Y, size.Y), Math.Min(box.Max.Z, size.Z))
                );
            case BoreCut bore:
                var (bored, depth) = Flush(bore.Frame, bore.Depth, size);
                return bore with { Frame = bored, Depth = depth };
            case PrismCut prism:
                var (frame, height) = Flush(prism.Frame, prism.Height, size);
                return prism with { Frame = frame, Height = height };
            default:
                return cut;
        }
    }

    private static (Frame Frame, double Height) Flush(Frame frame, double height, Vec3 size)
    {
        var (w, along) = (frame.W, Vec3.Dot(frame.W, frame.Origin));
        if (Math.Abs(w.X) != 1 && Math.Abs(w.Y) != 1 && Math.Abs(w.Z) != 1)
        {
            return (frame, height);
        }

        // Along W the blank runs from the one face to the other.
        var end = Vec3.Dot(w, size);
        var (low, high) = (Math.Min(0, end), Math.Max(0, end));
        var (from, to) = (Math.Max(along, low), Math.Min(along + height, high));
        return (frame with { Origin = frame.Origin + (w * (from - along)) }, to - from);
    }

    private static string Data(string name) => Path.Combine(AppContext.BaseDirectory, "data", name);

    private static IEnumerable<string[]> Rows(string name) =>
        File.ReadLines(Data(name)).Select(line => line.Split('\t'));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
