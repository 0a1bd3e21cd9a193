using System.Text;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Recipe;

namespace Dryfit.Slips;

/// <summary>A change of a recipe's text as a maker would type it, and how to say it.</summary>
/// <param name="Text">The whole recipe with the change.</param>
/// <param name="Diff">The lines taken out (-) and put in (+).</param>
internal sealed record RecipeEdit(string Text, string Diff)
{
    /// <summary>Lines under <c>as cut</c> or <c>as measured</c>; the section is begun where there is none.</summary>
    public static RecipeEdit Under(string section, SoundPiece sound, params IReadOnlyList<string> lines)
    {
        var text = sound.Text.EndsWith('\n') ? sound.Text : sound.Text + "\n";
        var added = new StringBuilder();
        foreach (var line in lines)
            added.Append("  ").Append(line).Append('\n');
        var diff = string.Concat(lines.Select(line => $"+   {line}\n"));
        var entry = sound.Recipe.Entries.FirstOrDefault(e => string.Equals(e.Key, section, StringComparison.Ordinal));
        if (entry is null)
            return new($"{text}{section}:\n{added}", $"+ {section}:\n{diff}");
        // What stands there already keeps standing below; the new lines have names of their own.
        var rows = text.Split('\n').ToList();
        rows.Insert(entry.KeyPlace.Line, added.ToString().TrimEnd('\n'));
        return new(string.Join('\n', rows), $"  {section}:\n{diff}");
    }

    /// <summary>Another text in the place of one value.</summary>
    public static RecipeEdit Replace(SoundPiece sound, Scalar value, string by) => Replace(sound, value.Place, by);

    public static RecipeEdit Replace(SoundPiece sound, SourcePlace place, string by)
    {
        var rows = sound.Text.Split('\n');
        var row = rows[place.Line - 1];
        var changed = string.Concat(row.AsSpan(0, place.Column - 1), by, row.AsSpan(place.Column - 1 + place.Length));
        rows[place.Line - 1] = changed;
        return new(string.Join('\n', rows), $"- {row.Trim()}\n+ {changed.Trim()}\n");
    }

    /// <summary>A length as it can be typed: a fraction of an inch or millimetres, exactly, with its unit.</summary>
    public static string Typed(Length length, bool inInches)
    {
        var inches = length.Inches;
        if (inInches && inches.Sign > 0 && inches.Denominator <= 128)
        {
            var whole = inches.Floor();
            var part = inches - whole;
            return part.Sign == 0 ? $"{whole} in"
                : whole.IsZero ? $"{part.Numerator}/{part.Denominator} in"
                : $"{whole} {part.Numerator}/{part.Denominator} in";
        }
        var mm = length.Millimetres;
        return mm.IsWhole ? $"{mm.Numerator} mm" : $"{mm.Numerator} mm / {mm.Denominator}";
    }
}
