using Dryfit.Findings;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using YamlScalar = YamlDotNet.Core.Events.Scalar;

namespace Dryfit.Recipe;

/// <summary>Builds the tree from the parser's events with a stack of its own, so that no depth can overflow.</summary>
internal sealed class TreeBuilder(RecipeText text, InputErrors errors)
{
    private readonly Stack<Level> _levels = new();
    private Node? _root;
    private int _nodes;
    private int _documents;
    private bool _broken;

    /// <summary>No more events are wanted: a limit was passed or a second document began.</summary>
    public bool Stopped { get; private set; }

    /// <summary>Where the last event stood, for faults that come without a place.</summary>
    public SourcePlace LastPlace { get; private set; } = new(text.File, 1, 1, 1);

    /// <summary>The tree would have holes: it is not handed on.</summary>
    public void Break() => _broken = true;

    public void Add(ParsingEvent step)
    {
        if (step.Start.Index < step.End.Index || step is MappingStart or SequenceStart)
            LastPlace = PlaceOf(step);
        switch (step)
        {
            case DocumentStart when ++_documents > 1:
                Stop("A second document begins here (after '---' or '...'); a file holds one recipe.", PlaceOf(step));
                break;
            case AnchorAlias alias:
                errors.Add(
                    $"'*{alias.Value}' repeats a value from elsewhere; recipes do not use YAML's aliases.",
                    PlaceOf(step),
                    "the value itself, or a name under parameters"
                );
                Break();
                Place(new Scalar("", PlaceOf(step)));
                break;
            case YamlScalar scalar:
                CheckNode(scalar);
                Place(Read(scalar));
                break;
            case MappingStart or SequenceStart:
                CheckNode((NodeEvent)step);
                Open(step);
                break;
            case MappingEnd or SequenceEnd:
                Close();
                break;
        }
    }

    /// <summary>The finished tree; null where the file is empty, broken or no set of keys.</summary>
    public Mapping? Finish()
    {
        if (_broken || Stopped)
            return null;
        switch (_root)
        {
            case Mapping mapping:
                return mapping;
            case null or Scalar { IsEmpty: true }:
                errors.Add(
                    "The file is empty.",
                    new(text.File, 1, 1, 1),
                    "keys with values, such as 'piece: Hall shelf'"
                );
                return null;
            case Sequence list:
                errors.Add(
                    "The file is a list; it must begin with a key.",
                    list.Place,
                    "keys with values, such as 'piece: Hall shelf'"
                );
                return null;
            default:
                errors.Add(
                    "The file holds one value only; it must begin with a key.",
                    _root.Place,
                    "keys with values, such as 'piece: Hall shelf'"
                );
                return null;
        }
    }

    private void CheckNode(NodeEvent node)
    {
        if (++_nodes > ReadLimits.Nodes)
        {
            Stop($"The file holds more than {ReadLimits.Nodes} values; no recipe does.", PlaceOf(node));
            return;
        }
        if (!node.Anchor.IsEmpty)
            errors.Add(
                $"'&{node.Anchor.Value}' names a value to be repeated; recipes do not use YAML's anchors.",
                PlaceOf(node),
                "a name under parameters"
            );
        if (!node.Tag.IsEmpty)
            errors.Add("A tag (beginning with '!') stands here; recipes do not use YAML's tags.", PlaceOf(node));
    }

    private void Open(ParsingEvent start)
    {
        if (_levels.Count >= ReadLimits.Depth)
            Stop($"Words are nested more than {ReadLimits.Depth} deep.", PlaceOf(start));
        else
            _levels.Push(new Level(PlaceOf(start), start is MappingStart));
    }

    private void Close()
    {
        if (Stopped)
            return;
        var level = _levels.Pop();
        if (!level.IsMapping)
        {
            Place(new Sequence(level.Items, level.Start));
            return;
        }
        // A word without braces starts where its first key does; the parser's own mark may point elsewhere.
        var braced = level.Start.Line <= text.Lines.Count && CharacterAt(level.Start) == '{';
        Place(new Mapping(level.Entries, braced || level.Entries.Count == 0 ? level.Start : level.Entries[0].KeyPlace));
    }

    private void Place(Node node)
    {
        if (Stopped)
            return;
        if (_levels.Count == 0)
        {
            _root = node;
            return;
        }
        var level = _levels.Peek();
        if (!level.IsMapping)
            level.Items.Add(node);
        else if (level.Key is null)
            TakeKey(level, node);
        else
            TakeValue(level, node);
    }

    private void TakeKey(Level level, Node node)
    {
        level.Key = node;
        level.SkipValue = true;
        switch (node)
        {
            case Scalar { IsEmpty: true }:
                errors.Add("There is no key before the colon.", node.Place, "a key");
                Break();
                break;
            case Scalar scalar when level.Seen.TryGetValue(scalar.Text, out var first):
                errors.Add(
                    $"{Excerpt.Quote(scalar.Text)} is written twice; the first is on line {first.Line}.",
                    node.Place
                );
                break;
            case Scalar scalar:
                level.Seen.Add(scalar.Text, node.Place);
                level.SkipValue = false;
                break;
            default:
                errors.Add("A list or a set of keys stands where a key should.", node.Place, "a key");
                Break();
                break;
        }
    }

    private static void TakeValue(Level level, Node node)
    {
        var key = level.Key!;
        level.Key = null;
        if (level.SkipValue)
            return;
        // What is missing is best shown at its key.
        var value = node is Scalar { IsEmpty: true, TextStart: 0 } empty ? empty with { Place = key.Place } : node;
        level.Entries.Add(new Entry(((Scalar)key).Text, key.Place, value));
    }

    private Scalar Read(YamlScalar scalar)
    {
        var place = PlaceOf(scalar);
        var oneLine = scalar.Start.Line == scalar.End.Line;
        var length = scalar.End.Column - scalar.Start.Column;
        var start = scalar.Style switch
        {
            ScalarStyle.Plain when oneLine && length == scalar.Value.Length => 0,
            ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted when oneLine && length == scalar.Value.Length + 2 => 1,
            _ => -1,
        };
        return new Scalar(scalar.Value, place) { TextStart = start };
    }

    private SourcePlace PlaceOf(ParsingEvent step)
    {
        // Marks past the end (an empty value at the end of the file) are drawn back onto the text.
        var line = (int)Math.Clamp(step.Start.Line, 1, text.Lines.Count);
        var width = text.Lines[line - 1].Length;
        var column = (int)Math.Clamp(step.Start.Column, 1, width + 1);
        var end = step is YamlScalar or AnchorAlias
            ? step.End.Line == step.Start.Line
                ? (int)step.End.Column
                : width + 1
            : column + 1;
        return new SourcePlace(text.File, line, column, Math.Max(1, end - column));
    }

    private char CharacterAt(SourcePlace place)
    {
        var line = text.Lines[place.Line - 1];
        return place.Column <= line.Length ? line[place.Column - 1] : '\0';
    }

    private void Stop(string message, SourcePlace place)
    {
        if (!Stopped)
            errors.Add(message, place);
        Stopped = true;
    }

    /// <summary>A list or word whose end has not come yet.</summary>
    private sealed class Level(SourcePlace start, bool isMapping)
    {
        public SourcePlace Start { get; } = start;
        public bool IsMapping { get; } = isMapping;
        public List<Node> Items { get; } = [];
        public List<Entry> Entries { get; } = [];
        public Dictionary<string, SourcePlace> Seen { get; } = new(StringComparer.Ordinal);
        public Node? Key { get; set; }
        public bool SkipValue { get; set; }
    }
}
