using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>
/// Whether what is let in with room to move has that room and no more: panels in doors, glass, backs and drawer bottoms
/// in grooves. A loose part may lie anywhere, so the room at its two opposite edges is judged together.
/// </summary>
internal sealed class LooseFit : ICheck
{
    public static FindingKind TooBig { get; } =
        new(
            "panel-too-big-for-its-grooves",
            Severity.Stop,
            "Panel too big for its grooves",
            "The panel meets the bottom of its grooves before the frame closes: the frame will not pull up to its shoulders."
        );

    public static FindingKind TooThick { get; } =
        new(
            "panel-too-thick-for-its-groove",
            Severity.Stop,
            "Panel too thick for its groove",
            "The panel, pane or bottom does not go into its groove.",
            "Sheet goods differ from what they are called: panel products tables; common practice"
        );

    public static FindingKind FallsOut { get; } =
        new(
            "panel-falls-out",
            Severity.Stop,
            "Panel can fall out",
            "Pushed to one side, the panel leaves the groove on the other."
        );

    public static FindingKind PaneFallsOut { get; } =
        new(
            "pane-falls-out",
            Severity.Stop,
            "Glass can fall out",
            "Pushed to one side, the pane leaves its seat on the other: falling glass hurts. Follow the local rules for glass in furniture.",
            null,
            ConcernsSafety: true
        );

    public static FindingKind LacksRoom { get; } =
        new(
            "panel-lacks-room",
            Severity.Warn,
            "Panel lacks room to move",
            "There is less room at the panel's edges than wanted: a solid panel that swells pushes its frame apart, and glue or a bent groove has nowhere to go.",
            "Published raised-panel tutorial: 1/8 in at the sides, 1/16 in at top and bottom"
        );

    public static FindingKind TooSmall { get; } =
        new(
            "panel-too-small",
            Severity.Warn,
            "Panel smaller than wanted",
            "The panel has more room than wanted and sits less deep in its grooves; it rattles, and its edge may show when it shrinks.",
            "common practice"
        );

    public string Name => "panels, panes, backs and bottoms in their grooves";

    public string Of => "loose parts, each way";

