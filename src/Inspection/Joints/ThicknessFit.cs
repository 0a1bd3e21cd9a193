using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether panels and tongues fill their grooves across their thickness.</summary>
internal sealed class ThicknessFit : ICheck
{
    /// <summary>A panel with more than this between the lips of its groove is heard when its door is shut. Common practice.</summary>
    private static readonly Length Rattle = Length.FromMillimetres(1);

    /// <summary>What has more room than this was never meant to be held by its faces.</summary>
    private static readonly Length Loose = Length.FromMillimetres(5);

    public static FindingKind Rattles { get; } =
        new(
            "panel-rattles",
            Severity.Warn,
            "Panel rattles in its groove",
            "There is more room between the lips of the groove than the panel is thick: it is heard whenever the door shuts.",
            "common practice"
        );

    public static FindingKind Slack { get; } =
        new(
            "tongue-slack",
            Severity.Warn,
            "Tongue slack in its groove",
            "Glue fills no gaps: a tongue that is thinner than its groove is held by its shoulders alone.",
            "common practice"
        );

    public static FindingKind MayNotGoIn { get; } =
        new(
            "groove-fits-only-at-nominal",
            Severity.Warn,
            "Groove fits only if the stock is as said",
            "The groove is a little wider than the panel is said to be; stock that comes at the thick end of what is sold does not go in.",
            "PS 1: 1/64 in for sanded plywood up to 3/4 in; EN 324-1: 0.3 mm for particleboard"
        );

    private static readonly JointKind[] Glued =
    [
        JointKind.StubTenon,
        JointKind.Groove,
        JointKind.Dado,
        JointKind.LooseTongue,
        JointKind.MortiseAndTenon,
    ];

    public string Name => "panels and tongues across their thickness";

    public string Of => "grooves";

