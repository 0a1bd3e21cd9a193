using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Slips;

/// <summary>
/// Says whether a slip must be found: from the solids of the sound piece, from how far faces moved, and from what each pair
/// of parts is to each other. It measures nothing on the slipped piece but where its ends are, and knows no sum of the
/// design. What it goes by:
/// <list type="bullet">
/// <item>parts that touched and are joined may stand apart by 1/128 in;</item>
/// <item>no part may stand in another by more than 1/128 in;</item>
/// <item>what is let in loose keeps its room to 1/128 in, both ends together;</item>
/// <item>every edge of a front keeps its gap or its overlay to 1/128 in;</item>
/// <item>a drawer's box keeps the room that the sheet of its slides prints;</item>
/// <item>faces of joined parts that lie in one plane do so to 1/128 in.</item>
/// </list>
/// </summary>
internal sealed class Judge
{
    /// <summary>1/128 in.</summary>
    private const double FitMm = 25.4 / 128;

    /// <summary>Past the tolerance by this much a slip counts: 1/128 in.</summary>
    private const double BeyondMm = 25.4 / 128;

    /// <summary>Thinner than a sheet of paper: the two touch.</summary>
    private const double TouchMm = 0.01;

    /// <summary>Rounding of the grid.</summary>
    private const double SkinMm = 0.0005;

    private readonly SoundPiece _sound;
    private readonly Changes _changes;
    private readonly List<string> _counting = [];
    private bool _isOpen;
    private bool _isJudged;

    private Judge(SoundPiece sound, Piece slipped)
    {
        _sound = sound;
        _changes = new Changes(sound.Faces, slipped);
    }

    public static Judgement Of(SoundPiece sound, Piece slipped)
    {
        var judge = new Judge(sound, slipped);
        if (!judge._changes.AreSameParts)
            return new(Verdict.Open, [], [], "parts differ");
        judge.Tracks();
        judge.Meetings();
        judge.LooseParts();
        judge.Fronts();
        judge.Boxes();
        judge.Lines();
        var verdict =
            judge._counting.Count > 0 ? Verdict.Counts
            : judge._isOpen || !judge._isJudged ? Verdict.Open
            : Verdict.Inside;
        return new(
            verdict,
            judge._changes.Moved,
            judge._counting,
            judge._isJudged ? null : "nothing changed that it knows"
        );
    }

    /// <summary>Notes a value that left its window by so much; below zero it stays inside.</summary>
    private void Note(double outsideMm, string what)
    {
        _isJudged = true;
        if (outsideMm > BeyondMm + SkinMm)
            _counting.Add(what);
        else if (outsideMm > SkinMm)
            _isOpen = true;
    }

    private static string Pair(FacingFaces facing) => $"{facing.Own.Part.Name} / {facing.Other.Part.Name} {facing.Way}";

    /// <summary>What runs in a track has its own play, which is not known here.</summary>
    private void Tracks()
    {
        var moved = _changes.Moved.ToHashSet(StringComparer.Ordinal);
        if (
            _sound.Piece.Joints.Any(j =>
                j.Kind == JointKind.Runs && (moved.Contains(j.Enters) || moved.Contains(j.Receives))
            )
        )
            _isOpen = true;
    }

    private void Meetings()
    {
        // What is let in loose may stand apart the way it goes in, and not across.
        var joined = _sound
            .Piece.Joints.SelectMany(joint =>
                Enum.GetValues<Axis>()
                    .Where(axis => joint.Kind != JointKind.Loose || axis != joint.Into.Axis())
                    .SelectMany(axis =>
                        new[] { (joint.Receives, joint.Enters, axis), (joint.Enters, joint.Receives, axis) }
                    )
            )
            .ToHashSet();
        foreach (var facing in _changes.Moved.SelectMany(_sound.Faces.Before))
        {
            if (Closing(facing) is not { } closing)
            {
                // A cut of its own moved: what that does is not seen from here.
                _isOpen = true;
                continue;
            }
            if (Math.Abs(closing) < SkinMm)
                continue;
            var gap = facing.GapMm - closing;
            if (gap < 0)
                Note(-gap - FitMm, $"overlap {-gap:F2} mm: {Pair(facing)}");
            if (
                facing.GapMm < TouchMm
                && gap > 0
                && joined.Contains((facing.Own.Part.Id, facing.Other.Part.Id, facing.Way.Axis()))
            )
                Note(gap - FitMm, $"open by {gap:F2} mm: {Pair(facing)}");
        }
    }

