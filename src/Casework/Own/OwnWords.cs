using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Own;

/// <summary>
/// Puts what own words stand for in the place of their uses, so that what follows meets boards, carcases and regions only.
/// Every value keeps the place in the word's file, with the place of use behind it.
/// </summary>
internal sealed class OwnWords
{
    /// <summary>Words in words in words.</summary>
    private const int Deepest = 8;

    private const int MostUses = 500;

    private readonly Scope _scope;
    private readonly WordFiles _files;
    private readonly Mapping _recipe;
    private readonly List<InputError> _errors = [];
    private readonly HashSet<string> _faulty = new(StringComparer.Ordinal);
    private readonly List<string> _using = [];
    private readonly List<Entry> _carcases = [];
    private readonly List<Entry> _boards = [];
    private readonly Dictionary<string, OwnUnit> _units = new(StringComparer.Ordinal);
    private readonly List<(InnerNames Inner, string Local, string Full)> _bodies = [];
    private int _uses;
    private int _nodes;

    private OwnWords(Mapping recipe, INeighbourFiles? files, Scope scope)
    {
        _recipe = recipe;
        _scope = scope;
        _files = new WordFiles(recipe, files);
    }

    /// <summary>The recipe without uses of own words, or what is wrong with them.</summary>
    public static Written Out(Mapping recipe, INeighbourFiles? files, Scope scope)
    {
        var words = new OwnWords(recipe, files, scope);
        words.Section(recipe["carcases"], inner: null, words.AddCarcase);
        words.Section(recipe["boards"], inner: null, words.AddBoard);
        if (words._uses == 0)
            return new Written(recipe, new Dictionary<string, OwnUnit>(StringComparer.Ordinal), [], []);
        var entries = recipe.Entries.Where(e => e.Key is not ("carcases" or "boards")).ToList();
        Put("carcases", words._carcases);
        Put("boards", words._boards);
        return new Written(recipe with { Entries = entries }, words._units, words._bodies, words._errors);

        void Put(string key, List<Entry> section)
        {
            if (section.Count > 0)
                entries.Add(new Entry(key, section[0].KeyPlace, new Mapping(section, section[0].KeyPlace)));
        }
    }

    /// <summary>Carcases or boards, of the recipe or of the file of a word.</summary>
    private void Section(Node? section, InnerNames? inner, Action<Entry, string, InnerNames?> add)
    {
        foreach (var entry in (section as Mapping)?.Entries ?? [])
        {
            var full = inner is null ? entry.Key : inner.Full(entry.Key) ?? $"{inner.Name} {entry.Key}";
            if (entry.Value is Mapping use && IsUse(use))
                Use(use, full);
            else
                add(entry, full, inner);
        }
    }

    private void AddCarcase(Entry entry, string full, InnerNames? inner)
    {
        if (_carcases.Exists(c => c.Key == full))
            _errors.Add(
                new InputError($"Two carcases are called '{full}'.", entry.KeyPlace, "another name for one of them")
            );
        else
            _carcases.Add(entry with { Key = full, Value = Regions(entry.Value, full) });
    }

    private void AddBoard(Entry entry, string full, InnerNames? inner)
    {
        if (inner is not null)
            _units[full] = new OwnUnit(inner.Name, entry.Key, entry.KeyPlace.UsedAt ?? entry.KeyPlace);
        if (_boards.Exists(b => b.Key == full))
            _errors.Add(
                new InputError($"Two boards are called '{full}'.", entry.KeyPlace, "another name for one of them")
            );
        else
            _boards.Add(entry with { Key = full });
    }

    private static bool IsUse(Mapping word) => word["use"] is Scalar { IsEmpty: false };

    /// <summary>What a carcase holds, with own words of its front written out.</summary>
    private Node Regions(Node node, string owner)
    {
        switch (node)
        {
            case Mapping use when IsUse(use):
                return Front(use, owner) ?? (Node)new Scalar("", use.Place);
            case Mapping word:
                var values = word.Entries.Select(e => e.Value is Scalar ? e.Value : Regions(e.Value, owner)).ToList();
                return values.SequenceEqual(word.Entries.Select(e => e.Value), ReferenceEqualityComparer.Instance)
                    ? word
                    : word with
                    {
                        Entries = [.. word.Entries.Zip(values, (e, v) => e with { Value = v })],
                    };
            case Sequence list:
                var items = list.Items.Select(i => i is Scalar ? i : Regions(i, owner)).ToList();
                return items.SequenceEqual(list.Items, ReferenceEqualityComparer.Instance)
                    ? list
                    : list with
                    {
                        Items = items,
                    };
            default:
                return node;
        }
    }

