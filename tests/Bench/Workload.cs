using System.Text.Json;
using Dryfit.Solids;

namespace Dryfit.Bench;

/// <summary>A board of a workload file: name, blank, cuts and place, in whole nanometres (lengths of the file are decimal
/// millimetres, read exactly); directions as given.</summary>
internal sealed record Board(string Id, Vec3 Size, IReadOnlyList<Cut> Cuts, Frame Frame);

/// <summary>Reads workload files: <c>boards[]</c> with <c>size</c>, place <c>o u v w</c> and <c>cuts[]</c> of the kinds
/// <c>box</c>, <c>ngon</c> and <c>prism</c>.</summary>
internal static class Workload
{
    /// <summary>Grid units to a millimetre: the file's six decimals are whole numbers.</summary>
    public const double UnitsPerMm = 1e6;

    public static List<Board> Read(string path)
    {
        using var stream = File.OpenRead(path);
        using var document = JsonDocument.Parse(stream);
        var boards = new List<Board>();
        foreach (var board in document.RootElement.GetProperty("boards").EnumerateArray())
        {
            var cuts = new List<Cut>();
            foreach (var cut in board.GetProperty("cuts").EnumerateArray())
            {
                cuts.Add(ReadCut(cut));
            }

            boards.Add(
                new(board.GetProperty("id").GetString()!, Lengths(board.GetProperty("size")), cuts, ReadFrame(board))
            );
        }

        return boards;
    }

    /// <summary>The first two ids of each line.</summary>
    public static List<(string A, string B)> ReadPairs(string path) =>
        [.. File.ReadLines(path).Select(line => line.Split('\t')).Select(row => (row[0], row[1]))];

    private static Cut ReadCut(JsonElement cut) =>
        cut.GetProperty("k").GetString() switch
        {
            "box" => new BoxCut(Lengths(cut.GetProperty("min")), Lengths(cut.GetProperty("max"))),
            "ngon" => new BoreCut(
                ReadFrame(cut),
                Length(cut.GetProperty("r")),
                Length(cut.GetProperty("h")),
                cut.GetProperty("n").GetInt32()
            ),
            "prism" => new PrismCut(
                ReadFrame(cut),
                [.. cut.GetProperty("poly").EnumerateArray().Select(p => new Vec2(Length(p[0]), Length(p[1])))],
                Length(cut.GetProperty("h"))
            ),
            var kind => throw new InvalidDataException($"No such kind of cut: {kind}."),
        };

    private static Frame ReadFrame(JsonElement element) =>
        new(
            Lengths(element.GetProperty("o")),
            Direction(element.GetProperty("u")),
            Direction(element.GetProperty("v")),
            Direction(element.GetProperty("w"))
        );

    private static Vec3 Lengths(JsonElement e) => new(Length(e[0]), Length(e[1]), Length(e[2]));

    private static double Length(JsonElement e) =>
        e.TryGetDecimal(out var exact) ? (double)(exact * 1_000_000m) : e.GetDouble() * UnitsPerMm;

    private static Vec3 Direction(JsonElement e) => new(e[0].GetDouble(), e[1].GetDouble(), e[2].GetDouble());
}
