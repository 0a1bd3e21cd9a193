using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>The four corners of a box: what they ask of the sizes of its flat panels, and their cuts.</summary>
internal sealed class BoxCorners
{
    private readonly PieceBuilder _piece;
    private readonly CarcasePlan _plan;
    private readonly Figure _thickness;

    public BoxCorners(PieceBuilder piece, CarcasePlan plan)
    {
        (_piece, _plan) = (piece, plan);
        _thickness = plan.Body.Thickness;
    }

    /// <summary>Whether the flat panel at that end of the sides meets them in a joint of its own.</summary>
    public bool Has(Direction end) => At(end) != CornerJoint.AsPanels;

    /// <summary>How far the flat panel at that end reaches into each side; null where it does not.</summary>
    public Figure? LetIn(Direction end) =>
        At(end) switch
        {
            CornerJoint.AsPanels => _plan.IsLetIn ? _piece.Shop.Length(JointRules.DadoDepth, "dado depth") : null,
            CornerJoint.HalfBlind => (_thickness - Lap()).As("tails"),
            _ => _thickness,
        };

    /// <summary>Length of the flat panel at that end.</summary>
    public Figure Length(Direction end, Figure clear) =>
        LetIn(end) is not { } deep ? clear
        : LetIn(end)!.Length == _thickness.Length ? _plan.Width
        : clear + deep + deep;

    /// <summary>How far the edging of that panel stops before its ends; null where it goes to them.</summary>
    public Figure? EdgingStops(Direction end) => IsMitred(end) ? null : LetIn(end);

    /// <summary>Joins the flat panel at that end of the sides to one of them.</summary>
    /// <param name="into">Where the side lies, seen from the inside.</param>
    /// <param name="run">From the front edges to the back.</param>
    public void Join(BandedPanel side, BandedPanel flat, Direction end, Direction into, Figure run)
    {
        var (upright, level) = (side.Panel, flat.Panel);
        // What it stands on and what stands on it lies against the flat panel.
        if (Has(end))
            upright.LeaveNoFace(end);
        switch (At(end))
        {
            case CornerJoint.AsPanels:
                PanelJoints.Tie(_piece, _plan.Joint, upright, level, into, Axis.Y);
                return;
            case CornerJoint.Dovetails:
                RefuseNarrow(upright, level);
                Dovetails.Between(_piece, level, upright, into.Opposite(), end);
                upright.ShoulderLength = Shoulders(upright, [Direction.Up, Direction.Down], CornerJoint.Dovetails);
                return;
            case CornerJoint.HalfBlind:
                RefuseNarrow(level, upright);
                Dovetails.Between(_piece, upright, level, end.Opposite(), into);
                level.ShoulderLength = (_plan.Width - _thickness - _thickness).As("shoulder to shoulder");
                return;
            case CornerJoint.BoxJoint:
                BoxJoint.Between(_piece, level, upright, into.Opposite(), end);
                return;
            case CornerJoint.Mitre:
                CornerMitre.Between(_piece, upright, end, level, into);
                break;
            default:
                var from = upright.Reckoned.Min.Y;
                var band = side.Bands.Count > 0 ? side.Bands[0].Thickness : null;
                SplinedMitre.Between(
                    _piece,
                    upright,
                    end,
                    level,
                    into,
                    $"{(end == Direction.Up ? "upper" : "lower")} {Spoken.Of(into)} spline",
                    (from, SplineRun(run, band))
                );
                break;
        }
        foreach (var (one, other) in side.Bands.Zip(flat.Bands))
            CornerMitre.Between(_piece, one, end, other, into);
    }

    /// <summary>A spline stops before the back, which lies in a groove or rabbet all round.</summary>
    private Figure SplineRun(Figure run, Figure? band)
    {
        if (band is not null)
            run -= band;
        return _plan.Back is { Set: not BackSet.Planted }
            ? run - _piece.Shop.Length(JointRules.TongueRoom, "room")
            : run;
    }

    private Figure Shoulders(PartDraft upright, Direction[] ends, CornerJoint joint)
    {
        var length = upright.Length;
        foreach (var _ in ends.Where(end => At(end) == joint))
            length -= _thickness;
        return length.As("shoulder to shoulder");
    }

    /// <summary>One tail holds the panel of a drawer; a carcase wants two at least (common practice).</summary>
    private void RefuseNarrow(PartDraft tails, PartDraft pins)
    {
        var (from, to) = Meeting.Shared(tails.Reckoned, pins.Reckoned, Axis.Y);
        if (Dovetails.CountOn(_piece, to - from) < 2)
            throw new CannotBuildException(
                new InputError(
                    $"The {tails.Name} is too narrow for two tails: {LengthFormat.For(_piece.Scope.Unit).WriteWithUnit(to - from)} from front to back.",
                    _plan.Corners!.Place,
                    "a deeper carcase, a smaller `dovetail pitch` in the shop file, or a box joint"
                )
            );
    }

    private bool IsMitred(Direction end) => At(end) is CornerJoint.Mitre or CornerJoint.SplinedMitre;

    private CornerJoint At(Direction end) => _plan.Corners?.At(end) ?? CornerJoint.AsPanels;

    /// <summary>The shop's lap, but no more than a third of the side, to a sixteenth or a whole millimetre.</summary>
    private Figure Lap()
    {
        var step =
            _piece.Scope.Unit == LengthUnit.Inch
                ? Measure.Length.FromInches(0, 1, 16)
                : Measure.Length.FromMillimetres(1);
        var third = (_thickness / 3).FloorTo(step).As("a third of the side");
        return Figure.Min(_piece.Shop.Length(JointRules.CornerLap, "lap"), third).As("lap");
    }
}
