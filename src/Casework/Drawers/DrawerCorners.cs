using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Drawers;

/// <summary>The four corners of a drawer's box: what they ask of the sizes of its walls, and their cuts.</summary>
internal sealed class DrawerCorners
{
    private const int ScrewsEach = 3;

    private readonly PieceBuilder _piece;
    private readonly DrawerPlan _plan;
    private readonly Figure _side;

    public DrawerCorners(PieceBuilder piece, DrawerPlan plan)
    {
        (_piece, _plan) = (piece, plan);
        _side = plan.Box.Thickness.As("side thickness");
        var zero = Figure.Given("nothing", Length.Zero, new TradeOrigin("common practice"));
        LetIn = plan.Joint switch
        {
            DrawerJoint.Rabbeted or DrawerJoint.Dadoed => piece.Shop.Length(
                DrawerRules.DrawerJointDepth,
                "joint depth"
            ),
            DrawerJoint.Screwed => zero,
            _ => _side,
        };
        Lap = plan.Joint == DrawerJoint.HalfBlind ? LapOf(piece, plan) : zero;
        BackIn = plan.Joint == DrawerJoint.Dadoed ? piece.Shop.Length(DrawerRules.BackIn) : null;
    }

    /// <summary>How far front and back reach into the sides.</summary>
    public Figure LetIn { get; }

    /// <summary>What is left of the front before the ends of the sides.</summary>
    public Figure Lap { get; }

    /// <summary>From the rear ends of the sides to the back; null where it ends flush with them.</summary>
    public Figure? BackIn { get; }

    /// <summary>Whether the sides are cut to a depth, and not right through.</summary>
    public bool IsLetIn => _plan.Joint is DrawerJoint.Rabbeted or DrawerJoint.Dadoed;

    /// <summary>Whether grooves for the bottom stop before the ends, where they would show.</summary>
    public bool StopsGrooves =>
        _plan.Joint is DrawerJoint.Dovetailed or DrawerJoint.HalfBlind or DrawerJoint.BoxJointed;

    /// <summary>What the cuts in the sides are called.</summary>
    public string Cuts => _plan.Joint == DrawerJoint.Dadoed ? "rabbets and dados" : "rabbets";

    /// <summary>Length of front and back.</summary>
    public Figure Across(Figure width) =>
        _plan.Joint switch
        {
            DrawerJoint.Rabbeted or DrawerJoint.Dadoed => width - _side - _side + LetIn + LetIn,
            DrawerJoint.Screwed => width - _side - _side,
            _ => width,
        };

    /// <summary>Length of the sides.</summary>
    public Figure Along(Figure length) =>
        _plan.Joint == DrawerJoint.HalfBlind ? (length - Lap).As("side length") : length;

    /// <summary>Joins the front to a side.</summary>
    /// <param name="into">Where the side lies, seen from the inside.</param>
    public void Front(PartDraft upright, PartDraft front, Direction into)
    {
        if (IsLetIn)
            Rabbet(upright, front, into, Direction.Front);
        else
            Corner(upright, front, into, Direction.Front);
    }

    /// <summary>Joins the back to a side.</summary>
    public void Back(PartDraft upright, PartDraft back, Direction into)
    {
        if (_plan.Joint == DrawerJoint.Rabbeted)
            Rabbet(upright, back, into, Direction.Back);
        else if (_plan.Joint == DrawerJoint.Dadoed)
            Dado(upright, back, into);
        else
            Corner(upright, back, into, Direction.Back);
    }

    private void Corner(PartDraft upright, PartDraft cross, Direction into, Direction end)
    {
        switch (_plan.Joint)
        {
            case DrawerJoint.Screwed:
                Screws.Between(_piece, upright, cross, into, ScrewsEach, glued: true);
                break;
            case DrawerJoint.BoxJointed:
                BoxJoint.Between(_piece, cross, upright, into.Opposite(), end);
                break;
            default:
                Dovetails.Between(_piece, cross, upright, into.Opposite(), end);
                var front = _plan.Face.Thickness.As("front thickness");
                upright.ShoulderLength = (
                    upright.Length
                    - (_plan.Joint == DrawerJoint.HalfBlind ? (front - Lap).As("tails at the front") : front)
                    - _side
                ).As("shoulder to shoulder");
                break;
        }
    }

    // By the thickness as reckoned: the saw was set before anyone measured the other board.
    private void Rabbet(PartDraft upright, PartDraft end, Direction into, Direction at)
    {
        var thickness = end.Reckoned.Size(Axis.Y);
        var inner = upright.Extent.Side(into.Opposite());
        var room = upright
            .Extent.With(into, inner + (LetIn.Length * into.Sign()))
            .With(at.Opposite(), upright.Extent.Side(at) - (thickness * at.Sign()));
        upright.CutAway(CutKind.Rabbet, room, _piece.NextJointId);
        _piece.Join(JointKind.Rabbet, upright, end, into, LetIn.Length);
    }

    private void Dado(PartDraft upright, PartDraft back, Direction into)
    {
        var inner = upright.Extent.Side(into.Opposite());
        var rear = upright.Reckoned.Max.Y - BackIn!.Length;
        var room = upright
            .Extent.With(into, inner + (LetIn.Length * into.Sign()))
            .With(Direction.Front, rear - back.Reckoned.Depth)
            .With(Direction.Back, rear);
        upright.CutAway(CutKind.Dado, room, _piece.NextJointId);
        _piece.Join(JointKind.Dado, upright, back, into, LetIn.Length);
    }

    /// <summary>The shop's lap, but no more than a third of the front, to a sixteenth or a whole millimetre.</summary>
    private static Figure LapOf(PieceBuilder piece, DrawerPlan plan)
    {
        var step = piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        var third = (plan.Face.Thickness / 3).FloorTo(step).As("a third of the front");
        return Figure.Min(piece.Shop.Length(DrawerRules.Lap, "lap"), third).As("lap");
    }
}
