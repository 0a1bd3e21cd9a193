using System.Text;
using System.Text.Json;
using Dryfit.Mending;

namespace Dryfit.Cli.Tests;

public sealed class Mending_a_recipe
{
    /// <summary>The doors of the cupboard are (764 + 16.5 - 3 + 16.5) / 2 = 397 wide.</summary>
    private const string Mended = Recipes.Cupboard + "as cut:\n  left door: { width: 397 }\n";

    [Fact]
    public void Shows_the_edit_as_a_diff_and_changes_nothing()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(1, shell.Run("check", "hall.dryfit.yaml", "--mend"));

        Assert.Contains("to mend    In line 14: 366 -> 397.", shell.Out, StringComparison.Ordinal);
        Assert.Contains(
            """
            --- hall.dryfit.yaml
            +++ hall.dryfit.yaml
            @@ -12,3 +12,3 @@
                 front: { doors: slab pair }
             as cut:
            -  left door: { width: 366 }
            +  left door: { width: 397 }
            With this edit nothing stops the saw; --apply makes it.
            """.ReplaceLineEndings("\n"),
            shell.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(Recipes.NarrowDoor, shell.Read("hall.dryfit.yaml"));
    }

    [Fact]
    public void Applied_touches_those_characters_only()
    {
        using var shell = new Shell();
        var odd = Recipes
            .NarrowDoor.ReplaceLineEndings("\r\n")
            .Replace("366 }", "366 }\t# “später” gehobelt ", StringComparison.Ordinal);
        byte[] before = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(odd)];
        File.WriteAllBytes(shell.PathOf("hall.dryfit.yaml"), before);

        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml", "--mend", "--apply"));

        byte[] after =
        [
            0xEF,
            0xBB,
            0xBF,
            .. Encoding.UTF8.GetBytes(odd.Replace("366", "397", StringComparison.Ordinal)),
        ];
        Assert.Equal(after, File.ReadAllBytes(shell.PathOf("hall.dryfit.yaml")));
        Assert.Contains(
            "1 edit made in hall.dryfit.yaml: now nothing stops the saw.",
            shell.Out,
            StringComparison.Ordinal
        );
        Assert.Equal(["hall.dryfit.yaml"], shell.Names());
        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml", "--quiet"));
    }

    [Fact]
    public void A_read_only_recipe_stays_as_it_is()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);
        File.SetAttributes(shell.PathOf("hall.dryfit.yaml"), FileAttributes.ReadOnly);

        Assert.Equal(4, shell.Run("check", "hall.dryfit.yaml", "--mend", "--apply"));

        Assert.Contains("'hall.dryfit.yaml' is read-only. Nothing was changed.", shell.Error, StringComparison.Ordinal);
        Assert.Equal(Recipes.NarrowDoor, shell.Read("hall.dryfit.yaml"));
        File.SetAttributes(shell.PathOf("hall.dryfit.yaml"), FileAttributes.Normal);
    }

    [Fact]
    public void A_recipe_that_somebody_changed_meanwhile_is_left_to_them()
    {
        using var shell = new Shell();
        shell.Write("a.yaml", "a: 1\n");
        shell.Write("b.yaml", "b: 1, theirs\n");
        SourceText[] read = [Text("a.yaml", "a: 1\n"), Text("b.yaml", "b: 1\n")];
        SourceText[] edited = [Text("a.yaml", "a: 2\n"), Text("b.yaml", "b: 2\n")];

        var trouble = Assert.Throws<FileTroubleException>(() => EditedFiles.Write(read, edited, In(shell)));

        Assert.Contains("'b.yaml' was changed while it was being mended", trouble.Message, StringComparison.Ordinal);
        Assert.Equal("a: 1\n", shell.Read("a.yaml"));
        Assert.Equal("b: 1, theirs\n", shell.Read("b.yaml"));
        Assert.Equal(["a.yaml", "b.yaml"], shell.Names());
    }

    [Fact]
    public void A_link_to_the_recipe_stays_a_link()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var shell = new Shell();
        shell.Write("real/hall.dryfit.yaml", Recipes.NarrowDoor);
        File.CreateSymbolicLink(shell.PathOf("link.dryfit.yaml"), shell.PathOf("real/hall.dryfit.yaml"));
        File.SetUnixFileMode(shell.PathOf("real/hall.dryfit.yaml"), UnixFileMode.UserRead | UnixFileMode.UserWrite);

        Assert.Equal(0, shell.Run("check", "link.dryfit.yaml", "--mend", "--apply"));

        Assert.Equal(Mended, shell.Read("real/hall.dryfit.yaml"));
        Assert.NotNull(new FileInfo(shell.PathOf("link.dryfit.yaml")).LinkTarget);
        Assert.Equal(
            UnixFileMode.UserRead | UnixFileMode.UserWrite,
            File.GetUnixFileMode(shell.PathOf("real/hall.dryfit.yaml"))
        );
    }

    [Fact]
    public void Tells_other_programs_the_edit_by_line_and_column()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(1, shell.Run("check", "hall.dryfit.yaml", "--mend", "--json"));

        var report = JsonDocument.Parse(shell.Out).RootElement;
        var edit = report.GetProperty("findings")[0].GetProperty("remedy").GetProperty("edits")[0];
        Assert.Equal("hall.dryfit.yaml", edit.GetProperty("file").GetString());
        Assert.Equal(14, edit.GetProperty("line").GetInt32());
        Assert.Equal(23, edit.GetProperty("column").GetInt32());
        Assert.Equal(3, edit.GetProperty("length").GetInt32());
        Assert.Equal("366", edit.GetProperty("old").GetString());
        Assert.Equal("397", edit.GetProperty("new").GetString());
        Assert.False(report.GetProperty("mended").GetProperty("stopsTheSaw").GetBoolean());
    }

    [Fact]
    public void A_sound_recipe_has_nothing_to_mend()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.Cupboard);

        Assert.Equal(0, shell.Run("check", "hall.dryfit.yaml", "--mend", "--apply"));

        Assert.EndsWith("Nothing to mend.\n", shell.Out, StringComparison.Ordinal);
        Assert.Equal(Recipes.Cupboard, shell.Read("hall.dryfit.yaml"));
    }

    [Fact]
    public void Is_not_applied_unless_it_is_worked_out()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        Assert.Equal(2, shell.Run("check", "hall.dryfit.yaml", "--apply"));

        Assert.Contains("write --mend --apply", shell.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_says_that_there_is_more_to_ask()
    {
        using var shell = new Shell();
        shell.Write("hall.dryfit.yaml", Recipes.NarrowDoor);

        shell.Run("check", "hall.dryfit.yaml");

        Assert.EndsWith("--mend works out which number to change, and to what.\n", shell.Out, StringComparison.Ordinal);
    }

    private static SourceText Text(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    private static Surroundings In(Shell shell) =>
        new()
        {
            Out = TextWriter.Null,
            Error = TextWriter.Null,
            Folder = shell.Folder,
            Variable = _ => null,
        };
}
