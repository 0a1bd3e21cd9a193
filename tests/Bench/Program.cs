using System.Diagnostics;
using System.Globalization;
using Dryfit.Bench;
using Dryfit.Solids;

var boards = Workload.Read(args[0]);
var solids = new Solid[boards.Count];
for (var pass = 0; pass < 3; pass++)
{
    var watch = Stopwatch.StartNew();
    var before = GC.GetAllocatedBytesForCurrentThread();
    for (var i = 0; i < solids.Length; i++)
    {
        solids[i] = SolidBuilder.Build(boards[i].Size, boards[i].Cuts);
    }

    Console.Error.WriteLine(
        $"{watch.Elapsed.TotalMilliseconds:F2} ms {(GC.GetAllocatedBytesForCurrentThread() - before) / solids.Length} B/part"
    );
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
