using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>
/// A piece on the bench: its solids in place, who is near whom, and what was measured between them, each measured once
/// however many checks ask. Directions are those of the frame from which it is looked at: the piece's own, or that of
/// something turned in plan, so that a front at an angle is judged as squarely as any other.
/// </summary>
internal sealed class InspectedPiece
{
    private readonly PieceIndex _index;
    private readonly PlanTurn? _turn;
    private readonly Shape?[] _shapes;
    private readonly Lazy<IReadOnlyList<Shape>> _all;
    private readonly Lazy<BoxTree> _tree;
    private readonly Dictionary<(string, string), Overlap?> _overlaps = [];
    private readonly Dictionary<string, JointFit> _fits = new(StringComparer.Ordinal);

    public InspectedPiece(Piece piece)
        : this(new PieceIndex(piece), null) { }

    private InspectedPiece(PieceIndex index, PlanTurn? turn)
    {
        _index = index;
        _turn = turn;
        _shapes = new Shape?[index.Piece.Parts.Count];
        _all = new(() => [.. Enumerable.Range(0, _shapes.Length).Select(At)]);
        _tree = new(() => new BoxTree([.. Shapes.Select(shape => shape.Box)]));
        index.Seen.Add((turn, 0), this);
    }

    /// <summary>The same piece seen from the frame of a turn; null is the piece's own frame.</summary>
    public InspectedPiece From(PlanTurn? turn)
    {
        if (turn == _turn)
            return this;
        return _index.Seen.TryGetValue((turn, 0), out var seen) ? seen : new InspectedPiece(_index, turn);
    }

    /// <summary>The piece seen squarely to a front.</summary>
    public InspectedPiece From(Front front) => From(Group(front.Group)?.Turn);

    /// <summary>The piece seen as a joint tells its way in.</summary>
    public InspectedPiece From(Joint joint) => From(Piece.Parts[_index.Order[joint.Enters]].Turn);

    public Piece Piece => _index.Piece;

    /// <summary>All parts in the order of the piece.</summary>
    public IReadOnlyList<Shape> Shapes => _all.Value;

    /// <summary>Ids of the parts of each joint, as <see cref="Pairing"/> orders them.</summary>
    public IReadOnlySet<(string, string)> JoinedPairs => _index.JoinedPairs;

    /// <summary>Of those, the pairs whose faces are glued flat against each other: plies of a leg, edging on its panel.</summary>
    public IReadOnlySet<(string, string)> GluedPairs => _index.GluedPairs;

    public Grid Grid => Piece.Grid;

    /// <exception cref="InvalidOperationException">The piece names a part it does not have: a fault of ours.</exception>
    public Shape Shape(string id) =>
        _index.Order.TryGetValue(id, out var n)
            ? At(n)
            : throw new InvalidOperationException($"The piece names a part '{id}' that it does not have.");

    public IReadOnlyList<Shape> ShapesOf(IEnumerable<string> ids) => [.. ids.Select(Shape)];

    public IReadOnlyList<Shape> Members(string group) => [.. _index.Members[group].Select(At)];

    public Group? Group(string id) => _index.Groups.GetValueOrDefault(id);

    /// <summary>The name of a group as a maker says it.</summary>
    public string GroupName(string id) => _index.Groups.TryGetValue(id, out var group) ? group.Name : id;

    /// <exception cref="InvalidOperationException">A front names an opening the piece does not have: a fault of ours.</exception>
    public Opening Opening(string id) =>
        _index.Openings.TryGetValue(id, out var opening)
            ? opening
            : throw new InvalidOperationException($"A front names an opening '{id}' that the piece does not have.");

    /// <summary>The front that is a group; null where the group is none.</summary>
    public Front? Front(string group) => _index.Fronts.GetValueOrDefault(group);

    /// <summary>A pair of part ids in the order of the piece.</summary>
    public (string First, string Second) Pairing(string a, string b) => _index.InOrder(a, b);

