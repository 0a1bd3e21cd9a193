using System.Globalization;
using CsCheck;
using Dryfit.Bench;

namespace Dryfit.Solids.Tests;

/// <summary>
/// A second opinion on random boards with random cuts from manifold-3d (a general-purpose kernel in double precision that
/// breaks ties by a symbolic perturbation): volume, surface, genus and the number of closed shells must be the same. Skipped
/// where node or its package is missing. DRYFIT_SECOND_OPINION sets how many boards are asked about in all.
/// </summary>
public sealed class PeerTests(ITestOutputHelper output)
{
    private const int UsualCount = 20_000;
    private const int Batch = 500;

    private static readonly string[] Kinds =
    [
        "flush with a face of the board",
        "as wide as the board",
        "touches the board in a face",
        "touches the board in an edge",
        "touches the board in a corner",
        "two cuts share a face",
        "two cuts share an edge",
        "two cuts share a corner",
        "two cuts overlap with faces in one plane",
        "bore tangent to another cut",
        "bore along an edge of the board",
        "nothing is left",
        "nothing is taken",
        "falls in two",
        "touches itself",
    ];

    private static int Count =>
        int.TryParse(Environment.GetEnvironmentVariable("DRYFIT_SECOND_OPINION"), out var count) ? count : UsualCount;

    [Fact]
    public void Upright_boards_are_those_of_another_kernel() => Compare(RandomBoards.Upright, 20, mostFins: 1);

    [Fact]
    public void Boards_with_cuts_flush_and_coincident_on_purpose_are_those_of_another_kernel() =>
        Compare(HardBoards.Flush, 25, mostFins: 1);

    [Fact]
    public void Boards_with_tilted_cuts_are_those_of_another_kernel() => Compare(RandomBoards.Any, 25, mostFins: 5);

    [Fact]
    public void Boards_with_cuts_that_coincide_tilted_are_those_of_another_kernel() =>
        Compare(HardBoards.Coincident, 10, mostFins: 40);

    [Fact]
    public void Boards_with_cuts_at_any_angle_are_those_of_another_kernel() =>
        Compare(HardBoards.Turned, 10, mostFins: 40);

    [Fact]
    public void Boards_turned_as_a_whole_are_those_of_another_kernel() => Compare(HardBoards.Whole, 10, mostFins: 130);

    [Fact]
    public void Among_boards_flush_on_purpose_all_that_is_hard_is_frequent()
    {
        var counts = new Dictionary<string, int>();
        foreach (var board in HardBoards.Flush.Take(UsualCount * 25 / 100))
        {
            foreach (var kind in HardKinds.Of(board.Size, board.Cuts))
            {
                counts[kind] = counts.GetValueOrDefault(kind) + 1;
            }
        }

        output.WriteLine(string.Join("; ", counts.Select(kind => $"{kind.Value} {kind.Key}")));
        Assert.All(Kinds, kind => Assert.InRange(counts.GetValueOrDefault(kind), 20, int.MaxValue));
    }

    [Fact]
    public void Casework_has_the_tunnels_and_shells_that_another_kernel_finds()
    {
        using var peer = Peer.Start(PeerFolder(), out var why);
        Assert.SkipWhen(peer is null, $"No second opinion: {why}.");
        var file = Path.Combine(AppContext.BaseDirectory, "data", "casework-80.json");
        peer!.Ask($"load {file}");
        peer.Ask("build");
        foreach (var (board, row) in Workload.Read(file).Zip(peer.Rows("part")))
        {
            var solid = SolidBuilder.Build(board.Size, board.Cuts).Checked();
            Assert.Equal(board.Id, row[0]);
            Assert.Equal(Number(row[4]), Genus(solid));
            Assert.Equal(Number(row[5]), solid.Shells());
        }
    }

