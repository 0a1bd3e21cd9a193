using System.Diagnostics;
using System.Globalization;
using Dryfit.Bench;

if (args is ["starters", .. var starters])
{
    Starters.Measure(starters);
    return;
}

if (args is ["checks", .. var inspected])
{
    Checks.Measure(inspected);
    return;
}

if (args is ["slips"])
{
    Slipping.Measure();
    return;
}

var folder = args[0];
var file = args[1];
var pairsFile = Array.IndexOf(args, "--pairs") is var at and > 0 ? args[at + 1] : null;
var boards = Workload.Read(file);
var work = new Work(boards, pairsFile is null ? [] : Workload.ReadPairs(pairsFile));

Peer? peer = null;
if (args.Contains("--peer"))
{
    peer = Peer.Start(folder, out var why) ?? throw new InvalidOperationException(why);
    peer.Ask($"load {file}");
}

var times = new Times();
Measure.Warm(work);
for (var round = 0; round < (boards.Count <= 200 ? 7 : 1); round++)
{
    Measure.Round(work, times);
    if (peer is not null)
    {
        times.Add("peer build", peer.Ask("build"));
        if (pairsFile is not null)
        {
            times.Add("peer pairs", peer.Ask($"pairs {pairsFile}"));
        }
    }
}

for (var i = 0; i < boards.Count; i++)
{
    var solid = work.Solids[i];
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{boards[i].Id}\t{solid.Volume / Work.CubicMm:F5}\t{solid.Area / Work.SquareMm:F6}\t{solid.Triangles.Count / 3}"
        )
    );
}

if (pairsFile is not null)
{
    foreach (var (a, b, volume, gap) in work.Measured)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{a}\t{b}\t{volume:G9}\t{gap:G9}"));
    }
}

times.Print(boards.Count);
using (var own = Process.GetCurrentProcess())
{
    Memory.Print(own.PeakWorkingSet64, peer?.Ask("memory"));
}

peer?.Dispose();
