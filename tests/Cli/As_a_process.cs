using System.Diagnostics;
using System.Text;

namespace Dryfit.Cli.Tests;

public sealed class As_a_process
{
    [Fact]
    public void Leaves_with_the_code_and_keeps_results_and_messages_apart()
    {
        using var shell = new Shell();

        var version = Run(shell, [], "--version");
        var missing = Run(shell, [], "check", "nothing.dryfit.yaml");
        var misspelt = Run(shell, [], "bild");

        Assert.Equal((0, ""), (version.Code, version.Error));
        Assert.StartsWith("dryfit ", version.Text, StringComparison.Ordinal);
        Assert.Equal((4, ""), (missing.Code, missing.Text));
        Assert.Contains("There is no recipe 'nothing.dryfit.yaml'", missing.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (misspelt.Code, misspelt.Text));
    }

    [Theory]
    [InlineData("LC_ALL", "C")]
    [InlineData("LC_ALL", "de_DE.ISO-8859-1")]
    [InlineData("LANG", "")]
    public void Prints_UTF_8_whatever_the_locale(string variable, string value)
    {
        using var shell = new Shell();
        shell.Write("Möbel.dryfit.yaml", "piece: Schränkchen\nunits: mn\n");

        var run = Run(shell, new() { [variable] = value }, "check", "Möbel.dryfit.yaml");

        Assert.Equal(3, run.Code);
        Assert.Contains("Möbel.dryfit.yaml:2:8", run.Error, StringComparison.Ordinal);
        Assert.NotEqual('\uFEFF', run.Error[0]);
    }

    [Fact]
    public void Prints_no_colour_into_a_pipe()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        var run = Run(shell, new() { ["TERM"] = "xterm-256color" }, "check", "hall.dryfit.yaml");

        Assert.Equal(1, run.Code);
        Assert.DoesNotContain('\u001b', run.Text + run.Error);
    }

    private static (int Code, string Text, string Error) Run(
        Shell shell,
        Dictionary<string, string> variables,
        params string[] arguments
    )
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = shell.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new UTF8Encoding(false),
            StandardErrorEncoding = new UTF8Encoding(false),
        };
        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "dryfit.dll"));
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        foreach (var (name, value) in variables)
            start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, text, error.Result);
    }
}