    /// <summary>Every pair of parts whose boxes share more than their skins.</summary>
    public IEnumerable<(Shape First, Shape Second)> NearPairs()
    {
        for (var i = 0; i < Shapes.Count; i++)
        {
            foreach (var j in _tree.Value.Touching(Shapes[i].Box))
            {
                if (j > i && Shapes[i].Box.Overlaps(Shapes[j].Box))
                    yield return (Shapes[i], Shapes[j]);
            }
        }
    }

    /// <summary>The parts whose boxes reach into or touch a box.</summary>
    public IEnumerable<Shape> Near(Box box)
    {
        if (_turn is null)
            return _tree.Value.Touching(box).Select(At);
        // The piece's own frame knows who is about there; who really is, is seen from here.
        var corners = box.Corners().Select(corner => corner.Seen(_turn, null, Grid.UnitsPerMm)).ToList();
        return From((PlanTurn?)null)
            ._tree.Value.Touching(Boxes.Of(corners).Grown(1))
            .Select(At)
            .Where(shape => shape.Box.Touches(box));
    }

    /// <summary>What two parts share; null where they only touch or are apart. Measured once.</summary>
    public Overlap? Overlap(Shape a, Shape b)
    {
        if (!a.Box.Overlaps(b.Box))
            return null;
        var key = Pairing(a.Part.Id, b.Part.Id);
        if (!_overlaps.TryGetValue(key, out var overlap))
            _overlaps[key] = overlap = Pair.Overlap(Shape(key.First).Placed, Shape(key.Second).Placed);
        return overlap;
    }

    /// <summary>How the two parts of a joint meet, seen from this frame. Measured once.</summary>
    public JointFit Fit(Joint joint)
    {
        if (!_fits.TryGetValue(joint.Id, out var fit))
            _fits[joint.Id] = fit = JointFit.Measure(this, joint);
        return fit;
    }

    /// <summary>How a front that turns opens, seen squarely to it. Followed once.</summary>
    public DoorPath Path(Front front)
    {
        if (!_index.Paths.TryGetValue(front.Group, out var path))
            _index.Paths[front.Group] = path = DoorPath.Follow(From(front), front);
        return path;
    }

    /// <summary>The pulls and knobs of a part.</summary>
    public IEnumerable<Hardware> HandlesOf(string part) => _index.Handles[part];

    /// <summary>How the frame that this is seen from is turned.</summary>
    public PlanTurn? Turn => _turn;

    /// <summary>Something given in the frame of a turn, as it is seen from here.</summary>
    public Placed Seen(Placed placed, PlanTurn? of) =>
        of == _turn ? placed : placed with { Frame = placed.Frame.Seen(of, _turn, Grid.UnitsPerMm) };

    /// <summary>A measured distance as an exact length.</summary>
    public Length ToLength(double units) => Grid.ToLength(units);

    public double ToUnits(Length length) => length.ToMillimetres() * Grid.UnitsPerMm;

    /// <summary>A point of this frame as a place in the piece.</summary>
    public SpacePoint ToSpace(Vec3 point)
    {
        var at = point.Seen(_turn, null, Grid.UnitsPerMm);
        return new(Grid.ToMm(at.X), Grid.ToMm(at.Y), Grid.ToMm(at.Z));
    }

    public SpacePlace ToSpace(Vec3 from, Vec3 to) => new(ToSpace(from), ToSpace(to));

    /// <summary>A length as this maker reads it: <c>3/16 in</c>.</summary>
    public string Say(Length length) => Piece.Format.WriteWithUnit(length);

    /// <summary>A length to the nearest mark of this maker's tape, for what is no number of the piece.</summary>
    public string SayByTape(Length length) =>
        Say(Piece.Format.Unit == LengthUnit.Inch ? length.RoundTo(Length.FromInches(0, 1, 64)) : length);

    private Shape At(int n)
    {
        var part = Piece.Parts[n];
        return _shapes[n] ??= new Shape(part, part.SeenFrom(_turn, Grid));
    }
}
