namespace Dryfit.Cli;

/// <summary>What the program leaves with, so that a script can tell what happened.</summary>
internal static class ExitCode
{
    /// <summary>All went well and nothing must stop the saw.</summary>
    public const int Fine = 0;

    /// <summary>A finding says not to cut.</summary>
    public const int Stop = 1;

    /// <summary>The command line is wrong.</summary>
    public const int Usage = 2;

    /// <summary>The recipe or the shop file is wrong.</summary>
    public const int InvalidInput = 3;

    /// <summary>A file could not be read or written.</summary>
    public const int FileTrouble = 4;

    /// <summary>A fault of our own (EX_SOFTWARE of BSD's sysexits).</summary>
    public const int Internal = 70;
}
