using Dryfit.Findings;
using YamlDotNet.Core;

namespace Dryfit.Recipe;

/// <summary>
/// Reads a recipe or shop file: YAML 1.2 (https://yaml.org/spec/1.2.2/) without the parts no maker needs (anchors,
/// aliases, tags, a second document), every key and value with its place.
/// </summary>
public static class RecipeReader
{
    /// <summary>
    /// The file as a tree. Where there are errors the tree is given all the same if it is whole, so that its words can
    /// be checked and all errors shown in one go.
    /// </summary>
    /// <param name="fileName">As the user named it, for places.</param>
    /// <param name="utf8">The file's bytes, with or without a byte order mark.</param>
    public static Result<Mapping> Read(string fileName, ReadOnlyMemory<byte> utf8)
    {
        var errors = new InputErrors();
        var text = RecipeText.Decode(fileName, utf8.Span, errors);
        if (text is null)
            return new(null, errors.All);

        var tree = new TreeBuilder(text, errors);
        try
        {
            // Events only: a node tree of the library's own would follow aliases and recurse without limit.
            var parser = new Parser(new StringReader(text.Text));
            while (!tree.Stopped && parser.MoveNext())
                tree.Add(parser.Current!);
        }
        catch (Exception fault) when (fault is YamlException or InvalidOperationException or ArgumentException)
        {
            // The scanner throws InvalidOperationException (without a place) on some unclosed braces.
            tree.Break();
            errors.Add(YamlMistake.Explain(fault, text, tree.LastPlace));
        }
        return new(tree.Finish(), errors.All);
    }
}
