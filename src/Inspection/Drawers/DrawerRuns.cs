using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether every drawer's box fits between what its slides are fixed to, and with all round it clear.</summary>
internal sealed class DrawerRuns : ICheck
{
    private const string SlideSource =
        "Side-mounted slides 1/2 in a side (askvity.info, webcasty.com); undermounted by the slide's own sheet. Go by the "
        + "sheet of the slides in hand";

    public static FindingKind TooTight { get; } =
        new(
            "drawer-too-wide-for-its-slides",
            Severity.Stop,
            "Drawer box too wide for its slides",
            "There is less room at the side than the slide needs: the drawer binds, or does not go in.",
            SlideSource
        );

    public static FindingKind TooSlack { get; } =
        new(
            "drawer-too-narrow-for-its-slides",
            Severity.Stop,
            "Drawer box too narrow for its slides",
            "There is more room at the side than the slide can bridge: its two halves do not catch.",
            SlideSource
        );

    public static FindingKind NothingBeside { get; } =
        new(
            "drawer-has-nothing-to-run-on",
            Severity.Stop,
            "Nothing to fix the slide to",
            "The part that should carry the slide is not beside the box."
        );

    public static FindingKind NoRoomAbove { get; } =
        new(
            "drawer-lacks-room-above",
            Severity.Stop,
            "Drawer box too high",
            "The box comes closer to what is over it, or over the way it is drawn, than its slides allow.",
            SlideSource
        );

    public static FindingKind NoRoomBelow { get; } =
        new(
            "drawer-lacks-room-below",
            Severity.Stop,
            "Drawer box too low",
            "The box comes closer to what is under it, or under the way it is drawn, than its slides allow.",
            SlideSource
        );

    public static FindingKind NoRoomBehind { get; } =
        new(
            "drawer-lacks-room-behind",
            Severity.Stop,
            "Drawer box too deep",
            "The box meets what is behind it before its front is home.",
            SlideSource
        );

    public static FindingKind ShorterThanSlide { get; } =
        new(
            "drawer-shorter-than-its-slides",
            Severity.Stop,
            "Drawer box shorter than its slides",
            "The slide sticks out behind the box and has nothing to be fixed to at its end.",
            "common practice: a box as long as its slides"
        );

    public static FindingKind FrontOff { get; } =
        new(
            "drawer-front-off-its-box",
            Severity.Stop,
            "Drawer front not fixed to its box",
            "Pulled by its front, the drawer stays where it is."
        );

    private static readonly Direction[] Sides = [Direction.Left, Direction.Right];

    public string Name => "drawer boxes against openings, backs and slides";

    public string Of => "drawers";

    public string How =>
        "The box is measured against the parts that carry its slides, on each side, smallest and largest, and held against "
        + "the slide's own window; then against whatever stands over, under and behind it, and against the edges of the "
        + "opening that it passes when it is drawn. The sides that carry the slides are held against the length of those.";

