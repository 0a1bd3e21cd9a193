using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace Dryfit.Outputs.Tests.Glb;

/// <summary>
/// The general-purpose kernel manifold-3d, run by node and given a GLB and nothing else; see <c>glb.mjs</c> for what it
/// understands. Tests that need it are skipped where it is not installed.
/// </summary>
internal sealed class AnotherKernel : IDisposable
{
    private readonly Process _node;
    private readonly string _file;

    private AnotherKernel(Process node, string file) => (_node, _file) = (node, file);

    public static AnotherKernel Reading(ReadOnlyMemory<byte> glb)
    {
        var folder = NodeFolder.Of("tests/Solids/peer");
        Assert.SkipUnless(
            Directory.Exists(Path.Combine(folder, "node_modules", "manifold-3d")),
            "manifold-3d is not installed: run 'npm ci' in tests/Solids/peer."
        );
        var file = Path.GetTempFileName();
        File.WriteAllBytes(file, glb.Span);
        try
        {
            return new(
                Process.Start(
                    new ProcessStartInfo("node", ["glb.mjs", file])
                    {
                        WorkingDirectory = folder,
                        RedirectStandardInput = true,
                        RedirectStandardOutput = true,
                    }
                )!,
                file
            );
        }
        catch (Win32Exception)
        {
            File.Delete(file);
            Assert.Skip("Node is not installed; it runs manifold-3d.");
            throw;
        }
    }

    /// <summary>What two parts share, in mm3, and how far they stand apart, in mm, <paramref name="capMm"/> where that is more.</summary>
    public (double CubicMm, double GapMm) Between(string a, string b, double capMm, GroupTurn? turn = null)
    {
        using var question = new MemoryStream();
        using (var json = new Utf8JsonWriter(question))
        {
            json.WriteStartObject();
            json.WriteString("a", a);
            json.WriteString("b", b);
            json.WriteNumber("cap", capMm);
            if (turn is not null)
            {
                json.WriteStartObject("turn");
                json.WriteString("group", turn.Group);
                json.WriteStartArray("axis");
                foreach (var number in turn.Axis)
                    json.WriteNumberValue(number);
                json.WriteEndArray();
                json.WriteNumber("degrees", turn.Degrees);
                json.WriteEndObject();
            }
            json.WriteEndObject();
        }
        _node.StandardInput.BaseStream.Write(question.ToArray());
        _node.StandardInput.BaseStream.WriteByte((byte)'\n');
        _node.StandardInput.BaseStream.Flush();
        var answer = (
            _node.StandardOutput.ReadLine() ?? throw new InvalidOperationException("The kernel has died.")
        ).Split('\t');
        return (Number(answer[0]), Number(answer[1]));
    }

    public void Dispose()
    {
        _node.StandardInput.Close();
        _node.WaitForExit();
        _node.Dispose();
        File.Delete(_file);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

/// <summary>A group of the file turned about the place of its node.</summary>
/// <param name="Axis">In the axes of the file, Y up.</param>
internal sealed record GroupTurn(string Group, double[] Axis, double Degrees);
