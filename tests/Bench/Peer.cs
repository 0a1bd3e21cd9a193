using System.Diagnostics;
using System.Globalization;

namespace Dryfit.Bench;

/// <summary>The general-purpose kernel manifold-3d in a node process of its own; see <c>peer.mjs</c> for what it understands.</summary>
internal sealed class Peer : IDisposable
{
    private readonly Process node;

    private Peer(Process node) => this.node = node;

    /// <summary>Starts it from a folder that holds peer.mjs and its packages.</summary>
    /// <param name="why">What is missing, where it cannot start.</param>
    public static Peer? Start(string folder, out string why)
    {
        if (!Directory.Exists(Path.Combine(folder, "node_modules", "manifold-3d")))
        {
            why =
                $"the npm package manifold-3d is not installed: run npm ci in {Path.GetFileName(folder)} beside the tests";
            return null;
        }

        try
        {
            var node = Process.Start(
                new ProcessStartInfo("node", "peer.mjs")
                {
                    WorkingDirectory = folder,
                    RedirectStandardInput = true,
                    RedirectStandardOutput = true,
                }
            )!;
            why = "";
            return new(node);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            why = "node is not installed";
            return null;
        }
    }

    /// <summary>Sends a command that answers with one line: a word and a number.</summary>
    public double Ask(string command)
    {
        node.StandardInput.WriteLine(command);
        node.StandardInput.Flush();
        var answer = node.StandardOutput.ReadLine() ?? throw new InvalidOperationException("The peer has died.");
        return double.Parse(answer.Split(' ')[1], CultureInfo.InvariantCulture);
    }

    /// <summary>Sends a command that answers with rows.</summary>
    public List<string[]> Rows(string command)
    {
        node.StandardInput.WriteLine(command);
        node.StandardInput.Flush();
        var rows = new List<string[]>();
        while (node.StandardOutput.ReadLine() is { } row && row != "end")
        {
            rows.Add(row.Split('\t'));
        }

        return rows;
    }

    public void Dispose()
    {
        node.StandardInput.Close();
        node.WaitForExit();
        node.Dispose();
    }
}
