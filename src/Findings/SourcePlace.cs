namespace Dryfit.Findings;

/// <summary>A stretch of a text file. Lines and columns count from 1; columns count UTF-16 units.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Line">1 for the first line.</param>
/// <param name="Column">1 for the first character of the line.</param>
/// <param name="Length">How many characters of that line; at least 1.</param>
public sealed record SourcePlace(string File, int Line, int Column, int Length)
{
    /// <summary>Where the maker's own word is used, for a place within its file; null for all other places.</summary>
    /// <remarks>A word may be used in another: this place may have one of its own.</remarks>
    public SourcePlace? UsedAt { get; init; }

    /// <summary>The places of use one after the other, the nearest first; none for places of the recipe itself.</summary>
    public IEnumerable<SourcePlace> Uses
    {
        get
        {
            for (var use = UsedAt; use is not null; use = use.UsedAt)
                yield return use;
        }
    }

    /// <summary>As compilers write it: <c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
