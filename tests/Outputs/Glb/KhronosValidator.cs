using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;

namespace Dryfit.Outputs.Tests.Glb;

/// <summary>The Khronos glTF validator, run by node. Tests that need it are skipped where it is not installed.</summary>
internal static class KhronosValidator
{
    public static async Task<JsonElement> Judge(ReadOnlyMemory<byte> glb)
    {
        var folder = NodeFolder.Of("tests/Outputs/validator");
        Assert.SkipUnless(
            Directory.Exists(Path.Combine(folder, "node_modules", "gltf-validator")),
            "The glTF validator is not installed: run 'npm ci' in tests/Outputs/validator."
        );
        using var node = Start(folder);
        await node.StandardInput.BaseStream.WriteAsync(glb, TestContext.Current.CancellationToken);
        node.StandardInput.Close();
        var report = await node.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await node.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, node.ExitCode);
        return JsonDocument.Parse(report).RootElement;
    }

    public static async Task HasNothingToSayOf(ReadOnlyMemory<byte> glb)
    {
        var report = await Judge(glb);
        Assert.Equal("[]", report.GetProperty("issues").GetProperty("messages").GetRawText());
    }

    private static Process Start(string folder)
    {
        try
        {
            return Process.Start(
                new ProcessStartInfo("node", "validate.js")
                {
                    WorkingDirectory = folder,
                    RedirectStandardInput = true,
                    RedirectStandardOutput = true,
                }
            )!;
        }
        catch (Win32Exception)
        {
            Assert.Skip("Node is not installed; it runs the glTF validator.");
            throw;
        }
    }
}