    // Where everything is flush but for its rounding many boards have fins; so many of a thousand are let pass. Of upright
    // boards it is the peer that has them, seldom.
    private void Compare(Gen<(Vec3 Size, Cut[] Cuts)> kind, int percent, int mostFins)
    {
        using var peer = Peer.Start(PeerFolder(), out var why);
        Assert.SkipWhen(peer is null, $"No second opinion: {why}.");
        var count = Count * percent / 100;
        var isTilted = mostFins > 1;
        var tally = new Tally();
        var opinion = Ask(0);
        for (var first = 0; first < count; first += Batch)
        {
            var boards = Boards(first);
            var solids = boards.ConvertAll(board =>
                SolidBuilder.Build(board.Size, board.Cuts).Checked(mayHaveSlivers: true)
            );
            var rows = opinion.GetAwaiter().GetResult();
            opinion = Ask(first + Batch);
            for (var i = 0; i < boards.Count; i++)
            {
                tally.Note(boards[i], solids[i], rows[i]);
            }
        }

        output.WriteLine($"{count} boards: {tally}");
        Assert.InRange(tally.Misled, 0, count / 500);
        Assert.InRange(tally.Fins, 0, count * mostFins / 1000);
        Assert.True(tally.Grazed <= (isTilted ? count / 50 : 0), tally.FirstGrazed);

        List<(Vec3 Size, Cut[] Cuts)> Boards(int first) => [.. kind.Take(first, Math.Clamp(count - first, 0, Batch))];

        // The peer builds the next boards while these are looked at.
        Task<List<string[]>> Ask(int first) => Task.Run(() => Opinion(peer!, Boards(first)));
    }

    private static List<string[]> Opinion(Peer peer, List<(Vec3 Size, Cut[] Cuts)> boards)
    {
        if (boards.Count == 0)
        {
            return [];
        }

        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, PeerFile.Of(boards));
            peer.Ask($"load {file}");
            peer.Ask("build");
            return peer.Rows("part");
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>The folder of peer.mjs in the source tree, from the place of the test program.</summary>
    private static string PeerFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Dryfit.slnx")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder?.FullName ?? ".", "tests", "Solids", "peer");
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    // Tunnels of all shells together, less the shells beyond the first.
    private static int Genus(Solid solid) => 1 - (solid.Euler() / 2);

    /// <summary>How often the two agree, and why they may not.</summary>
    private sealed class Tally
    {
        private int same;
        private int touching;

        /// <summary>Volumes agree; a tilted cut that is flush but for its rounding leaves a fin of no thickness in the one.</summary>
        public int Fins { get; private set; }

        /// <summary>The peer's volume is wrong: counted points settle it. Cuts that only touch have been seen to mislead it.</summary>
        public int Misled { get; private set; }

        /// <summary>Volume and surface agree, tunnels or shells do not: tilted cuts touch but for their rounding.</summary>
        public int Grazed { get; private set; }

        public string? FirstGrazed { get; private set; }

        public void Note((Vec3 Size, Cut[] Cuts) board, Solid solid, string[] row)
        {
            var (volume, area) = (Number(row[1]), Number(row[2]));
            var (ourVolume, ourArea) = (solid.Volume, solid.Area);
            var isSameVolume = Math.Abs(ourVolume - volume) <= 1e-7 * (1000 + volume);
            var isSame = isSameVolume && Math.Abs(ourArea - area) <= 1e-6 * (1000 + area);
            if (!isSame && Math.Abs(ourVolume - volume) <= 1e-9 * (1000 + volume))
            {
                Fins++;
                return;
            }

            if (!isSame)
            {
                var counted = PointCount.Volume(board.Size, board.Cuts);
                if (Math.Abs(ourVolume - counted) < Math.Abs(volume - counted) / 2)
                {
                    Misled++;
                    return;
                }
            }

            Assert.True(
                isSame,
                $"volume {ourVolume} against {volume}, surface {ourArea} against {area}: {Told(board)}"
            );

            // Where the exact solid touches itself each kernel parts or joins it in its own way.
            if (solid.TouchesItself)
            {
                touching++;
                return;
            }

            if (Genus(solid) == Number(row[4]) && solid.Shells() == Number(row[5]))
            {
                same++;
                return;
            }

            Grazed++;
            FirstGrazed ??=
                $"genus {Genus(solid)} against {row[4]}, shells {solid.Shells()} against {row[5]}: {Told(board)}";
        }

        private static string Told((Vec3 Size, Cut[] Cuts) board) =>
            $"{board.Size} {string.Join(" ", board.Cuts.Select(Told))}";

        private static string Told(Cut cut) =>
            cut is PrismCut prism ? $"{prism} {string.Join(" ", prism.Outline)}" : cut.ToString()!;

        public override string ToString() =>
            $"{same} the same in volume, surface, genus and shells; {touching} in volume and surface, touching themselves;"
            + $" {Grazed} but for genus or shells; {Fins} but for a fin; {Misled} where the peer was misled";
    }
}
