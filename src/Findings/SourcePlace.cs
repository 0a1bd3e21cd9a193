namespace Dryfit.Findings;

/// <summary>A stretch of a text file. Lines and columns count from 1; columns count UTF-16 units.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Line">1 for the first line.</param>
/// <param name="Column">1 for the first character of the line.</param>
/// <param name="Length">How many characters of that line; at least 1.</param>
public sealed record SourcePlace(string File, int Line, int Column, int Length)
{
    /// <summary>As compilers write it: <c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
