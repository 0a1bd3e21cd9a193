using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// A piece on the bench: its solids in place, who is near whom, and what was measured between them, each measured once
/// however many checks ask.
/// </summary>
internal sealed class InspectedPiece
{
    private readonly Dictionary<string, Shape> _byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Group> _groups = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Shape>> _byGroup = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Opening> _openings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Front> _fronts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _order = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, string), Overlap?> _overlaps = [];
    private readonly Dictionary<string, JointFit> _fits = new(StringComparer.Ordinal);
    private readonly BoxTree _tree;

    public InspectedPiece(Piece piece)
    {
        Piece = piece;
        Shapes = [.. piece.Parts.Select(part => new Shape(part))];
        foreach (var group in piece.Groups)
            _groups[group.Id] = group;
        foreach (var opening in piece.Openings)
            _openings[opening.Id] = opening;
        foreach (var front in piece.Fronts)
            _fronts[front.Group] = front;
        foreach (var shape in Shapes)
        {
            _order[shape.Part.Id] = _order.Count;
            _byId[shape.Part.Id] = shape;
            if (!_byGroup.TryGetValue(shape.Part.Group, out var members))
                _byGroup[shape.Part.Group] = members = [];
            members.Add(shape);
        }
        _tree = new([.. Shapes.Select(shape => shape.Box)]);
        JoinedPairs = piece.Joints.Select(joint => Pairing(joint.Receives, joint.Enters)).ToHashSet();
    }

    public Piece Piece { get; }

    /// <summary>All parts in the order of the piece.</summary>
    public IReadOnlyList<Shape> Shapes { get; }

    /// <summary>Ids of the parts of each joint, as <see cref="Pairing"/> orders them.</summary>
    public IReadOnlySet<(string, string)> JoinedPairs { get; }

    public Grid Grid => Piece.Grid;

    /// <exception cref="InvalidOperationException">The piece names a part it does not have: a fault of ours.</exception>
    public Shape Shape(string id) =>
        _byId.TryGetValue(id, out var shape)
            ? shape
            : throw new InvalidOperationException($"The piece names a part '{id}' that it does not have.");

    public IReadOnlyList<Shape> ShapesOf(IEnumerable<string> ids) => [.. ids.Select(Shape)];

    public IReadOnlyList<Shape> Members(string group) => _byGroup.TryGetValue(group, out var members) ? members : [];

    public Group? Group(string id) => _groups.GetValueOrDefault(id);

    /// <summary>The name of a group as a maker says it.</summary>
    public string GroupName(string id) => _groups.TryGetValue(id, out var group) ? group.Name : id;

    /// <exception cref="InvalidOperationException">A front names an opening the piece does not have: a fault of ours.</exception>
    public Opening Opening(string id) =>
        _openings.TryGetValue(id, out var opening)
            ? opening
            : throw new InvalidOperationException($"A front names an opening '{id}' that the piece does not have.");

    /// <summary>The front that is a group; null where the group is none.</summary>
    public Front? Front(string group) => _fronts.GetValueOrDefault(group);

    /// <summary>A pair of part ids in the order of the piece.</summary>
    public (string First, string Second) Pairing(string a, string b) =>
        _order.GetValueOrDefault(a) <= _order.GetValueOrDefault(b) ? (a, b) : (b, a);

    /// <summary>Every pair of parts whose boxes share more than their skins.</summary>
    public IEnumerable<(Shape First, Shape Second)> NearPairs()
    {
        for (var i = 0; i < Shapes.Count; i++)
        {
            foreach (var j in _tree.Touching(Shapes[i].Box))
            {
                if (j > i && Shapes[i].Box.Overlaps(Shapes[j].Box))
                    yield return (Shapes[i], Shapes[j]);
            }
        }
    }

    /// <summary>The parts whose boxes reach into or touch a box.</summary>
    public IEnumerable<Shape> Near(Box box) => _tree.Touching(box).Select(i => Shapes[i]);

    /// <summary>What two parts share; null where they only touch or are apart. Measured once.</summary>
    public Overlap? Overlap(Shape a, Shape b)
    {
        if (!a.Box.Overlaps(b.Box))
            return null;
        var key = Pairing(a.Part.Id, b.Part.Id);
        if (!_overlaps.TryGetValue(key, out var overlap))
            _overlaps[key] = overlap = Pair.Overlap(Shape(key.First).Part.Placed, Shape(key.Second).Part.Placed);
        return overlap;
    }

    /// <summary>How the two parts of a joint meet. Measured once.</summary>
    public JointFit Fit(Joint joint)
    {
        if (!_fits.TryGetValue(joint.Id, out var fit))
            _fits[joint.Id] = fit = JointFit.Measure(this, joint);
        return fit;
    }

    /// <summary>A measured distance as an exact length.</summary>
    public Length ToLength(double units) => Grid.ToLength(units);

    public double ToUnits(Length length) => length.ToMillimetres() * Grid.UnitsPerMm;

    public SpacePoint ToSpace(Vec3 point) => new(Grid.ToMm(point.X), Grid.ToMm(point.Y), Grid.ToMm(point.Z));

    public SpacePlace ToSpace(Vec3 from, Vec3 to) => new(ToSpace(from), ToSpace(to));

    /// <summary>A length as this maker reads it: <c>3/16 in</c>.</summary>
    public string Say(Length length) => Piece.Format.WriteWithUnit(length);
}