    /// <summary>How much nearer two faces came to each other.</summary>
    private double? Closing(FacingFaces facing) =>
        _changes.FaceMm(facing.Own, facing.Way, facing.At)
        + _changes.FaceMm(facing.Other, facing.Way.Opposite(), facing.OtherAt);

    /// <summary>Room of what is let in loose: what all its ends together gained or lost along an axis.</summary>
    private void LooseParts()
    {
        foreach (
            var loose in _sound
                .Piece.Joints.Where(joint => joint.Kind == JointKind.Loose)
                .GroupBy(joint => (joint.Enters, Axis: joint.Into.Axis()))
        )
        {
            var lost = 0.0;
            foreach (var end in loose.GroupBy(joint => joint.Into))
            {
                // The bottom of a groove moves with its part; several parts may hold one end, the worst of them counts.
                var receivers = end.Select(joint => joint.Receives).ToHashSet(StringComparer.Ordinal);
                var bottoms = _sound
                    .Faces.Before(loose.Key.Enters)
                    .Where(f => f.Way == end.Key && receivers.Contains(f.Other.Part.Id) && f.GapMm < 12)
                    .Select(f => _changes.FaceMm(f.Other, f.Way.Opposite(), f.OtherAt))
                    .ToList();
                if (bottoms.Contains(null))
                    _isOpen = true;
                lost += _changes.EndMm(loose.Key.Enters, end.Key) + bottoms.Select(b => b ?? 0).DefaultIfEmpty(0).Max();
            }
            if (Math.Abs(lost) > SkinMm)
                Note(
                    Math.Abs(lost) - FitMm,
                    $"room of the {_sound.Faces.Parts[loose.Key.Enters].Part.Name} {-lost:F2} mm"
                );
        }
    }

