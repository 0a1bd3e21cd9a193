using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether the two parts of every joint that holds really meet: shoulder on face, tongue in groove.</summary>
internal sealed class JointMeets : ICheck
{
    public static FindingKind Misses { get; } =
        new(
            "joint-misses",
            Severity.Stop,
            "Joint does not meet",
            "Going the way it should, the one part never comes upon the other: it is in the wrong place or far too short."
        );

    public static FindingKind Open { get; } =
        new(
            "joint-open",
            Severity.Stop,
            "Joint stays open",
            "Shoulder and face do not touch: no clamp closes what a part is too short for, and glue fills no gap.",
            "common practice"
        );

    public static FindingKind BottomsOut { get; } =
        new(
            "tongue-bottoms-out",
            Severity.Stop,
            "Tongue bottoms out",
            "The tongue or end is longer than its groove is deep: it meets the bottom and the shoulder cannot close."
        );

    public static FindingKind TooThick { get; } =
        new(
            "too-thick-for-its-groove",
            Severity.Stop,
            "Too thick for its groove",
            "What should go into a groove, dado or rabbet is thicker than that is wide.",
            "Sheet goods differ from what they are called: panel products tables; common practice"
        );

    public static FindingKind RunsInto { get; } =
        new(
            "joined-parts-overlap",
            Severity.Stop,
            "Joined parts overlap",
            "Two parts that should only touch stand partly in the same place: one of them is too long, or its cut is missing."
        );

    public static FindingKind Barely { get; } =
        new(
            "joint-barely-holds",
            Severity.Stop,
            "Joint barely holds",
            "Less than half of the depth that was wanted is in the groove; what is left carries no load for long.",
            "common practice; the half is a limit of our own"
        );

    public static FindingKind Shallow { get; } =
        new(
            "joint-shallow",
            Severity.Warn,
            "Joint shallower than wanted",
            "The tongue or end reaches less deep than it should; there is less to glue, and more than half of it is still there.",
            "common practice; the half is a limit of our own"
        );

    public string Name => "joints that hold: shoulders meet, tongues reach";

    public string Of => "joints";

    public string How =>
        "The entering part is followed along its way in until it meets the other: where face or shoulder should touch, "
        + "1/128 in (0.2 mm) may stay. Its reach past the face of the other is the depth of the joint. A share of the same "
        + "place is measured as an overlap.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Misses, Open, BottomsOut, TooThick, RunsInto, Barely, Shallow];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var joint in piece.Piece.Joints.Where(joint => joint.Kind != JointKind.Loose))
        {
            covered++;
            var seen = piece.From(joint);
            if (Judge(seen, seen.Fit(joint)) is { } finding)
                findings.Add(finding);
        }
        return new(covered, findings);
    }

    private static Finding? Judge(InspectedPiece piece, JointFit fit)
    {
        if (fit.Overlap is not null)
            return Overlapping(piece, fit);
        var (enters, receives) = (fit.Enters.Part.Name, fit.Receives.Part.Name);
        if (fit.Gap is not { } gap)
        {
            return Tell(piece, fit, Misses, $"The {enters} never meets the {receives}.") with
            {
                Remedy = new($"Look at the size and the place of the {enters}.", Sure: false),
            };
        }
        var open = piece.ToLength(gap.Distance);
        if (open > fit.Joint.Play + Tolerance.Fitting)
        {
            return Tell(piece, fit, Open, $"The {enters} stands off the {receives}.") with
            {
                Measured = new MeasuredLength("open by", open),
                Wanted = new(Length.Zero, fit.Joint.Play),
                Remedy = new($"Make the {enters} {piece.Say(open - fit.Joint.Play)} longer on that side.", Sure: false),
            };
        }
        return Depth(piece, fit);
    }

    private static Finding Overlapping(InspectedPiece piece, JointFit fit)
    {
        var shared = fit.Overlap!;
        var rounding = piece.ToUnits(Tolerance.Rounding);
        var (enters, receives) = (fit.Enters.Part.Name, fit.Receives.Part.Name);
        var deep = piece.ToLength(fit.Deep(shared));
        var (kind, message, remedy) = (fit.Joint.Engagement.Sign > 0, fit.OverlapsFromTheMouth(rounding)) switch
        {
            (true, false) => (
                BottomsOut,
                $"The {enters} meets the bottom of its groove in the {receives}.",
                $"Make it {piece.Say(deep)} shorter at that end, or the groove as much deeper."
            ),
            (true, true) when fit.OverlapsToTheEnd(rounding) && fit.IsThickByLessThanHalf => (
                TooThick,
                $"The {enters} is too thick for its place in the {receives}.",
                "Measure the stuff itself, and cut the groove to it."
            ),
            _ => (
                RunsInto,
                $"The {enters} runs into the {receives}.",
                $"Make the {enters} {piece.Say(deep)} shorter, or move it."
            ),
        };
        if (kind == TooThick)
            deep = piece.ToLength(JointFit.Thin(shared));
        return Tell(piece, fit, kind, message) with
        {
            Measured = new MeasuredVolume("overlap", piece.Grid.ToCubicMm(shared.Volume), deep),
            Wanted = Wanted.Exactly(Length.Zero),
            Remedy = new(remedy, Sure: false),
        };
    }

    private static Finding? Depth(InspectedPiece piece, JointFit fit)
    {
        var wanted = fit.Joint.Engagement;
        if (wanted.Sign <= 0 || fit.Engagement is not { } reached)
            return null;
        var depth = piece.ToLength(reached);
        if (wanted - depth <= Tolerance.Fitting)
            return null;
        var kind = depth * 2 < wanted ? Barely : Shallow;
        var (enters, receives) = (fit.Enters.Part.Name, fit.Receives.Part.Name);
        return Tell(piece, fit, kind, $"The {enters} does not reach as deep into the {receives} as it should.") with
        {
            Measured = new MeasuredLength("depth in the joint", depth),
            Wanted = new(wanted, null),
            Remedy = new($"Leave it {piece.Say(wanted - depth)} longer past the shoulder.", Sure: false),
        };
    }

    private static Finding Tell(InspectedPiece piece, JointFit fit, FindingKind kind, string message)
    {
        var parts = JointPlaces.Doubted(fit.Enters.Part, fit.Receives.Part);
        return new()
        {
            Kind = kind,
            Message = message,
            Parts = [.. parts.Select(part => part.Id)],
            Place = parts[0].Source,
            Related = [fit.Joint.Source, parts[1].Source],
            Where = JointPlaces.Where(piece, fit),
        };
    }
}
