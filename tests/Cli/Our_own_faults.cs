using System.Text;

namespace Dryfit.Cli.Tests;

public sealed class Our_own_faults
{
    [Fact]
    public void Are_owned_up_to_without_a_stack()
    {
        var (code, said) = Run(new Broken(new InvalidOperationException("the saw bit back")), trace: null);

        Assert.Equal(70, code);
        Assert.Contains("internal error", said, StringComparison.Ordinal);
        Assert.Contains("the saw bit back", said, StringComparison.Ordinal);
        Assert.Contains("fault of Dryfit", said, StringComparison.Ordinal);
        Assert.Contains("DRYFIT_TRACE=1", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_their_stack_where_it_is_asked_for()
    {
        var (code, said) = Run(new Broken(new InvalidOperationException("the saw bit back")), trace: "1");

        Assert.Equal(70, code);
        Assert.Contains("   at ", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Are_not_what_a_full_disk_is()
    {
        var (code, said) = Run(new Broken(new IOException("No space left on device", 28)), trace: null);

        Assert.Equal(4, code);
        Assert.Contains("the disk is full", said, StringComparison.Ordinal);
    }

    private static (int Code, string Said) Run(TextWriter output, string? trace)
    {
        using var error = new StringWriter();
        var surroundings = new Surroundings
        {
            Out = output,
            Error = error,
            Folder = Path.GetTempPath(),
            Variable = name => name == "DRYFIT_TRACE" ? trace : null,
        };
        return (DryfitCommand.Run(["--version"], surroundings), error.ToString());
    }

    private sealed class Broken(Exception fault) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw fault;
    }
}