    private void Fronts()
    {
        // Leaves in tracks lap over each other by more than any slip, and have no gap to keep.
        foreach (var front in _sound.Piece.Fronts.Where(front => front.Face.Count > 0 && !front.Motion.IsSideways()))
        {
            foreach (
                var way in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Down, Direction.Up]
            )
            {
                var before = Farthest(front.Face, way, moved: false);
                var by = Farthest(front.Face, way, moved: true) - before;
                if (Math.Abs(by) > SkinMm)
                    Note(Math.Abs(by) - FitMm, $"edge {way} of {front.Group} {by:F2} mm");
            }
        }
    }

    private double Farthest(IEnumerable<string> parts, Direction way, bool moved) =>
        parts.Max(id => (_sound.Faces.Parts[id].End(way) * way.Sign()) + (moved ? _changes.EndMm(id, way) : 0));

    private void Boxes()
    {
        foreach (var front in _sound.Piece.Fronts)
        {
            if (front.Drawer is not { Box.Count: > 0 } fit || !fit.Box.Any(_changes.Moved.Contains))
                continue;
            var own = _sound
                .Faces.Parts.Values.Where(p => p.Part.Group == front.Group)
                .Select(p => p.Part.Id)
                .ToHashSet();
            Room(
                front,
                fit.Box,
                own,
                Direction.Left,
                fit.SideClearance.AtLeast,
                fit.SideClearance.AtMost,
                fit.RunsBetween.Left
            );
            Room(
                front,
                fit.Box,
                own,
                Direction.Right,
                fit.SideClearance.AtLeast,
                fit.SideClearance.AtMost,
                fit.RunsBetween.Right
            );
            Room(front, fit.Box, own, Direction.Up, fit.AboveAtLeast, null, null);
            Room(front, fit.Box, own, Direction.Down, fit.BelowAtLeast, null, null);
            Room(front, fit.Box, own, Direction.Back, fit.BehindAtLeast, null, null);
            foreach (var side in fit.Box.Where(id => _sound.Faces.Parts[id].Part.Role == Role.DrawerSide))
            {
                var faces = _sound.Faces.Parts[side];
                var length =
                    faces.Max.Y
                    - faces.Min.Y
                    + _changes.EndMm(side, Direction.Back)
                    + _changes.EndMm(side, Direction.Front);
                Note(fit.SlideLength.ToMillimetres() - length, $"slide longer than {faces.Part.Name}");
            }
        }
    }

    private void Room(
        Front front,
        IReadOnlyList<string> box,
        HashSet<string> own,
        Direction way,
        Length atLeast,
        Length? atMost,
        string? runsAt
    )
    {
        var far = Farthest(box, way, moved: false);
        var after = Farthest(box, way, moved: true);
        if (Math.Abs(after - far) < SkinMm)
            return;
        var gaps = box.SelectMany(_sound.Faces.Before)
            .Where(f => f.Way == way && !own.Contains(f.Other.Part.Id) && (runsAt is null || f.Other.Part.Id == runsAt))
            .Select(f => (f.OtherAt * way.Sign()) - far)
            .Concat(Edges(front, way).Select(id => (_sound.Faces.Parts[id].End(way.Opposite()) * way.Sign()) - far))
            .Where(gap => gap > -TouchMm)
            .ToList();
        // Where nothing is seen before the box, or what is seen is not what its room is measured to, it cannot be said.
        if (
            gaps.Count == 0
            || gaps.Min() < atLeast.ToMillimetres() - TouchMm
            || gaps.Min() > atMost?.ToMillimetres() + TouchMm
        )
        {
            _isOpen = true;
            return;
        }
        var gapMm = gaps.Min() - (after - far);
        Note(atLeast.ToMillimetres() - gapMm, $"room {way} of {front.Group}: {gapMm:F2} mm");
        if (atMost is { } most)
            Note(gapMm - most.ToMillimetres(), $"room {way} of {front.Group}: {gapMm:F2} mm");
    }

    /// <summary>What the box passes when it is drawn: the edges of its opening over and under it.</summary>
    private IReadOnlyList<string> Edges(Front front, Direction way)
    {
        var bounds = _sound.Piece.Openings.First(o => o.Id == front.Opening).Bounds;
        return way == Direction.Up ? bounds.Top
            : way == Direction.Down ? bounds.Bottom
            : [];
    }

    /// <summary>Faces of joined parts that lay in one plane.</summary>
    private void Lines()
    {
        var moved = _changes.Moved.ToHashSet(StringComparer.Ordinal);
        foreach (var joint in _sound.Piece.Joints.Where(joint => joint.Kind != JointKind.Loose))
        {
            if (!moved.Contains(joint.Enters) && !moved.Contains(joint.Receives))
                continue;
            var (a, b) = (_sound.Faces.Parts[joint.Enters], _sound.Faces.Parts[joint.Receives]);
            if (a.Part.Turn != b.Part.Turn)
                continue;
            foreach (var way in Enum.GetValues<Direction>())
            {
                if (Math.Abs(a.End(way) - b.End(way)) > TouchMm)
                    continue;
                var by = _changes.EndMm(joint.Enters, way) - _changes.EndMm(joint.Receives, way);
                if (Math.Abs(by) > SkinMm)
                    Note(Math.Abs(by) - FitMm, $"line {way} of {a.Part.Name} / {b.Part.Name} {by:F2} mm");
            }
        }
    }
}

/// <summary>What the judge says of a slip.</summary>
/// <param name="Moved">Ids of the parts that came out at another size or place.</param>
/// <param name="Counting">What left its tolerance by more than 1/128 in.</param>
/// <param name="Why">Why nothing can be said; null where something can.</param>
internal sealed record Judgement(
    Verdict Verdict,
    IReadOnlyList<string> Moved,
    IReadOnlyList<string> Counting,
    string? Why
);
