using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Mending;

/// <summary>Every number of the files that is a length and is the maker's to choose.</summary>
internal static class WrittenLengths
{
    /// <summary>What is as it is, or is no size: measured things, materials on the rack, texts.</summary>
    private static readonly string[] NotToChoose =
    [
        "as measured",
        "kept",
        "room",
        "materials",
        "show",
        "finishes",
        "accept",
        "hardware",
    ];

    /// <summary>All of them, file by file in the order of the text.</summary>
    /// <param name="understood">How each value was understood when the piece was built.</param>
    public static IReadOnlyList<WrittenLength> In(IReadOnlyList<SourceText> files, IReadOnlyList<Understood> understood)
    {
        var values = understood.ToLookup(value => value.Value.Place.File, StringComparer.Ordinal);
        var all = new List<WrittenLength>();
        foreach (var file in files)
        {
            if (RecipeReader.Read(file.Name, file.Bytes).Value is not { } tree)
                continue;
            var homes = new List<Home>();
            Gather(tree, [], [], null, homes);
            var byLine = homes.ToLookup(home => home.Scalar.Place.Line);
            var seen = new HashSet<SourcePlace>();
            foreach (var value in values[file.Name].Where(value => value is { IsLength: true, Value.TextStart: >= 0 }))
            {
                // A word that is used twice was understood twice; it is written once.
                if (byLine[value.Value.Place.Line].LastOrDefault(home => home.Holds(value.Value.Place)) is not { } home)
                    continue;
                all.AddRange(
                    Of(value, home).Where(number => seen.Add(number.Place) && file.Holds(number.Place, number.Text))
                );
            }
        }
        return all;
    }

    /// <summary>A value of the tree with the way to it.</summary>
    private sealed record Home(
        Scalar Scalar,
        IReadOnlyList<string> Keys,
        IReadOnlyList<SourcePlace> Within,
        Mapping? Parameter
    )
    {
        public bool Holds(SourcePlace place) =>
            place.Column >= Scalar.Place.Column && place.Column < Scalar.Place.Column + Scalar.Place.Length;
    }

    // Trees that were read are no deeper than their limit.
    private static void Gather(
        Node node,
        IReadOnlyList<string> keys,
        IReadOnlyList<SourcePlace> within,
        Mapping? parameter,
        List<Home> homes
    )
    {
        switch (node)
        {
            case Scalar scalar:
                homes.Add(new Home(scalar, keys, within, parameter));
                break;
            case Sequence list:
                foreach (var item in list.Items)
                    Gather(item, keys, [item.Place, .. within], parameter, homes);
                break;
            case Mapping word:
                foreach (var entry in word.Entries.Where(entry => IsToChoose(entry.Key, keys)))
                    Gather(
                        entry.Value,
                        [.. keys, entry.Key],
                        [entry.Value.Place, entry.KeyPlace, .. within],
                        keys is ["parameters"] ? entry.Value as Mapping : parameter,
                        homes
                    );
                break;
        }
    }

    private static bool IsToChoose(string key, IReadOnlyList<string> keys) =>
        keys.Count switch
        {
            0 => !NotToChoose.Contains(key, StringComparer.Ordinal),
            // Of a parameter its value, not its limits.
            2 when keys[0] == "parameters" => key == "default",
            _ => true,
        };

    private static IEnumerable<WrittenLength> Of(Understood value, Home home)
    {
        var text = value.Value.Text;
        foreach (var (start, end, number) in Numbers(text))
        {
            var written = text[start..end];
            yield return new WrittenLength
            {
                Place = value.Value.PlaceOf(start, end - start) with { UsedAt = null },
                Text = written,
                Value = number.ToLength(value.Unit),
                Style = NumberStyle.Of(written, number, value.Unit),
                Whole = value.Value.Place with { UsedAt = null },
                IsAlone = start == text.Length - text.TrimStart().Length && end == text.TrimEnd().Length,
                Keys = home.Keys,
                Within = home.Within,
                Steps = StepsOf(home.Parameter, value.Unit),
            };
        }
    }

    /// <summary>The step that a parameter asks for, where it is a plain length.</summary>
    private static (Length, Length)? StepsOf(Mapping? parameter, LengthUnit unit) =>
        Plain(parameter?["step"], unit) is { Sign: > 0 } step
            ? (step, Plain(parameter!["from"], unit) ?? Length.Zero)
            : null;

    private static Length? Plain(Node? node, LengthUnit unit) =>
        node is Scalar scalar && LengthText.Parse(scalar.Text, unit) is { Ok: true } read ? read.Length : null;

    /// <summary>The numbers of a formula that are lengths: factors and divisors without a unit are not.</summary>
    private static IEnumerable<(int Start, int End, WrittenNumber Number)> Numbers(string text)
    {
        var before = '+';
        for (var i = 0; i < text.Length; )
        {
            var c = text[i];
            if (char.IsLetter(c) || c == '_')
            {
                while (i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] is '_' or '.'))
                    i++;
                before = 'a';
            }
            else if (LengthText.StartsNumber(c))
            {
                if (LengthText.ReadPrefix(text, i, out var end, out _) is not { } number)
                    yield break;
                var after = text.AsSpan(end).TrimStart();
                var isFactor = before is '*' or '/' || (after.Length > 0 && after[0] is '*' or '/');
                if (number.HasUnit || !isFactor)
                    yield return (i, end, number);
                i = end;
                before = '0';
            }
            else
            {
                before = char.IsWhiteSpace(c) ? before : c;
                i++;
            }
        }
    }
}
