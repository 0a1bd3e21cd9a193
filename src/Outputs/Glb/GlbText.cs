using System.Buffers;
using System.Buffers.Binary;
using System.Text.Json;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// The JSON of a GLB is written with as few digits as bring back a float. Readers that reckon in doubles (every browser)
/// would then see places that are off in the ninth digit, and a board that hangs from its upper end would stand a hair
/// below the floor. So places of nodes are written out to their full value.
/// </summary>
internal static class GlbText
{
    private const int HeaderLength = 12;
    private const int ChunkHeaderLength = 8;
    private const int Alignment = 4;

    public static byte[] WithExactPlaces(ReadOnlyMemory<byte> glb)
    {
        var bytes = glb.Span;
        var jsonLength = BinaryPrimitives.ReadInt32LittleEndian(bytes[HeaderLength..]);
        var json = Rewritten(bytes.Slice(HeaderLength + ChunkHeaderLength, jsonLength));
        var rest = bytes[(HeaderLength + ChunkHeaderLength + jsonLength)..];

        var padded = (json.Length + Alignment - 1) / Alignment * Alignment;
        var exact = new byte[HeaderLength + ChunkHeaderLength + padded + rest.Length];
        bytes[..(HeaderLength + ChunkHeaderLength)].CopyTo(exact);
        BinaryPrimitives.WriteInt32LittleEndian(exact.AsSpan(HeaderLength - sizeof(int)), exact.Length);
        BinaryPrimitives.WriteInt32LittleEndian(exact.AsSpan(HeaderLength), padded);
        var chunk = exact.AsSpan(HeaderLength + ChunkHeaderLength, padded);
        json.CopyTo(chunk);
        chunk[json.Length..].Fill((byte)' ');
        rest.CopyTo(exact.AsSpan(HeaderLength + ChunkHeaderLength + padded));
        return exact;
    }

    private static ReadOnlySpan<byte> Rewritten(ReadOnlySpan<byte> json)
    {
        var text = new ArrayBufferWriter<byte>(json.Length);
        using var writer = new Utf8JsonWriter(text);
        var reader = new Utf8JsonReader(json);
        var isPlace = false;
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.StartObject:
                    writer.WriteStartObject();
                    break;
                case JsonTokenType.EndObject:
                    writer.WriteEndObject();
                    break;
                case JsonTokenType.StartArray:
                    writer.WriteStartArray();
                    break;
                case JsonTokenType.EndArray:
                    writer.WriteEndArray();
                    break;
                case JsonTokenType.PropertyName:
                    isPlace = reader.ValueTextEquals("matrix"u8) || reader.ValueTextEquals("translation"u8);
                    writer.WritePropertyName(reader.GetString()!);
                    break;
                case JsonTokenType.Number when isPlace:
                    writer.WriteNumberValue((double)reader.GetSingle());
                    break;
                case JsonTokenType.String:
                    writer.WriteStringValue(reader.GetString());
                    break;
                default:
                    writer.WriteRawValue(reader.ValueSpan, skipInputValidation: true);
                    break;
            }
        }

        writer.Flush();
        return text.WrittenSpan;
    }
}
