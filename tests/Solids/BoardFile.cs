using System.Text.Json;

namespace Dryfit.Solids.Tests;

/// <summary>A board of the corpus: a file of its blank and cuts, as in the files of the speed comparison but in grid units, and
/// what is expected of it.</summary>
/// <param name="Volume">Its volume, from the source named in the file.</param>
/// <param name="Pieces">How many pieces it falls into.</param>
/// <param name="Touches">Whether it touches itself; null where the file does not say.</param>
internal sealed record BoardFile(Vec3 Size, Cut[] Cuts, double Volume, int Pieces, bool? Touches)
{
    public static BoardFile Read(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(path));
        var board = document.RootElement;
        var expected = board.GetProperty("expect");
        return new(
            Point(board.GetProperty("size")),
            [.. board.GetProperty("cuts").EnumerateArray().Select(ReadCut)],
            expected.GetProperty("volume").GetDouble(),
            expected.GetProperty("pieces").GetInt32(),
            expected.TryGetProperty("touches", out var touches) ? touches.GetBoolean() : null
        );
    }

    private static Cut ReadCut(JsonElement cut) =>
        cut.GetProperty("k").GetString() switch
        {
            "box" => new BoxCut(Point(cut.GetProperty("min")), Point(cut.GetProperty("max"))),
            "ngon" => new BoreCut(
                ReadFrame(cut),
                cut.GetProperty("r").GetDouble(),
                cut.GetProperty("h").GetDouble(),
                cut.GetProperty("n").GetInt32()
            ),
            "prism" => new PrismCut(
                ReadFrame(cut),
                [.. cut.GetProperty("poly").EnumerateArray().Select(p => new Vec2(p[0].GetDouble(), p[1].GetDouble()))],
                cut.GetProperty("h").GetDouble()
            ),
            var kind => throw new InvalidDataException($"No such kind of cut: {kind}."),
        };

    private static Frame ReadFrame(JsonElement cut) =>
        new(
            Point(cut.GetProperty("o")),
            Point(cut.GetProperty("u")),
            Point(cut.GetProperty("v")),
            Point(cut.GetProperty("w"))
        );

    private static Vec3 Point(JsonElement p) => new(p[0].GetDouble(), p[1].GetDouble(), p[2].GetDouble());
}
