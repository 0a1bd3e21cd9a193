using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>
/// Measures the gaps around doors and drawers on the outlines of the solids: from each edge of a front straight out to
/// what first meets it at the depth of the front, whatever part that is.
/// </summary>
internal sealed class FrontGaps
{
    /// <summary>Beside an overlaid front, what is farther off than this is no neighbour but another bay.</summary>
    private static readonly Length FarthestNeighbour = Length.FromMillimetres(50);

    /// <summary>A stretch shorter than this is a crack between two neighbours, not a gap of the front.</summary>
    private static readonly Length ShortestCourse = Length.FromMillimetres(5);

    private static readonly Direction[] Sides = [Direction.Left, Direction.Right, Direction.Up, Direction.Down];

    private readonly Piece _piece;
    private readonly IReadOnlyList<IReadOnlyList<FrontFace>> _facesOfPart;
    private readonly (double Near, double Far)[] _depthOfPart;
    private readonly Dictionary<string, int> _partIndex = new(StringComparer.Ordinal);
    private readonly Dictionary<int, int> _frontOfPart = [];

    private FrontGaps(Piece piece, IReadOnlyList<FrontFace> faces)
    {
        _piece = piece;
        // What is turned is measured as it is seen squarely: its gaps look narrower at an angle than they are.
        var edges = faces.Where(IsEdge).ToLookup(face => face.Part);
        _facesOfPart =
        [
            .. piece.Parts.Select(
                (part, n) =>
                    part.Turn is null
                        ? (IReadOnlyList<FrontFace>)[.. edges[n]]
                        : [.. FrontFaces.Square(piece.Parts, n).Where(IsEdge)]
            ),
        ];

        // The wall of a bore is no edge; a shape run round a front is, as far out as it reaches.
        bool IsEdge(FrontFace face) =>
            !face.IsRound || piece.Parts[face.Part].Cuts.Any(cut => cut is OutlineCut { Called: not null });

        _depthOfPart = [.. piece.Parts.Select(part => DepthOf(part.Unturned))];
        for (var i = 0; i < piece.Parts.Count; i++)
            _partIndex.TryAdd(piece.Parts[i].Id, i);
        for (var i = 0; i < piece.Fronts.Count; i++)
        {
            foreach (var part in PartsOf(piece.Fronts[i]))
                _frontOfPart.TryAdd(part, i);
        }
    }

    /// <summary>Every gap of every front; one between two fronts is listed once, with the front named first.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="faces">All its faces that look to the front, hidden ones too.</param>
    /// <remarks>Fronts that one hardly sees from the front, or not at all, are left out.</remarks>
    public static List<FrontGap> Measure(Piece piece, IReadOnlyList<FrontFace> faces)
    {
        var measure = new FrontGaps(piece, faces);
        var gaps = new List<FrontGap>();
        for (var i = 0; i < piece.Fronts.Count; i++)
        {
            if (Sight.IsSeen(piece, piece.Fronts[i]))
                measure.AddGaps(gaps, i);
        }
        return gaps;
    }

    private void AddGaps(List<FrontGap> gaps, int index)
    {
        var front = _piece.Fronts[index];
        var faces = PartsOf(front).SelectMany(part => _facesOfPart[part]).ToList();
        if (faces.Count == 0)
            return;
        var bounds = faces.Select(face => face.Bounds).Aggregate(Span2.Around);
        var reach = Reach(front);
        var neighbours = Neighbours(front, bounds, reach);
        foreach (var side in Sides)
        {
            if (IsFoundOtherwise(front, side) || RunsInTrack(front, side))
                continue;
            var isRebated = front.Neighbours.Any(neighbour => neighbour.Side == side && neighbour.IsRebated);
            var walk = new GapWalk(side);
            foreach (var face in isRebated ? InPlane(faces, faces) : faces)
                walk.AddFront(face);
            foreach (var face in isRebated ? InPlane(neighbours, faces) : neighbours)
            {
                if (IsBeside(face.Bounds, bounds, side))
                    walk.AddNeighbour(face);
            }
            var steps = walk.Steps(reach);
            WithoutHinges(steps, front, side);
            if (steps.Count == 0 || IsListedBefore(steps, index))
                continue;
            var shortest = _piece.Grid.ToUnits(ShortestCourse);
            var counted = steps.Exists(step => step.Run >= shortest)
                ? steps.FindAll(step => step.Run >= shortest)
                : steps;
            gaps.Add(
                new(
                    front,
                    side,
                    _piece.Grid.ToLength(counted.Min(step => Math.Min(step.GapAtStart, step.GapAtEnd))),
                    _piece.Grid.ToLength(counted.Max(step => Math.Max(step.GapAtStart, step.GapAtEnd))),
                    [.. counted.Select(step => Sight.ToView(_piece, front, Depth(front), step.Course))]
                )
            );
        }
    }

    /// <summary>A leaf that slides runs in grooves below and above and passes its neighbour: only at its own side is a gap.</summary>
    private static bool RunsInTrack(Front front, Direction side) =>
        front.Motion.IsSideways()
        && !(side == Direction.Left && front.Wanted.Left is not null)
        && !(side == Direction.Right && front.Wanted.Right is not null);

    /// <summary>What lies in the plane of a front's face: where two lap over each other in a rebate, the gap is between these.</summary>
    private List<FrontFace> InPlane(List<FrontFace> faces, List<FrontFace> front)
    {
        var (plane, within) = (front.Min(face => face.NearestY), _piece.Grid.UnitsPerMm);
        return faces.FindAll(face => Math.Abs(face.NearestY - plane) < within);
    }

