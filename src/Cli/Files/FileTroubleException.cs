namespace Dryfit.Cli;

/// <summary>A file or folder that the user named cannot be read or written; the message says which and why.</summary>
internal sealed class FileTroubleException : Exception
{
    public FileTroubleException(string message)
        : base(message) { }

    public FileTroubleException(string message, Exception inner)
        : base(message, inner) { }

    /// <summary>Why the system refused, as a phrase in plain words without the path.</summary>
    public static string Reason(Exception fault) =>
        fault switch
        {
            UnauthorizedAccessException => "permission denied",
            FileNotFoundException or DirectoryNotFoundException => "it is not there",
            PathTooLongException => "the name is too long",
            IOException { HResult: var code } when (code & 0xFFFF) is 28 or 112 => "the disk is full",
            IOException { HResult: var code } when (code & 0xFFFF) is 30 or 19 => "the disk is read-only",
            ArgumentException or NotSupportedException => "that is no file name",
            _ => fault.Message.TrimEnd('.'),
        };

    /// <summary>Whether an exception is the system's refusal of a file rather than a fault of our own.</summary>
    public static bool IsRefusal(Exception fault) =>
        fault
            is IOException
                or UnauthorizedAccessException
                or NotSupportedException
                or System.Security.SecurityException;
}