    private void Use(Mapping use, string name)
    {
        if (Open(use, name) is not { } opened)
            return;
        var (file, inner, rest) = opened;
        var carcases = file["carcases"] as Mapping;
        if (carcases is null && file["boards"] is null)
            Refuse(
                new InputError(
                    $"The own word '{Name(use)}' has no carcases or boards to stand here.",
                    use["use"]!.Place,
                    "a region of a front, where it divides one"
                )
            );
        if (carcases is null)
            RefuseRest(rest, use, file);
        else
            Section(Placed(carcases, rest, use, file), inner, AddCarcase);
        Section(file["boards"], inner, AddBoard);
        _using.RemoveAt(_using.Count - 1);
    }

    private Mapping? Front(Mapping use, string owner)
    {
        if (Open(use, owner) is not { } opened)
            return null;
        var (file, _, rest) = opened;
        if (file["front"] is not Mapping front)
        {
            _using.RemoveAt(_using.Count - 1);
            Refuse(
                new InputError(
                    $"The own word '{Name(use)}' has no front to stand here.",
                    use["use"]!.Place,
                    "front: in its file; or the word under carcases: or boards:"
                )
            );
            return null;
        }
        string[] sizes = ["width", "height", "share"];
        RefuseRest([.. rest.Where(e => !sizes.Contains(e.Key, StringComparer.Ordinal))], use, file);
        var said = rest.Where(e => sizes.Contains(e.Key, StringComparer.Ordinal)).ToList();
        var region = front with { Entries = [.. said, .. front.Entries.Where(e => !said.Exists(s => s.Key == e.Key))] };
        // A word's front may be a use of another word.
        var written = Regions(region, owner) as Mapping;
        _using.RemoveAt(_using.Count - 1);
        return written;
    }

    /// <summary>The content of a word's file for one use of it, its parameters bound; null where that cannot be.</summary>
    private (Mapping File, InnerNames Inner, IReadOnlyList<Entry> Others)? Open(Mapping use, string name)
    {
        var word = (Scalar)use["use"]!;
        if (++_uses > MostUses)
        {
            if (_uses == MostUses + 1)
                Refuse(new InputError($"Own words are used more than {MostUses} times.", word.Place, "fewer uses"));
            return null;
        }
        var called = Name(use);
        if (_using.Contains(called, StringComparer.Ordinal) || _using.Count >= Deepest)
        {
            Refuse(
                new InputError(
                    _using.Contains(called, StringComparer.Ordinal)
                        ? $"These own words use each other in a circle: {string.Join(" -> ", _using.Append(called))}."
                        : $"Own words are used in own words more than {Deepest} deep.",
                    word.Place,
                    "a word that does not need itself"
                )
            );
            return null;
        }
        var read = _files.Read(word);
        _errors.AddRange(read.Errors);
        if (read.Value is not { } written)
            return null;
        var file = (Mapping)Copy(written, word.Place);
        if (_nodes > ReadLimits.Nodes)
        {
            Refuse(new InputError("Own words come to more values than any recipe has.", word.Place, "fewer uses"));
            return null;
        }
        var unit = (file["units"] as Scalar)?.Text == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
        var inner = _scope.Inner(name, unit);
        _scope.Settle(file, inner);
        CallBodies(file, inner);
        var rest = Bind(file, use, inner);
        file = (Mapping)NamedWords.Put(file, OwnWord.Shape, _scope, IsName);
        if (_faulty.Contains(called))
            return null;
        var misfits = ShapeCheck.Check(file, OwnWord.Shape);
        if (misfits.Count > 0)
        {
            // Once is enough: another use of the same file would be told the same.
            _faulty.Add(called);
            _errors.AddRange(misfits);
            return null;
        }
        _using.Add(called);
        return (file, inner, rest);
    }

    /// <summary>Says what the carcases and boards of a file are called: one carcase alone goes by the name of the use.</summary>
    private void CallBodies(Mapping file, InnerNames inner)
    {
        var carcases = (file["carcases"] as Mapping)?.Entries ?? [];
        foreach (var entry in carcases)
        {
            var full = carcases.Count == 1 ? inner.Name : $"{inner.Name} {entry.Key}";
            inner.Call(entry.Key, full);
            _bodies.Add((inner, entry.Key, full));
        }
        foreach (var entry in (file["boards"] as Mapping)?.Entries ?? [])
            inner.Call(entry.Key, $"{inner.Name} {entry.Key}");
    }

    /// <summary>Gives the parameters of a word the values of one use.</summary>
    /// <returns>The keys of the use that are none of its parameters.</returns>
    private List<Entry> Bind(Mapping file, Mapping use, InnerNames inner)
    {
        var parameters = file["parameters"] as Mapping;
        var given = new Dictionary<string, Scalar>(StringComparer.Ordinal);
        var rest = new List<Entry>();
        foreach (var entry in use.Entries.Where(e => e.Key != "use"))
        {
            if (parameters?[entry.Key] is null)
                rest.Add(entry);
            else if (entry.Value is Scalar { IsEmpty: false } value)
                given[entry.Key] = value;
            else
                Refuse(new InputError("One value is wanted here.", entry.Value.Place, "a length, a number or a word"));
        }
        foreach (var missing in ParameterSection.Bind(parameters, given, _scope, inner))
        {
            if (parameters![missing] is Mapping)
                Refuse(
                    new InputError(
                        $"The {Name(use)} has no '{missing}'.",
                        use.Place,
                        $"'{missing}:' and its value, since the word's file has no default for it"
                    )
                );
        }
        return rest;
    }

