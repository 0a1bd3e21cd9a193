using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Inspection;

/// <summary>Whether bays that are meant to be of one size are.</summary>
internal sealed class AlikeBays : ICheck
{
    public static FindingKind Unequal { get; } =
        new(
            "bays-unequal",
            Severity.Warn,
            "Equal bays are not equal",
            "Bays side by side are compared by everyone who looks at the piece; what was to be equal and is not, is seen.",
            "common practice"
        );

    public static FindingKind NearlyAlike { get; } =
        new(
            "bays-nearly-alike",
            Severity.Note,
            "Bays nearly alike",
            "Two bays differ by less than anyone would choose: one of the two numbers is likely a slip.",
            "common practice"
        );

    public string Name => "bays that should be alike";

    public string Of => "pairs of bays";

    public string How =>
        "The clear size of each bay is measured between the parts at its ends (or taken as measured, where the recipe gives it). Bays asked "
        + "to be equal, by `equal`, by equal shares or by the same number, are held to within 1/128 in (0.2 mm) of each other, "
        + "or 2 mm where they were measured as found. Bays with numbers of their own that come out between 0.2 and 5 mm apart "
        + "are told as nearly alike, unless the two hang on different parameters, are graduated or were rounded by request: then the difference is taken as meant.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Unequal, NearlyAlike];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var bank in piece.Piece.Banks)
        {
            var bays = bank.Bays.Select(bay => Clear.Measure(piece, bank.Axis, bay)).OfType<Clear>().ToList();
            var sets = bays.GroupBy(bay => bay.Bay.Alike).Select(set => set.ToList()).ToList();
            foreach (var set in sets.Where(set => set.Count > 1))
            {
                covered += set.Count - 1;
                var usual = Usual(set);
                findings.AddRange(
                    set.Where(bay => Length.Abs(bay.Size - usual.Size) > Slack(bay, usual))
                        .Select(bay => Tell(bay, usual, Unequal))
                );
            }
            var kinds = sets.Select(Usual).Where(bay => !bay.Bay.IsGraduated).OrderBy(bay => bay.Size).ToList();
            foreach (var (smaller, larger) in kinds.Zip(kinds.Skip(1)))
            {
                covered++;
                var apart = larger.Size - smaller.Size;
                if (apart > Slack(smaller, larger) && apart <= Tolerance.ReadsAsMeant && HangOnTheSame(smaller, larger))
                    findings.Add(Tell(smaller, larger, NearlyAlike));
            }
        }
        return new(covered, findings);
    }

    /// <summary>The size that most of a set have; of several such the first.</summary>
    private static Clear Usual(List<Clear> set) =>
        set.MaxBy(bay => set.Count(other => Length.Abs(other.Size - bay.Size) <= Tolerance.Fitting))!;

    private static Length Slack(Clear a, Clear b) =>
        a.IsAsFound || b.IsAsFound ? Tolerance.SawSetting : Tolerance.Fitting;

    private static bool HangOnTheSame(Clear a, Clear b)
    {
        var (one, other) = (Grounds.Of(a.Bay.Size), Grounds.Of(b.Bay.Size));
        return !one.IsRounded && !other.IsRounded && one.Named.SequenceEqual(other.Named, StringComparer.Ordinal);
    }

    private static Finding Tell(Clear odd, Clear usual, FindingKind kind)
    {
        var piece = odd.Seen;
        var wider = odd.Size > usual.Size;
        var word = odd.IsColumn ? (wider ? "wider" : "narrower") : (wider ? "taller" : "lower");
        var by = piece.Say(Length.Abs(odd.Size - usual.Size));
        var parts = JointPlaces.Doubted(odd.Ends.Concat(usual.Ends).Select(shape => shape.Part));
        return new()
        {
            Kind = kind,
            Message =
                kind == Unequal
                    ? $"The {odd.Bay.Name} is {word} than the {usual.Bay.Name}, and the two are meant to be alike."
                    : $"The {odd.Bay.Name} is only just {word} than the {usual.Bay.Name}.",
            Parts = PartIds.Together(parts.Select(part => part.Id)),
            Place = parts[0].IsAsCut ? parts[0].Source : odd.Bay.Source,
            Related = [usual.Bay.Source],
            Where = odd.Where,
            Measured = new MeasuredLength(odd.IsColumn ? "width" : "height", odd.Size),
            Wanted = Wanted.Exactly(usual.Size),
            Remedy =
                kind == Unequal
                    ? new($"Make the {odd.Bay.Name} {by} {(wider ? "smaller" : "larger")}.", Sure: false)
                    : new(
                        "Give both the same size, or make the difference large enough to be seen as meant.",
                        Sure: false
                    ),
        };
    }

    /// <summary>A bay with its clear size as it is.</summary>
    private sealed record Clear(
        InspectedPiece Seen,
        Bay Bay,
        IReadOnlyList<Shape> Ends,
        Length Size,
        SpacePlace Where,
        bool IsColumn,
        bool IsAsFound
    )
    {
        /// <summary>Null where its two ends do not face each other.</summary>
        public static Clear? Measure(InspectedPiece piece, Axis axis, Bay bay)
        {
            var seen = piece.From(piece.Shape(bay.From).Part.Turn);
            Shape[] ends = [seen.Shape(bay.From), seen.Shape(bay.To)];
            var (side, along) = axis == Axis.X ? (Direction.Right, Axis.Z) : (Direction.Up, Axis.X);
            if (FrontSides.Between(seen, [ends[0]], [ends[1]], side, slab: null) is not { } gap)
                return null;
            var (from, to) = gap.Shown(gap.Smallest, seen.ToUnits(Tolerance.Fitting))
                .Ends(side, along, Math.Max(ends[0].Box.Min.Y, ends[1].Box.Min.Y));
            var found = bay.Opening is { } opening ? piece.Opening(opening).AsMeasured : null;
            var size =
                found is null ? seen.ToLength(gap.Smallest.Gap)
                : axis == Axis.X ? Length.Min(found.WidthAtBottom, found.WidthAtTop)
                : Length.Min(found.HeightAtLeft, found.HeightAtRight);
            return new(seen, bay, ends, size, seen.ToSpace(from, to), axis == Axis.X, found is not null);
        }
    }
}
