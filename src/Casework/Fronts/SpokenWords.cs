using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>The short form of a word.</summary>
internal static class SpokenWords
{
    /// <summary>The word said of each group; null where none is, or where keys stand in place of the short form.</summary>
    public static IReadOnlyList<string?> Of(Node? value, PhraseShape shape) =>
        value is Scalar scalar ? Phrase.Read(scalar, shape).Chosen : new string?[shape.Groups.Count];
}
