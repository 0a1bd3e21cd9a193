using System.Globalization;
using System.Text.Json;
using Dryfit.Bench;

namespace Dryfit.Solids.Tests;

/// <summary>
/// A second opinion on random boards with random cuts from manifold-3d (a general-purpose kernel in double precision that
/// breaks ties by a symbolic perturbation): volume, surface, genus and the number of
/// closed shells must be the same. Skipped where node or its package is missing.
/// </summary>
public sealed class PeerTests
{
    [Theory]
    [InlineData(false, 3000)]
    [InlineData(true, 3000)]
    public void Volumes_surfaces_tunnels_and_shells_are_those_of_another_kernel(bool tilted, int count)
    {
        using var peer = Peer.Start(PeerFolder(), out var why);
        Assert.SkipWhen(peer is null, $"No second opinion: {why}.");
        var boards = (tilted ? RandomBoards.Any : RandomBoards.Upright).Take(count).ToList();
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, Written(boards));
            peer!.Ask($"load {file}");
            peer.Ask("build");
            var rows = peer.Rows("part");
            var fins = 0;
            var misled = 0;
            var grazed = 0;
            for (var i = 0; i < boards.Count; i++)
            {
                var solid = SolidBuilder.Build(boards[i].Size, boards[i].Cuts).Checked(mayHaveSlivers: tilted);
                var (volume, area) = (Number(rows[i][1]), Number(rows[i][2]));
                var isSame =
                    Math.Abs(solid.Volume - volume) <= 1e-7 * (1000 + volume)
                    && Math.Abs(solid.Area - area) <= 1e-6 * (1000 + area);

                // A tilted cut that is flush but for its rounding leaves a fin of no thickness in the one and not in the other.
                if (!isSame && tilted && Math.Abs(solid.Volume - volume) <= 1e-9 * (1000 + volume))
                {
                    fins++;
                    continue;
                }

                // Cuts that only touch the board have been seen to mislead the peer: then counted points settle it.
                var counted = isSame ? 0 : PointCount.Volume(boards[i].Size, boards[i].Cuts);
                if (!isSame && Math.Abs(solid.Volume - counted) < Math.Abs(volume - counted) / 4)
                {
                    misled++;
                    continue;
                }

                Assert.True(
                    isSame,
                    $"board {i}: volume {solid.Volume} against {volume}, surface {solid.Area} against {area}:"
                        + $" {boards[i].Size} {string.Join(" ", boards[i].Cuts.Select(Told))}"
                );

                // Where the exact solid touches itself each kernel parts or joins it in its own way.
                var isAlike =
                    solid.TouchesItself || (Genus(solid) == Number(rows[i][4]) && solid.Shells() == Number(rows[i][5]));
                if (!isAlike && tilted)
                {
                    // So it is where tilted cuts touch but for their rounding.
                    grazed++;
                    continue;
                }

                Assert.True(
                    isAlike,
                    $"board {i}: genus {Genus(solid)} against {rows[i][4]}, shells {solid.Shells()} against {rows[i][5]}:"
                        + $" {boards[i].Size} {string.Join(" ", boards[i].Cuts.Select(Told))}"
                );
            }

            Assert.InRange(fins, 0, count / 200);
            Assert.InRange(grazed, 0, count / 200);
            Assert.InRange(misled, 0, count / 500);
        }
        finally
        {
            File.Delete(file);
        }
    }

    // Tunnels of all shells together, less the shells beyond the first.
    private static int Genus(Solid solid) => 1 - (solid.Euler() / 2);

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

    private static string Told(Cut cut) =>
        cut is PrismCut prism ? $"{prism} {string.Join(" ", prism.Outline)}" : cut.ToString()!;

    private static byte[] Written(List<(Vec3 Size, Cut[] Cuts)> boards)
    {
        using var memory = new MemoryStream();
        using (var json = new Utf8JsonWriter(memory))
        {
            json.WriteStartObject();
            json.WriteStartArray("boards");
            for (var i = 0; i < boards.Count; i++)
            {
                json.WriteStartObject();
                json.WriteString("id", i.ToString(CultureInfo.InvariantCulture));
                Write(json, "size", boards[i].Size);
                json.WriteStartArray("cuts");
                foreach (var cut in boards[i].Cuts)
                {
                    Write(json, cut);
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return memory.ToArray();
    }

    private static void Write(Utf8JsonWriter json, Cut cut)
    {
        // A box without a thickness takes nothing; the peer does not know it.
        if (cut is BoxCut flat && (flat.Min.X >= flat.Max.X || flat.Min.Y >= flat.Max.Y || flat.Min.Z >= flat.Max.Z))
        {
            return;
        }

        json.WriteStartObject();
        switch (cut)
        {
            case BoxCut box:
                json.WriteString("k", "box");
                Write(json, "min", box.Min);
                Write(json, "max", box.Max);
                break;
            case BoreCut bore:
                // Corners that fall on whole coordinates do so exactly, as they do in the solids.
                json.WriteString("k", "prism");
                json.WriteStartArray("poly");
                for (var i = 0; i < bore.Segments; i++)
                {
                    var (sin, cos) = Math.SinCos(2 * Math.PI * i / bore.Segments);
                    json.WriteStartArray();
                    json.WriteNumberValue(Math.Round(bore.Radius * cos, 12));
                    json.WriteNumberValue(Math.Round(bore.Radius * sin, 12));
                    json.WriteEndArray();
                }

                json.WriteEndArray();
                json.WriteNumber("h", bore.Depth);
                Write(json, bore.Frame);
                break;
            case PrismCut prism:
                json.WriteString("k", "prism");
                json.WriteStartArray("poly");
                foreach (var corner in prism.Outline)
                {
                    json.WriteStartArray();
                    json.WriteNumberValue(corner.X);
                    json.WriteNumberValue(corner.Y);
                    json.WriteEndArray();
                }

                json.WriteEndArray();
                json.WriteNumber("h", prism.Height);
                Write(json, prism.Frame);
                break;
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Frame frame)
    {
        Write(json, "o", frame.Origin);
        Write(json, "u", frame.U);
        Write(json, "v", frame.V);
        Write(json, "w", frame.W);
    }

    private static void Write(Utf8JsonWriter json, string name, Vec3 p)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue(p.X);
        json.WriteNumberValue(p.Y);
        json.WriteNumberValue(p.Z);
        json.WriteEndArray();
    }
}
