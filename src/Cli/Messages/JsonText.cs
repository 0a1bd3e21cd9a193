using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Dryfit.Cli;

/// <summary>JSON for standard output: indented, readable, UTF-8.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        // The text goes to a terminal or a program, never into a page: accents and inch marks may stay as they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Of(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Options))
            write(writer);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
