using System.Text;
using Dryfit.Outputs;

namespace Dryfit.Cli.Tests;

public sealed class Output_folder
{
    private static readonly Surroundings Nowhere = new()
    {
        Out = TextWriter.Null,
        Error = TextWriter.Null,
        Folder = Path.GetTempPath(),
        Variable = _ => null,
    };

    [Fact]
    public void Is_made_where_it_is_not_there_whatever_it_is_called()
    {
        using var shell = new Shell();
        var folder = shell.PathOf("Küche für Öl/été 2");

        var written = OutputFolder.Write(folder, [File("a.txt", "one"), File("b.txt", "two")], Nowhere);

        Assert.Equal([Path.Combine(folder, "a.txt"), Path.Combine(folder, "b.txt")], written);
        Assert.Equal(["a.txt", "b.txt"], shell.Names("Küche für Öl/été 2"));
        Assert.Equal("two", shell.Read("Küche für Öl/été 2/b.txt"));
    }

    [Fact]
    public void Holds_the_new_files_alone_after_a_second_run()
    {
        using var shell = new Shell();
        OutputFolder.Write(shell.Folder, [File("a.txt", "a long old text")], Nowhere);

        OutputFolder.Write(shell.Folder, [File("a.txt", "new")], Nowhere);

        Assert.Equal("new", shell.Read("a.txt"));
        Assert.Equal(["a.txt"], shell.Names());
    }

    [Fact]
    public void Keeps_what_was_there_where_one_of_several_files_cannot_be_written()
    {
        using var shell = new Shell();
        shell.Write("a.txt", "old");
        Directory.CreateDirectory(shell.PathOf("b.txt"));

        var trouble = Assert.Throws<FileTroubleException>(() =>
            OutputFolder.Write(shell.Folder, [File("a.txt", "new"), File("b.txt", "new")], Nowhere)
        );

        Assert.Contains("b.txt' is a folder", trouble.Message, StringComparison.Ordinal);
        Assert.Equal("old", shell.Read("a.txt"));
        Assert.Equal(["a.txt", "b.txt"], shell.Names());
    }

    [Fact]
    public void Loses_what_a_crashed_run_left_behind()
    {
        using var shell = new Shell();
        shell.Write(".a.txt.dryfit-tmp", "half a fi");
        shell.Write(".dryfit-lock", "");
        shell.Write("mine.txt", "not Dryfit's");

        OutputFolder.Write(shell.Folder, [File("a.txt", "whole")], Nowhere);

        Assert.Equal(["a.txt", "mine.txt"], shell.Names());
    }

    [Fact]
    public void Is_never_left_through_a_symbolic_link()
    {
        using var shell = new Shell();
        shell.Write("outside/precious.txt", "precious");
        Directory.CreateDirectory(shell.PathOf("out"));
        System.IO.File.CreateSymbolicLink(shell.PathOf("out/a.txt"), shell.PathOf("outside/precious.txt"));

        OutputFolder.Write(shell.PathOf("out"), [File("a.txt", "new")], Nowhere);

        Assert.Equal("precious", shell.Read("outside/precious.txt"));
        Assert.Equal("new", shell.Read("out/a.txt"));
    }

    [Theory]
    [InlineData("../a.txt")]
    [InlineData("/etc/a.txt")]
    [InlineData("b/a.txt")]
    [InlineData("b\\a.txt")]
    [InlineData("..")]
    [InlineData("")]
    public void Takes_plain_names_only(string name)
    {
        using var shell = new Shell();

        Assert.Throws<InvalidOperationException>(() => OutputFolder.Write(shell.Folder, [File(name, "x")], Nowhere));

        Assert.Empty(shell.Names());
    }

    [Fact]
    public void Is_no_file()
    {
        using var shell = new Shell();
        shell.Write("out", "a file");

        var trouble = Assert.Throws<FileTroubleException>(() =>
            OutputFolder.Write(shell.PathOf("out"), [File("a.txt", "x")], Nowhere)
        );

        Assert.Contains("is a file; the output needs a folder", trouble.Message, StringComparison.Ordinal);
        Assert.Equal("a file", shell.Read("out"));
    }

    [Fact]
    public void Below_a_file_cannot_be_made()
    {
        using var shell = new Shell();
        shell.Write("file", "");

        Assert.Throws<FileTroubleException>(() =>
            OutputFolder.Write(shell.PathOf("file/out"), [File("a.txt", "x")], Nowhere)
        );
    }

    [Fact]
    public void Is_written_by_one_run_at_a_time_and_whole_whoever_comes_last()
    {
        using var shell = new Shell();
        var texts = Enumerable.Range(0, 8).Select(i => new string((char)('a' + i), 100_000)).ToList();

        Parallel.ForEach(
            texts,
            text => OutputFolder.Write(shell.Folder, [File("a.txt", text), File("b.txt", text)], Nowhere)
        );

        Assert.Equal(["a.txt", "b.txt"], shell.Names());
        Assert.Contains(shell.Read("a.txt"), texts);
        Assert.Equal(shell.Read("a.txt"), shell.Read("b.txt"));
    }

    private static OutputFile File(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));
}
