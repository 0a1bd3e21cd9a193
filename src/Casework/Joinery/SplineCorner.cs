using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Joinery;

/// <summary>A spline as it lies in a corner.</summary>
/// <param name="Name">Within the group.</param>
/// <param name="Deep">How far it goes into each part.</param>
/// <param name="Run">Its size across its grain.</param>
/// <param name="OnSeam">From where to where it lies on the seam, from the inner corner.</param>
/// <param name="Beside">From where to where on the axis that the seam's plane runs along.</param>
/// <param name="LiesFlat">Whether its faces look along that axis, as in the frame of a door; else they look along the seam.</param>
internal sealed record Spline(
    string Name,
    Figure Deep,
    Figure Run,
    Figure Thickness,
    (Length From, Length To) OnSeam,
    (Length From, Length To) Beside,
    bool LiesFlat
);

/// <summary>The corner of two mitred parts, seen along the seam at 45 degrees.</summary>
/// <param name="End">The end of the receiving part there.</param>
/// <param name="OtherEnd">The end of the entering one.</param>
/// <param name="Inner">The inner corner: the seam begins there.</param>
/// <param name="Stuff">What both parts measure across the corner.</param>
internal sealed record SplineCorner(Direction End, Direction OtherEnd, Point Inner, Figure Stuff)
{
    private static readonly Length Finest = Length.FromMillimetres(new Rational(1, 640));
    private static readonly Rational RootOfTwo = new((long)Math.Round(Math.Sqrt(2) * 1e9), 1_000_000_000);

    /// <summary>From the inner to the outer corner, rounded once.</summary>
    public Length Seam { get; } = (Stuff.Length * RootOfTwo).RoundTo(Finest);

    /// <summary>A third of the seam, rounded once.</summary>
    public Length Third => (Seam / 3).RoundTo(Finest);

    private Axis Beside => (Axis)(3 - (int)End.Axis() - (int)OtherEnd.Axis());

    public static SplineCorner Of(
        PieceBuilder piece,
        PartDraft receives,
        Direction end,
        PartDraft enters,
        Direction otherEnd
    )
    {
        var stuff = receives.SizeAlong(otherEnd.Axis());
        if (receives.Reckoned.Size(otherEnd.Axis()) != enters.Reckoned.Size(end.Axis()))
            throw new CannotBuildException(
                new InputError(
                    $"The {enters.Name} and the {receives.Name} are not equally thick: no spline lies square to their mitre.",
                    enters.Source,
                    "parts of one thickness, or a plain mitre"
                )
            );
        var inner = receives
            .Reckoned.Min.With(otherEnd.Axis(), receives.Reckoned.Side(otherEnd.Opposite()))
            .With(end.Axis(), enters.Reckoned.Side(end.Opposite()));
        return new SplineCorner(end, otherEnd, inner, stuff);
    }

    /// <summary>The shop's depth, but no more than half of the stuff, to a sixteenth or a whole millimetre.</summary>
    public Figure Depth(PieceBuilder piece)
    {
        var step = piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        return Figure
            .Min(
                piece.Shop.Length(JointRules.SplineDepth, "depth of the spline in each"),
                (Stuff / 2).FloorTo(step).As("half of what it joins")
            )
            .As("depth of the spline in each");
    }

    /// <summary>The whole of what both parts share beside the seam.</summary>
    public (Length From, Figure Length) FromEdgeToEdge(PartDraft receives, PartDraft enters)
    {
        var (from, to) = Meeting.Shared(receives.Reckoned, enters.Reckoned, Beside);
        var whole = enters.SizeAlong(Beside);
        return (
            from,
            whole.Length == to - from
                ? whole
                : Figure.Given("where they meet", to - from, new TradeOrigin("between parts that stand already"))
        );
    }

    /// <summary>Makes the spline, grooves both parts for it, and ties it to both.</summary>
    public PartDraft Let(PieceBuilder piece, PartDraft receives, PartDraft enters, Spline spline)
    {
        var room = piece.Shop.Length(JointRules.TongueRoom).Length;
        var format = LengthFormat.For(piece.Scope.Unit);
        var deep = spline.Deep.Length;
        // In the spline's own frame, turned by an eighth about the axis beside, the seam and the way across it are square.
        var seam = Leaning(End, OtherEnd);
        var intoReceives = Leaning(End.Opposite(), OtherEnd);
        var box = new Extent(Inner.With(Beside, spline.Beside.From), Inner.With(Beside, spline.Beside.To))
            .Grown(seam, spline.OnSeam.To)
            .Grown(seam.Opposite(), -spline.OnSeam.From)
            .Grown(intoReceives, deep)
            .Grown(intoReceives.Opposite(), deep);
        var part = piece.Board(
            enters.Group,
            spline.Name,
            Role.Tongue,
            enters.Material,
            Lie.Of(
                Directions.Along(intoReceives.Axis(), 1),
                Directions.Along(spline.LiesFlat ? Beside : seam.Axis(), 1)
            ),
            (spline.Deep + spline.Deep).As("spline length"),
            spline.Run.As("spline width"),
            box.Min,
            enters.Source,
            spline.Thickness,
            lean: new PlanTurn(Inner, 45, enters.Group.Turn) { About = Beside }
        );
        Tie(receives, intoReceives);
        Tie(enters, intoReceives.Opposite());
        return part;

        void Tie(PartDraft board, Direction way)
        {
            var (from, to) = spline.OnSeam;
            var beside = spline.Beside;
            // Across its faces it fits; a stopped end has the same room as the bottom of the groove.
            // Corners at 45 degrees are rounded: a step more than that on both sides, so that no rounding closes the groove.
            (from, to) = spline.LiesFlat ? (from - room, to + room) : (from - Finest, to + Finest);
            if (!spline.LiesFlat)
                beside = (
                    beside.From > board.Extent.Min[Beside] ? beside.From - room : beside.From,
                    beside.To < board.Extent.Max[Beside] ? beside.To + room : beside.To
                );
            Swept.Cut(
                board,
                CutKind.Groove,
                Inner,
                End,
                OtherEnd,
                [At(from, -deep - room), At(to, -deep - room), At(to, deep + room), At(from, deep + room)],
                beside,
                piece.NextJointId,
                Called(spline, deep + room, to - from, format)
            );
            piece.Join(JointKind.LooseTongue, board, part, way, deep, room);
        }
    }

    /// <summary>A groove as it is set out from the inner end of the mitre.</summary>
    private static string Called(Spline spline, Length deep, Length along, LengthFormat format)
    {
        return $"groove for the spline, square to the mitre, {Say(spline.Thickness.Length)} wide, {Say(deep)} deep, "
            + (spline.LiesFlat ? $"{Say(along)} long, " : "")
            + $"{Say(spline.OnSeam.From)} from the inner end of the mitre";

        string Say(Length length) => format.Write(format.Shown(length));
    }

    /// <summary>A point by its way along the seam and its way off it into the receiving part, rounded once.</summary>
    private static OutlineCorner At(Length along, Length off) =>
        new(((along - off) / RootOfTwo).RoundTo(Finest), ((along + off) / RootOfTwo).RoundTo(Finest));

    /// <summary>The direction in the spline's own frame that halves the angle between two of the piece.</summary>
    private Direction Leaning(Direction one, Direction other)
    {
        var first = (Axis)(((int)Beside + 1) % 3);
        var second = (Axis)(((int)Beside + 2) % 3);
        var (a, b) = one.Axis() == first ? (one.Sign(), other.Sign()) : (other.Sign(), one.Sign());
        return a == b ? Directions.Along(first, a) : Directions.Along(second, b);
    }
}
