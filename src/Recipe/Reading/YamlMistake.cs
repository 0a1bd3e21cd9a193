using Dryfit.Findings;
using YamlDotNet.Core;

namespace Dryfit.Recipe;

/// <summary>Says in a maker's words what the YAML parser stumbled over, from what stands in the text there.</summary>
internal static class YamlMistake
{
    public static InputError Explain(Exception fault, RecipeText text, SourcePlace last)
    {
        var at = fault is YamlException { Start.Line: > 0 } yaml ? Onto(text, yaml.Start) : last;
        var said = fault.Message;
        return MissingSpace(text, at)
            ?? Quote(text, at, said)
            ?? FirstCharacter(text, at, said)
            ?? Indentation(text, at, said)
            ?? Braces(at, fault, said)
            ?? new InputError("This line is no valid YAML.", at, "a key, a colon, a space and a value");
    }

    /// <summary><c>width:54</c>: without the space YAML reads on and stumbles on this line or the next.</summary>
    private static InputError? MissingSpace(RecipeText text, SourcePlace at)
    {
        for (var number = at.Line; number >= Math.Max(1, at.Line - 1); number--)
        {
            var line = text.Lines[number - 1];
            var key = line.TrimStart(' ', '-');
            var start = line.Length - key.Length;
            var colon = key.IndexOf(':', StringComparison.Ordinal);
            if (colon <= 0 || colon + 1 >= key.Length || char.IsWhiteSpace(key[colon + 1]) || !IsWord(key[..colon]))
                continue;
            return new InputError(
                "A space is missing after the colon.",
                new SourcePlace(text.File, number, start + colon + 1, 1),
                "a key, a colon, a space and a value",
                $"{key[..colon]}: {Cut(key[(colon + 1)..])}"
            );
        }
        return null;
    }

    private static InputError? Quote(RecipeText text, SourcePlace at, string said)
    {
        if (
            said.Contains("unknown escape", StringComparison.Ordinal)
            || said.Contains("escape", StringComparison.Ordinal)
        )
            return new InputError(
                "A backslash inside double quotes means something special to YAML.",
                at,
                "single quotes around the text, or no quotes at all"
            );
        var quoted = said.Contains("quoted scalar", StringComparison.Ordinal);
        if (quoted)
            return new InputError(
                "A quote is opened here and never closed.",
                at,
                "the same quote at the end of the text"
            );

        // title: "Big" cupboard
        var line = text.Lines[at.Line - 1];
        var colon = line.IndexOf(": ", StringComparison.Ordinal);
        if (colon < 0 || !said.Contains("did not find expected key", StringComparison.Ordinal))
            return null;
        var value = line[(colon + 2)..].TrimStart();
        if (value.Length == 0 || value[0] is not ('"' or '\'') || at.Column <= colon)
            return null;
        return new InputError(
            "The text goes on behind the closing quote.",
            at,
            "quotes around the whole text, or none: a length such as 3 1/2\" needs none"
        );
    }

    private static InputError? FirstCharacter(RecipeText text, SourcePlace at, string said)
    {
        var line = text.Lines[at.Line - 1];
        var character = at.Column <= line.Length ? line[at.Column - 1] : ' ';
        if (said.StartsWith("Block sequence entries", StringComparison.Ordinal))
            return new InputError(
                "'- ' begins an item of a list, and no list can begin here.",
                at,
                "list items on lines of their own; a negative number is written without the space: -3"
            );
        if (character is '>' or '|' && said.Contains("block scalar", StringComparison.Ordinal))
            return new InputError($"A value cannot begin with '{character}'.", at, "quotes around the value");
        if (character is '@' or '`' or '%' or '&' or '*' or '!' or ',' or '?')
            return new InputError($"A value cannot begin with '{character}'.", at, "quotes around the value");
        if (character is '}' or ']')
            return new InputError($"'{character}' closes what was never opened, or a value is missing before it.", at);
        return null;
    }

    private static InputError? Indentation(RecipeText text, SourcePlace at, string said)
    {
        if (said.Contains("invalid mapping", StringComparison.Ordinal))
        {
            // "a: b: c" stands on one line; otherwise a value already stands on the line above.
            var line = text.Lines[at.Line - 1];
            var colons = line.Split(": ").Length - 1;
            return colons > 1
                ? new InputError(
                    "A second colon follows in the same value.",
                    at,
                    "quotes around the value if it holds ': '"
                )
                : new InputError(
                    "This key is indented below a line that has a value already.",
                    at,
                    "the same indentation as the line above, or nothing behind the colon above"
                );
        }
        var offending = text.Lines[at.Line - 1].Trim();
        if (
            said.Contains("could not find expected ':'", StringComparison.Ordinal)
            || (said.Contains("block mapping", StringComparison.Ordinal) && IsWord(offending))
        )
            return new InputError("A colon is missing behind this key.", at, "a key, a colon, a space and a value");
        if (said.Contains("expected '-' indicator", StringComparison.Ordinal))
            return new InputError(
                "A list goes on with a line that has no '- ' before it.",
                at,
                "'- ' before each item"
            );
        if (said.Contains("block mapping", StringComparison.Ordinal))
            return new InputError(
                "This line does not line up with the keys above it.",
                at,
                "keys of one word at the same indentation"
            );
        return null;
    }

    private static InputError? Braces(SourcePlace at, Exception fault, string said)
    {
        if (said.Contains("',' or ']'", StringComparison.Ordinal))
            return new InputError("A list opened with '[' is not closed, or a comma is missing.", at, "',' or ']'");
        if (said.Contains("',' or '}'", StringComparison.Ordinal) || fault is InvalidOperationException)
            return new InputError("What was opened with '{' is not closed, or a comma is missing.", at, "',' or '}'");
        if (said.Contains("document end", StringComparison.Ordinal))
            return new InputError(
                "The recipe has ended before this line.",
                at,
                "keys without braces around the whole file"
            );
        return null;
    }

    private static SourcePlace Onto(RecipeText text, in Mark mark)
    {
        var line = (int)Math.Clamp(mark.Line, 1, text.Lines.Count);
        // A fault at the very end is shown on the last line that holds anything.
        if (mark.Line > line || text.Lines[line - 1].Length == 0)
        {
            while (line > 1 && text.Lines[line - 1].Length == 0)
                line--;
            return new SourcePlace(text.File, line, Math.Max(1, text.Lines[line - 1].Length), 1);
        }
        return new SourcePlace(text.File, line, (int)Math.Clamp(mark.Column, 1, text.Lines[line - 1].Length + 1), 1);
    }

    private static bool IsWord(string key) =>
        key.Length > 0 && char.IsLetter(key[0]) && key.All(c => char.IsLetterOrDigit(c) || c is ' ' or '_' or '-');

    private static string Cut(string value) => value.Length <= 30 ? value : value[..30] + "…";
}
