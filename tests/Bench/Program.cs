using System.Diagnostics;
using System.Globalization;
using Dryfit.Bench;
using Dryfit.Solids;

var boards = Workload.Read(args[0]);
var solids = new Solid[boards.Count];
var best = new double[boards.Count];
Array.Fill(best, 1e9);
var bestAll = 1e9;
long bytes = 0;
for (var pass = 0; pass < int.Parse(args[1], CultureInfo.InvariantCulture); pass++)
{
    var all = Stopwatch.GetTimestamp();
    var before = GC.GetAllocatedBytesForCurrentThread();
    for (var i = 0; i < solids.Length; i++)
    {
        var start = Stopwatch.GetTimestamp();
        solids[i] = SolidBuilder.Build(boards[i].Size, boards[i].Cuts);
        best[i] = Math.Min(best[i], Stopwatch.GetElapsedTime(start).TotalMicroseconds);
    }

    bestAll = Math.Min(bestAll, Stopwatch.GetElapsedTime(all).TotalMilliseconds);
    bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / solids.Length;
}

Console.Error.WriteLine($"{bestAll:F2} ms, sum of bests {best.Sum() / 1000:F2} ms, {bytes} B/part");
for (var i = 0; i < Math.Min(8, solids.Length); i++)
{
    Console.Error.WriteLine($"{boards[i].Id} {best[i]:F1} us {solids[i].Triangles.Count / 3}");
}

for (var i = 0; i < solids.Length; i++)
{
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{boards[i].Id}\t{solids[i].Volume / 1e18:F5}\t{solids[i].Area / 1e12:F6}\t{solids[i].Triangles.Count / 3}"
        )
    );
}
