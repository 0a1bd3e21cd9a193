using System.Text.Json;

namespace Dryfit.Solids.Tests;

/// <summary>Writes boards for the second kernel.</summary>
internal static class PeerFile
{
    public static byte[] Of(IReadOnlyList<(Vec3 Size, Cut[] Cuts)> boards)
    {
        using var memory = new MemoryStream();
        using (var json = new Utf8JsonWriter(memory))
        {
            json.WriteStartObject();
            json.WriteStartArray("boards");
            foreach (var board in boards)
            {
                json.WriteStartObject();
                json.WriteString("id", "");
                Write(json, "size", board.Size);
                json.WriteStartArray("cuts");
                foreach (var cut in board.Cuts)
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
        // A cut without a thickness takes nothing; the peer does not know it.
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
                    Write(json, new Vec2(Math.Round(bore.Radius * cos, 12), Math.Round(bore.Radius * sin, 12)));
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
                    Write(json, corner);
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

    private static void Write(Utf8JsonWriter json, Vec2 p)
    {
        json.WriteStartArray();
        json.WriteNumberValue(p.X);
        json.WriteNumberValue(p.Y);
        json.WriteEndArray();
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
