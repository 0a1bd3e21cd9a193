using System.Text;

namespace Dryfit.Outputs.Text;

/// <summary>Names of the code as words for people and files: <c>DoorStile</c> is "door stile".</summary>
internal static class Words
{
    /// <summary>The words of a name, in lower case, with spaces.</summary>
    public static string Of<T>(T name)
        where T : struct, Enum
    {
        var words = new StringBuilder();
        foreach (var letter in name.ToString())
        {
            if (char.IsAsciiLetterUpper(letter) && words.Length > 0)
                words.Append(' ');
            words.Append(char.ToLowerInvariant(letter));
        }

        return words.ToString();
    }
}
