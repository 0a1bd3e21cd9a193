using System.Text;

namespace Dryfit.Casework.Building;

/// <summary>Names as ids: lower case letters, digits and single hyphens.</summary>
internal static class Slug
{
    public static string Of(string name)
    {
        var slug = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(char.ToLowerInvariant(c));
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }
        return slug.ToString().Trim('-') is { Length: > 0 } made ? made : "x";
    }
}

/// <summary>The words of names of code, for people.</summary>
internal static class Spoken
{
    /// <summary><c>PocketHole</c> as <c>pocket hole</c>.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum
    {
        var spaced = new StringBuilder();
        foreach (var c in value.ToString())
        {
            if (char.IsUpper(c) && spaced.Length > 0)
                spaced.Append(' ');
            spaced.Append(char.ToLowerInvariant(c));
        }
        return spaced.ToString();
    }
}