    /// <summary>The first carcase that says nothing of its place stands where the use says.</summary>
    private Mapping Placed(Mapping carcases, IReadOnlyList<Entry> rest, Mapping use, Mapping file)
    {
        var keys = PlaceWord.Fields.Select(f => f.Key).ToHashSet(StringComparer.Ordinal);
        RefuseRest([.. rest.Where(e => !keys.Contains(e.Key))], use, file, keys);
        var place = rest.Where(e => keys.Contains(e.Key)).ToList();
        var entries = carcases.Entries.ToList();
        var first = entries.FindIndex(e => e.Value is Mapping m && !m.Entries.Any(said => keys.Contains(said.Key)));
        if (place.Count > 0 && first >= 0)
        {
            var carcase = (Mapping)entries[first].Value;
            entries[first] = entries[first] with { Value = carcase with { Entries = [.. place, .. carcase.Entries] } };
        }
        else if (place.Count > 0)
        {
            Refuse(
                new InputError(
                    $"The {Name(use)} says itself where it stands.",
                    place[0].Value.Place,
                    "a parameter of the word for its place"
                )
            );
        }
        return carcases with { Entries = entries };
    }

    private void RefuseRest(
        IReadOnlyList<Entry> rest,
        Mapping use,
        Mapping? file,
        IReadOnlyCollection<string>? keys = null
    )
    {
        foreach (var entry in rest)
        {
            IReadOnlyList<string> known =
            [
                .. (file?["parameters"] as Mapping)?.Entries.Select(e => e.Key) ?? [],
                .. keys ?? [],
            ];
            Refuse(
                new InputError(
                    $"The own word '{Name(use)}' has no parameter {Excerpt.Quote(entry.Key)}.",
                    entry.KeyPlace,
                    known.Count == 0 ? "no further keys" : ShapeWords.OneOf(known),
                    NearestWord.To(entry.Key, known)
                )
            );
        }
    }

    /// <summary>In a file its own parameters win; there and in the recipe a name of the recipe is a name.</summary>
    private bool IsName(Scalar name, NameShape of) => _scope.InnerOf(name) is null && IsNameOf(_recipe, name, of);

    /// <summary>Whether a value of the recipe names one of its own materials or carcases.</summary>
    public static bool IsNameOf(Mapping recipe, Scalar name, NameShape of)
    {
        string[] sections = of.Of switch
        {
            "material" => ["materials"],
            "carcase" => ["carcases", "kept"],
            "space between walls" => ["room"],
            _ => [],
        };
        return sections.Any(section => (recipe[section] as Mapping)?[name.Text] is not null);
    }

    private Node Copy(Node node, SourcePlace usedAt)
    {
        _nodes++;
        if (_nodes > ReadLimits.Nodes)
            return node;
        return node switch
        {
            Scalar scalar => scalar with { Place = Used(scalar.Place) },
            Sequence list => new Sequence([.. list.Items.Select(i => Copy(i, usedAt))], Used(list.Place)),
            Mapping word => new Mapping(
                [.. word.Entries.Select(e => new Entry(e.Key, Used(e.KeyPlace), Copy(e.Value, usedAt)))],
                Used(word.Place)
            ),
            _ => node,
        };

        SourcePlace Used(SourcePlace place) => place with { UsedAt = usedAt };
    }

    private static string Name(Mapping use) => ((Scalar)use["use"]!).Text.Trim();

    private void Refuse(InputError error) => _errors.Add(error);
}

/// <summary>A recipe with its own words written out.</summary>
/// <param name="Units">Boards that come from an own word, by their full names.</param>
/// <param name="Bodies">Carcases that come from own words: what their file calls them, and their full names.</param>
internal sealed record Written(
    Mapping Recipe,
    IReadOnlyDictionary<string, OwnUnit> Units,
    IReadOnlyList<(InnerNames Inner, string Local, string Full)> Bodies,
    IReadOnlyList<InputError> Errors
)
{
    /// <summary>Makes the sizes of carcases known to the files they come from, by their names there.</summary>
    public void LendSizes()
    {
        foreach (var (inner, local, full) in Bodies)
        {
            foreach (var size in (string[])["width", "height", "depth"])
                inner.Lend(
                    $"{Carcases.Bodies.FormulaName(local)}.{size}",
                    $"{Carcases.Bodies.FormulaName(full)}.{size}"
                );
        }
    }
}

/// <summary>Where a loose board comes from: a use of an own word.</summary>
/// <param name="Use">The name of the use.</param>
/// <param name="Local">What its file calls the board.</param>
/// <param name="Place">Where the word is used.</param>
internal sealed record OwnUnit(string Use, string Local, SourcePlace Place);