    public string How =>
        "A part that is let in loose is followed into each of its grooves until it meets the bottom. The room at opposite "
        + "edges is added up and held against the play wanted, within 1/128 in (0.2 mm); pushed to one side it must still "
        + "be held on the other.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [TooBig, TooThick, FallsOut, PaneFallsOut, LacksRoom, TooSmall];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var loose = piece.Piece.Joints.Where(joint => joint.Kind == JointKind.Loose);
        foreach (var joints in loose.GroupBy(joint => (joint.Enters, Axis: joint.Into.Axis())))
        {
            covered++;
            var seen = piece.From(joints.First());
            var fits = joints.Select(seen.Fit).ToList();
            var thick = fits.Find(fit => IsTooThick(seen, fit));
            if (thick is not null)
                findings.Add(TellThick(seen, thick));
            else if (Judge(seen, fits) is { } finding)
                findings.Add(finding);
        }
        return new(covered, findings);
    }

    private static bool IsTooThick(InspectedPiece piece, JointFit fit)
    {
        var rounding = piece.ToUnits(Tolerance.Rounding);
        return fit.Joint.Engagement.Sign > 0
            && fit.OverlapsFromTheMouth(rounding)
            && fit.OverlapsToTheEnd(rounding)
            && fit.IsThickByLessThanHalf;
    }

    private static Finding? Judge(InspectedPiece piece, List<JointFit> fits)
    {
        var edges = fits.GroupBy(fit => fit.Joint.Into).Select(group => LooseEdge.Tightest(piece, [.. group])).ToList();
        var enters = fits[0].Enters.Part;
        var room = edges.Aggregate(Length.Zero, (sum, edge) => sum + edge.Room);
        var play = edges.Aggregate(Length.Zero, (sum, edge) => sum + edge.Fit.Joint.Play);
        var overlaps = edges.Where(edge => edge.Fit.Overlap is not null).ToList();
        var held = edges.Where(edge => edge.Fit.Joint.Engagement.Sign > 0).ToList();
        var weakest = held.MinBy(edge => edge.LeastHold(edges));
        var worst = overlaps.Count > 0 ? overlaps[0] : weakest ?? edges[0];

        if (overlaps.Count > 0 && (edges.Count == 1 || room < -Tolerance.Fitting))
        {
            var volume = overlaps.Sum(edge => piece.Grid.ToCubicMm(edge.Fit.Overlap!.Volume));
            return Tell(piece, TooBig, worst, fits, $"The {enters.Name} is too big for its grooves.") with
            {
                Measured = new MeasuredVolume("overlap", volume, -room),
                Wanted = Wanted.Exactly(Length.Zero),
                Remedy = Resize(piece, fits[0], room - play),
            };
        }
        if (weakest is not null && weakest.LeastHold(edges) is { Sign: <= 0 } hold)
        {
            var kind = enters.Material.Kind == MaterialKind.Glass ? PaneFallsOut : FallsOut;
            var message = $"The {enters.Name} can leave its groove in the {weakest.Fit.Receives.Part.Name}.";
            return Tell(piece, kind, weakest, fits, message) with
            {
                // Pushed to the other side it still has a hold, or leaves a slot that one can see through.
                Measured =
                    hold.Sign < 0
                        ? new MeasuredLength("slot left open", -hold)
                        : new MeasuredLength("hold when pushed away", hold),
                Wanted =
                    hold.Sign < 0
                        ? Wanted.Exactly(Length.Zero)
                        : new(weakest.Fit.Joint.Engagement - (play - weakest.Fit.Joint.Play), null),
                Remedy = Resize(piece, fits[0], room - play),
            };
        }
        if (room < play - Tolerance.Fitting)
        {
            return Tell(piece, LacksRoom, worst, fits, $"The {enters.Name} has too little room in its grooves.") with
            {
                Measured = new MeasuredLength("room", room),
                Wanted = Wanted.Exactly(play),
                Remedy = Resize(piece, fits[0], room - play),
            };
        }
        if (room > play + Tolerance.Fitting)
        {
            return Tell(piece, TooSmall, worst, fits, $"The {enters.Name} has too much room in its grooves.") with
            {
                Measured = new MeasuredLength("room", room),
                Wanted = Wanted.Exactly(play),
                Remedy = Resize(piece, fits[0], room - play),
            };
        }
        return null;
    }

    private static Remedy Resize(InspectedPiece piece, JointFit fit, Length by)
    {
        var part = fit.Enters.Part;
        var alongGrain = part.Place.Lie.Along.Axis() == fit.Joint.Into.Axis();
        var word = (alongGrain, by.Sign > 0) switch
        {
            (true, true) => "longer",
            (true, false) => "shorter",
            (false, true) => "wider",
            _ => "narrower",
        };
        return new($"Make the {part.Name} {piece.Say(Length.Abs(by))} {word}.", Sure: true);
    }

    private static Finding TellThick(InspectedPiece piece, JointFit fit)
    {
        var shared = fit.Overlap!;
        var edge = LooseEdge.Tightest(piece, [fit]);
        var (enters, receives) = (fit.Enters.Part.Name, fit.Receives.Part.Name);
        return Tell(piece, TooThick, edge, [fit], $"The {enters} is too thick for its groove in the {receives}.") with
        {
            Measured = new MeasuredVolume(
                "overlap",
                piece.Grid.ToCubicMm(shared.Volume),
                piece.ToLength(JointFit.Thin(shared))
            ),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new("Measure the stuff itself, and cut the groove to it.", Sure: false),
        };
    }

    private static Finding Tell(
        InspectedPiece piece,
        FindingKind kind,
        LooseEdge worst,
        List<JointFit> fits,
        string message
    )
    {
        var enters = fits[0].Enters.Part;
        // The frame's own members come first where the maker cut them by other numbers than were reckoned.
        var parts = JointPlaces.Doubted([enters, worst.Fit.Receives.Part, .. fits.Select(fit => fit.Receives.Part)]);
        return new()
        {
            Kind = kind,
            Message = message,
            Parts = [.. parts.Select(part => part.Id)],
            Place = parts[0].Source,
            Related = [.. parts.Skip(1).Select(part => part.Source).Distinct()],
            Where = JointPlaces.Where(piece, worst.Fit),
        };
    }
}

/// <summary>One edge of a loose part: the tightest of the joints that hold it there.</summary>
/// <param name="Room">Left before it meets the bottom; below zero where it is past it.</param>
internal sealed record LooseEdge(InspectedPiece Piece, JointFit Fit, Length Room)
{
    public static LooseEdge Tightest(InspectedPiece piece, IReadOnlyList<JointFit> fits)
    {
        var tightest = fits.MinBy(fit => fit.Room ?? double.MaxValue)!;
        // What meets nothing at all could go on as far as its own size; it is then reported as falling out.
        var room = tightest.Room ?? tightest.Enters.Box.Size(tightest.Joint.Into.Axis());
        return new(piece, tightest, piece.ToLength(room));
    }

    /// <summary>How deep the edge still sits when the part is pushed against the opposite one.</summary>
    public Length LeastHold(IReadOnlyList<LooseEdge> edges)
    {
        var held = Fit.Engagement is { } reach ? Piece.ToLength(reach) : Length.Zero;
        foreach (var other in edges)
        {
            if (other.Fit.Joint.Into == Fit.Joint.Into.Opposite())
                held -= Length.Max(other.Room, Length.Zero);
        }
        return held;
    }
}