    /// <summary>Leaves out the recesses that the leaves of butt hinges fill, as long as there is more of the gap.</summary>
    private void WithoutHinges(List<GapStep> steps, Front front, Direction side)
    {
        var recesses = PartsOf(front)
            .SelectMany(part =>
                _piece
                    .Parts[part]
                    .Cuts.OfType<SquareCut>()
                    .Where(cut => cut.Kind == CutKind.HingeRecess)
                    .Select(cut => _piece.Parts[part].Place.ToPiece(cut.Extent))
            )
            .ToList();
        if (front.Motion.TurnsOn() != side || recesses.Count == 0)
            return;
        var along = side.Axis() == Axis.X ? Axis.Z : Axis.X;
        bool IsAtHinge(GapStep step)
        {
            var course = step.Course;
            var (from, to) =
                along == Axis.Z ? (course.FrontStart.Y, course.FrontEnd.Y) : (course.FrontStart.X, course.FrontEnd.X);
            var middle = (from + to) / 2;
            return recesses.Exists(recess =>
                _piece.Grid.ToUnits(recess.Min[along]) < middle && middle < _piece.Grid.ToUnits(recess.Max[along])
            );
        }
        if (steps.Exists(step => !IsAtHinge(step)))
            steps.RemoveAll(IsAtHinge);
    }

    private IEnumerable<int> PartsOf(Front front)
    {
        foreach (var id in front.Face)
        {
            if (_partIndex.TryGetValue(id, out var part))
                yield return part;
        }
    }

    /// <summary>Where the face of a front lies in its own frame.</summary>
    private double Depth(Front front) => PartsOf(front).Min(part => _depthOfPart[part].Near);

    /// <summary>Inside an opening nothing is out of reach; in front of the carcase only near neighbours count.</summary>
    private double Reach(Front front)
    {
        var reach = FarthestNeighbour;
        if (front.Hang == Hang.Inset && Opening(front) is { } opening)
            reach = Length.Max(reach, Length.Max(opening.Clear.Width, opening.Clear.Height));
        return _piece.Grid.ToUnits(reach);
    }

    /// <summary>
    /// True where the opening was measured and is not as it is drawn: its frame is no witness then, and the findings
    /// alone tell of the gap.
    /// </summary>
    private bool IsFoundOtherwise(Front front, Direction side) =>
        front.Hang == Hang.Inset
        && Opening(front) is { AsMeasured: not null }
        && !front.Neighbours.Any(neighbour => neighbour.Side == side);

    private Opening? Opening(Front front) =>
        _piece.Openings.FirstOrDefault(opening => string.Equals(opening.Id, front.Opening, StringComparison.Ordinal));

    /// <summary>Faces of all other parts that stand at the depth of the front, within reach of it.</summary>
    private List<FrontFace> Neighbours(Front front, Span2 bounds, double reach)
    {
        var own = PartsOf(front).ToHashSet();
        var (near, far) = (own.Min(part => _depthOfPart[part].Near), own.Max(part => _depthOfPart[part].Far));
        // Before the carcase only what stands as far out counts: behind a lip is the frame that it laps over.
        var middle = (near + far) / 2;
        // A leaf in a track has its gap at the sides of its opening; floor and ceiling it goes into.
        var track =
            front.Motion.IsSideways() && Opening(front) is { } opening
                ? opening.Bounds.Left.Concat(opening.Bounds.Right).ToHashSet(StringComparer.Ordinal)
                : null;
        var neighbours = new List<FrontFace>();
        var turn = _piece.Parts[own.First()].Turn;
        for (var part = 0; part < _piece.Parts.Count; part++)
        {
            if (own.Contains(part) || string.Equals(_piece.Parts[part].Group, front.Group, StringComparison.Ordinal))
                continue;
            // At an angle to each other two boards have no gap of one width.
            if (_piece.Parts[part].Turn != turn)
                continue;
            var depth = _depthOfPart[part];
            if (depth.Near >= (front.Hang == Hang.Inset ? far : middle) || depth.Far <= near)
                continue;
            if (track is not null && !track.Contains(_piece.Parts[part].Id))
                continue;
            foreach (var face in _facesOfPart[part])
            {
                if (face.NearestY < far && IsWithin(face.Bounds, bounds, reach))
                    neighbours.Add(face);
            }
        }
        return neighbours;
    }

    private static bool IsWithin(Span2 a, Span2 b, double reach) =>
        a.MinX <= b.MaxX + reach && a.MaxX >= b.MinX - reach && a.MinZ <= b.MaxZ + reach && a.MaxZ >= b.MinZ - reach;

    /// <summary>True where something of a face lies past the near edge of a front on one side, along its length.</summary>
    private static bool IsBeside(Span2 face, Span2 front, Direction side)
    {
        var isAlong =
            side.Axis() == Axis.X
                ? face.MinZ < front.MaxZ && face.MaxZ > front.MinZ
                : face.MinX < front.MaxX && face.MaxX > front.MinX;
        return isAlong
            && side switch
            {
                Direction.Left => face.MinX < front.MinX,
                Direction.Right => face.MaxX > front.MaxX,
                Direction.Up => face.MaxZ > front.MaxZ,
                _ => face.MinZ < front.MinZ,
            };
    }

    /// <summary>True where most of the gap lies against a front whose own gaps are listed already.</summary>
    private bool IsListedBefore(List<GapStep> steps, int index)
    {
        var against = steps
            .GroupBy(step => _frontOfPart.TryGetValue(step.Neighbour, out var other) ? other : -1)
            .MaxBy(group => group.Sum(step => step.Run))!
            .Key;
        return against >= 0 && against < index;
    }

    private static (double Near, double Far) DepthOf(Placed placed)
    {
        var (near, far) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var vertex in placed.Solid.Vertices)
        {
            var y = placed.Frame.ToWorld(vertex).Y;
            near = Math.Min(near, y);
            far = Math.Max(far, y);
        }
        return (near, far);
    }
}
