using System.Text;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>What is said of a board with left for right: the words for its fellow at the other end.</summary>
internal static class Mirror
{
    /// <param name="scope">Learns that the new words stand where the old ones do.</param>
    public static Node Of(Node node, Scope scope) =>
        node switch
        {
            Scalar scalar => Of(scalar, scope),
            Sequence list => list with { Items = [.. list.Items.Select(item => Of(item, scope))] },
            Mapping word => word with
            {
                Entries = [.. word.Entries.Select(e => e with { Key = Of(e.Key), Value = Of(e.Value, scope) })],
            },
            _ => node,
        };

    /// <summary>The text with left for right, word for word.</summary>
    public static string Of(string text)
    {
        // The grain of a board that lies flat runs the same way at both ends.
        const string Grain = "left to right";
        var mirrored = new StringBuilder(text.Length + 2);
        for (var i = 0; i < text.Length; )
        {
            var end = i;
            while (end < text.Length && IsPartOfWord(text[end]))
                end++;
            if (string.CompareOrdinal(text, i, Grain, 0, Grain.Length) == 0)
                end = i + Grain.Length;
            else if (end == i)
                end++;
            mirrored.Append(
                text[i..end] switch
                {
                    "left" => "right",
                    "right" => "left",
                    var same => same,
                }
            );
            i = end;
        }
        return mirrored.ToString();
    }

    private static Scalar Of(Scalar scalar, Scope scope)
    {
        var text = Of(scalar.Text);
        return text == scalar.Text ? scalar : scope.InPlaceOf(scalar, text);
    }

    private static bool IsPartOfWord(char c) => char.IsLetterOrDigit(c) || c is '_' or '.';
}
