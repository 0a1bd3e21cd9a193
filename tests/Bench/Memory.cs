using System.Globalization;

namespace Dryfit.Bench;

/// <summary>The most memory that each process held at any time, workload file and runtime included.</summary>
internal static class Memory
{
    private const double BytesPerMiB = 1 << 20;

    public static void Print(long ownBytes, double? peerBytes)
    {
        var against = peerBytes is { } bytes ? $", peer {Told(bytes)} (ratio {Number(ownBytes / bytes, "F2")})" : "";
        Console.WriteLine($"# peak memory: {Told(ownBytes)}{against}");
    }

    private static string Told(double bytes) => Number(bytes / BytesPerMiB, "F0") + " MiB";

    private static string Number(double number, string format) => number.ToString(format, CultureInfo.InvariantCulture);
}