    public string How =>
        "What is let in is moved across its own thickness, both ways, until it meets the lips of its groove. Glued tongues may have 1/128 in (0.2 mm) of room. "
        + "A groove as wide as the panel is said to be thick is taken to be cut to the stock in hand, whatever that measures. Any other is held against the thinnest the "
        + "stock may be, with which the panel may have 1 mm before it rattles, and against the thickest, which must go in. Panes of glass are bedded, and left out.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Rattles, Slack, MayNotGoIn];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        var told = new HashSet<(string, FindingKind)>();
        foreach (var joint in piece.Piece.Joints)
        {
            if (joint.Kind != JointKind.Loose && !Glued.Contains(joint.Kind))
                continue;
            // Panes are bedded in putty, silicone or felt, whatever room they have.
            if (piece.Shape(joint.Enters).Part.Material.Kind == MaterialKind.Glass)
                continue;
            var seen = piece.From(joint);
            if (joint.Engagement.Sign <= 0 || Between(seen, joint) is not { } room)
                continue;
            covered++;
            // A panel that is loose in one of its grooves is held by the others as little: it is told once.
            if (Judge(joint, room) is { } kind && told.Add((joint.Enters, kind)))
                findings.Add(Tell(seen, joint, room, kind));
        }
        return new(covered, findings);
    }

    /// <summary>The room across the entering part, between the two lips; null where they do not face it.</summary>
    private static Room? Between(InspectedPiece piece, Joint joint)
    {
        var (enters, receives) = (piece.Shape(joint.Enters), piece.Shape(joint.Receives));
        var shows = enters.Part.Place.Lie.Shows;
        if (shows.Axis() == joint.Into.Axis() || piece.Overlap(enters, receives) is not null)
            return null;
        // Most are as wide as what is in them, which is seen without following the one to the other.
        if (Touches(enters, receives, shows) && Touches(enters, receives, shows.Opposite()))
            return new(
                enters.Part,
                receives.Part,
                Length.Zero,
                piece.ToSpace(enters.Box.Centre(), enters.Box.Centre())
            );
        var cap = piece.ToUnits(Loose);
        if (
            Solids.Pair.GapAlong(enters.Placed, receives.Placed, shows.Unit(), cap) is not { } before
            || Solids.Pair.GapAlong(enters.Placed, receives.Placed, shows.Opposite().Unit(), cap) is not { } behind
        )
            return null;
        var wide = before.Distance > behind.Distance ? before : behind;
        return new(
            enters.Part,
            receives.Part,
            piece.ToLength(before.Distance + behind.Distance),
            piece.ToSpace(wide.OnA, wide.OnB)
        );
    }

    /// <summary>Whether a level face of the one that looks a way lies in one plane with one of the other that looks back, where
    /// their boxes share room.</summary>
    private static bool Touches(Shape enters, Shape receives, Direction way)
    {
        var own = Levels(enters, way, way, receives.Box);
        return own.Count > 0 && Levels(receives, way.Opposite(), way, enters.Box).Overlaps(own);
    }

    /// <summary>How far the level faces lie that look one way, measured along another, within a box.</summary>
    private static HashSet<double> Levels(Shape shape, Direction looking, Direction along, Solids.Box within)
    {
        var levels = new HashSet<double>();
        foreach (var triangle in shape.Facing(looking, Shape.AsAnEdge))
        {
            var at = triangle.A.Along(along);
            if (at != triangle.B.Along(along) || at != triangle.C.Along(along))
                continue;
            // A level face has no depth to share.
            var around = Boxes
                .Of([triangle.A, triangle.B, triangle.C])
                .Grown(along, Skin)
                .Grown(along.Opposite(), Skin);
            if (around.Overlaps(within))
                levels.Add(at);
        }
        return levels;
    }

    /// <summary>Far below a grid unit and far above rounding.</summary>
    private const double Skin = 1e-3;

    private static FindingKind? Judge(Joint joint, Room room)
    {
        if (room.Across > Loose)
            return null;
        if (joint.Kind != JointKind.Loose)
            return room.Across > Tolerance.Fitting ? Slack : null;
        if (room.Across <= Tolerance.Rounding)
            return null;
        if (room.Across + room.Varies > Rattle)
            return Rattles;
        return room.Varies - room.Across > Tolerance.Fitting ? MayNotGoIn : null;
    }

    private static Finding Tell(InspectedPiece piece, Joint joint, Room room, FindingKind kind)
    {
        var parts = JointPlaces.Doubted(room.Enters, room.Receives);
        var (enters, receives) = (room.Enters.Name, room.Receives.Name);
        var wanted = kind == Slack ? Tolerance.Fitting : Rattle - room.Varies;
        return new()
        {
            Kind = kind,
            Message =
                kind == Rattles ? $"The {enters} rattles in its groove in the {receives}."
                : kind == Slack ? $"The tongue of the {enters} is slack in its groove in the {receives}."
                : $"The {enters} goes into its groove in the {receives} only while it is as thick as said.",
            Parts = [.. parts.Select(part => part.Id)],
            Place = parts[0].Source,
            Related = [joint.Source],
            Where = room.Where,
            Measured = new MeasuredLength("room across its thickness", room.Across),
            Wanted = kind == MayNotGoIn ? new(room.Varies, Rattle - room.Varies) : new(null, wanted),
            Remedy =
                kind == MayNotGoIn
                    ? new($"Measure the {room.Enters.Material.Stuff}, and cut the groove to it.", Sure: false)
                    : new($"Cut the groove {piece.Say(room.Across)} narrower, or to the stock in hand.", Sure: true),
            Assumptions =
                room.Varies.Sign > 0 && joint.Kind == JointKind.Loose
                    ?
                    [
                        $"The {room.Enters.Material.Stuff} is taken to come up to {piece.Say(room.Varies)} thicker or thinner than said.",
                    ]
                    : [],
        };
    }

    /// <param name="Across">The room before and behind it together.</param>
    private sealed record Room(Part Enters, Part Receives, Length Across, SpacePlace Where)
    {
        public Length Varies => Enters.Material.Varies?.Length ?? Length.Zero;
    }
}