    public IReadOnlyList<FindingKind> Kinds { get; } =
    [TooTight, TooSlack, NothingBeside, NoRoomAbove, NoRoomBelow, NoRoomBehind, ShorterThanSlide, FrontOff];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts)
        {
            var seen = piece.From(front);
            if (DrawerBox.Of(seen, front) is not { } box)
                continue;
            covered++;
            findings.AddRange(Sides.Select(side => AtSide(seen, box, side)).OfType<Finding>());
            findings.AddRange(
                new[]
                {
                    Around(seen, box, Direction.Up, box.Fit.AboveAtLeast, NoRoomAbove, "over"),
                    Around(seen, box, Direction.Down, box.Fit.BelowAtLeast, NoRoomBelow, "under"),
                    Around(seen, box, Direction.Back, box.Fit.BehindAtLeast, NoRoomBehind, "behind"),
                    AgainstSlide(seen, box),
                    FrontFixed(seen, box),
                }.OfType<Finding>()
            );
        }
        return new(covered, findings);
    }

    private static Finding? AtSide(InspectedPiece piece, DrawerBox box, Direction side)
    {
        var word = side == Direction.Left ? "left" : "right";
        var runs = side == Direction.Left ? box.Fit.RunsBetween.Left : box.Fit.RunsBetween.Right;
        var window = new Wanted(box.Fit.SideClearance.AtLeast, box.Fit.SideClearance.AtMost);
        if (box.Beside(side) is not { } gap)
        {
            return Tell(
                piece,
                box,
                NothingBeside,
                $"The {word} slide of the {box.Name} has nothing beside the box.",
                runs
            ) with
            {
                Where = piece.ToSpace(box.Around.Centre(), piece.Shape(runs).Box.Centre()),
            };
        }
        var smallest = piece.ToLength(gap.Smallest.Gap);
        var largest = piece.ToLength(gap.Largest.Gap);
        var tight = smallest < box.Fit.SideClearance.AtLeast - Tolerance.Rounding;
        // The slide sits on the box's widest place: what counts for slack is the smallest room there is.
        if (!tight && smallest <= box.Fit.SideClearance.AtMost + Tolerance.Rounding)
            return null;

        var (own, other) = gap.Shown(gap.Smallest, piece.ToUnits(Tolerance.Fitting))
            .Ends(side, Axis.Z, box.Around.Centre().Y);
        var by = tight ? box.Fit.SideClearance.AtLeast - smallest : smallest - box.Fit.SideClearance.AtMost;
        var message = tight
            ? $"The box of the {box.Name} leaves too little room for its {word} slide."
            : $"The box of the {box.Name} leaves too much room for its {word} slide.";
        return Tell(piece, box, tight ? TooTight : TooSlack, message, runs) with
        {
            Where = piece.ToSpace(other, own),
            Measured = gap.IsEven(piece.ToUnits(Tolerance.Fitting))
                ? new MeasuredLength("room", smallest)
                : new MeasuredRange("room", smallest, largest),
            Wanted = window,
            Remedy = SideRemedy(piece, box, side, tight, by),
        };
    }

    private static Remedy SideRemedy(InspectedPiece piece, DrawerBox box, Direction side, bool tight, Length by)
    {
        var opposite = box.Beside(side.Opposite());
        if (opposite is null)
            return new($"Look at where the box of the {box.Name} stands.", Sure: false);
        var sum = piece.ToLength(box.Beside(side)!.Smallest.Gap + opposite.Smallest.Gap);
        var (least, most) = (box.Fit.SideClearance.AtLeast * 2, box.Fit.SideClearance.AtMost * 2);
        if (sum < least)
            return new($"Make the box of the {box.Name} at least {piece.Say(least - sum)} narrower.", Sure: true);
        if (sum > most)
            return new($"Make the box of the {box.Name} at least {piece.Say(sum - most)} wider.", Sure: true);
        var way = tight == (side == Direction.Left) ? "right" : "left";
        return new($"Move the box {piece.Say(by)} to the {way} on its front.", Sure: true);
    }

    private static Finding? Around(
        InspectedPiece piece,
        DrawerBox box,
        Direction way,
        Length atLeast,
        FindingKind kind,
        string where
    )
    {
        if (box.Closest(way, atLeast) is not { } close)
            return null;
        var room = piece.ToLength(close.Gap);
        var word =
            way == Direction.Back ? "shorter, front to back"
            : way == Direction.Up ? "lower"
            : "less deep at its lower edge";
        return Tell(
            piece,
            box,
            kind,
            $"The box of the {box.Name} has too little room {where} it.",
            close.Other.Part.Id
        ) with
        {
            Where = piece.ToSpace(close.OnBox, close.OnOther),
            Measured = new MeasuredLength("room", room),
            Wanted = new(atLeast, null),
            Remedy = new($"Make the box {piece.Say(atLeast - room)} {word}.", Sure: way != Direction.Down),
        };
    }

    private static Finding? AgainstSlide(InspectedPiece piece, DrawerBox box)
    {
        var carrying = Sides.Select(box.Carrying).ToList();
        var shortest = carrying.MinBy(part => part.Box.Size(Axis.Y))!;
        var length = piece.ToLength(shortest.Box.Size(Axis.Y));
        if (length >= box.Fit.SlideLength - Tolerance.Rounding)
            return null;
        var alike = carrying.TrueForAll(part => part.Box.Size(Axis.Y) == shortest.Box.Size(Axis.Y));
        var middle = alike ? box.Around.Centre() : shortest.Box.Centre();
        var what = alike ? "box" : shortest.Part.Name;
        return Tell(piece, box, ShorterThanSlide, $"The box of the {box.Name} is shorter than its slides.") with
        {
            Where = piece.ToSpace(middle with { Y = shortest.Box.Min.Y }, middle with { Y = shortest.Box.Max.Y }),
            Measured = new MeasuredLength("length beside the slide", length),
            Wanted = new(box.Fit.SlideLength, null),
            Remedy = new(
                $"Make the {what} {piece.Say(box.Fit.SlideLength - length)} longer, front to back, or take the next shorter slides.",
                Sure: false
            ),
        };
    }

    private static Finding? FrontFixed(InspectedPiece piece, DrawerBox box)
    {
        var face = box.Front.Face.ToHashSet(StringComparer.Ordinal);
        var inside = box.Fit.Box.ToHashSet(StringComparer.Ordinal);
        if (face.Count == 0 || face.Overlaps(inside))
            return null;
        var within = piece.ToUnits(Tolerance.Fitting);
        foreach (var joint in piece.Piece.Joints)
        {
            var ties =
                (face.Contains(joint.Enters) && inside.Contains(joint.Receives))
                || (face.Contains(joint.Receives) && inside.Contains(joint.Enters));
            if (ties && piece.From(joint).Fit(joint).Ties(piece.ToUnits(joint.Play), within))
                return null;
        }
        if (piece.Piece.Hardware.Any(h => h.Ties.Any(face.Contains) && h.Ties.Any(inside.Contains)))
            return null;
        var front = piece.Shape(box.Front.Face[0]);
        return Tell(piece, box, FrontOff, $"The front of the {box.Name} is not fixed to its box.", front.Part.Id) with
        {
            Where = piece.ToSpace(front.Box.Centre(), box.Around.Centre()),
            Remedy = new("Screw the front to the box, and look whether the two touch.", Sure: false),
        };
    }

    private static Finding Tell(
        InspectedPiece piece,
        DrawerBox box,
        FindingKind kind,
        string message,
        string? other = null
    )
    {
        var parts = JointPlaces.Doubted(box.Parts.Select(shape => shape.Part));
        IEnumerable<string> ids = parts.Select(part => part.Id);
        return new()
        {
            Kind = kind,
            Message = message,
            Parts = PartIds.Together(ids, other is null ? [] : [other]),
            Place = parts[0].IsAsCut ? parts[0].Source : piece.Group(box.Front.Group)?.Source ?? parts[0].Source,
            Related = other is null ? [] : [piece.Shape(other).Part.Source],
        };
    }
}
