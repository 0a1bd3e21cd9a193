using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// The plan of a canted end that is closed: a panel along the cant, its ends sawn flush with the front and with the end of
/// the carcase, and a short end behind it whose front edge is bevelled to lie on the panel's back. The boards between end
/// at both.
/// </summary>
internal sealed class CantedShape
{
    private readonly Extent _outside;
    private readonly CantedPlan _canted;
    private readonly Measure.Length _thickness;

    public CantedShape(Extent outside, CantedPlan canted, Figure thickness)
    {
        (_outside, _canted, _thickness) = (outside, canted, thickness.Length);
        var (across, deep) = (canted.Across, canted.Deep);
        Length = RootOf(across, deep).As("along the cant");
        FrontBevel = Fine(thickness * (across.Length / deep.Length)).As("bevel at the front");
        EndBevel = Fine(thickness * (deep.Length / across.Length)).As("bevel at the end");
        BehindAcross = across + Fine(thickness * (Length.Length / deep.Length)).As("panel along the front");
        BehindDeep = deep + Fine(thickness * (Length.Length / across.Length)).As("panel along the end");
    }

    /// <summary>The outside of the panel, from the front to the end.</summary>
    public Figure Length { get; }

    /// <summary>How much shorter the outside of the panel is at the front than its inside.</summary>
    public Figure FrontBevel { get; }

    public Figure EndBevel { get; }

    /// <summary>What the inside of the panel cuts off the front.</summary>
    public Figure BehindAcross { get; }

    /// <summary>What it cuts off the end.</summary>
    public Figure BehindDeep { get; }

    public Direction Free => _canted.AtRight ? Direction.Right : Direction.Left;

    private Direction Fixed => Free.Opposite();

    /// <summary>What a board loses that ends so far inside of the outside of the end.</summary>
    public (Measure.Length Across, Measure.Length Deep) CutOff(Measure.Length inside) =>
        (
            BehindAcross.Length - inside,
            (BehindDeep.Length * ((BehindAcross.Length - inside) / BehindAcross.Length)).RoundTo(Step)
        );

    /// <summary>Makes the panel and the short end.</summary>
    /// <param name="deep">From the front to the back.</param>
    public (PartDraft Panel, PartDraft End) Make(PieceBuilder piece, CarcasePlan plan, Figure deep)
    {
        var shown = (BehindDeep - EndBevel).As("before the end");
        var end = piece.Board(
            plan.Group,
            $"{Spoken.Of(Free)} side",
            Role.Side,
            plan.Body,
            Lie.Of(Direction.Up, Free),
            plan.Height.As("side length"),
            (deep - shown).As("side width"),
            _outside.Min with
            {
                X = _canted.AtRight ? _outside.Max.X - _thickness : _outside.Min.X,
                Y = _outside.Min.Y + shown.Length,
            }
        );
        EndMitre.Cut(end, Direction.Front, Fixed, EndBevel.Length);
        // The panel's own frame turns about the left end of its outside.
        var pivot = _canted.AtRight
            ? _outside.Min with
            {
                X = _outside.Max.X - _canted.Across.Length,
            }
            : _outside.Min with
            {
                Y = _outside.Min.Y + _canted.Deep.Length,
            };
        var group = piece.Group(
            "cant",
            GroupKind.Facing,
            plan.Group,
            plan.Group.Source,
            new PlanTurn(pivot, _canted.AtRight ? Degrees : -Degrees, plan.Group.Turn)
        );
        var (left, right) = _canted.AtRight ? (FrontBevel, EndBevel) : (EndBevel, FrontBevel);
        var panel = piece.Board(
            group,
            "panel",
            Role.CantPanel,
            plan.Body,
            Lie.Of(Direction.Up, Direction.Front),
            plan.Height.As("panel length"),
            (Length + left + right).As("panel width"),
            pivot.Moved(Direction.Left, left.Length)
        );
        EndMitre.Cut(panel, Direction.Left, Direction.Back, left.Length);
        EndMitre.Cut(panel, Direction.Right, Direction.Back, right.Length);
        Screws.Between(piece, end, panel, Direction.Back, 4, glued: true);
        return (panel, end);
    }

    /// <summary>The angle of the cant from the front: exact at 45, else to a billionth of a degree.</summary>
    private Rational Degrees =>
        _canted.Across.Length == _canted.Deep.Length
            ? 45
            : new Rational(
                (long)
                    Math.Round(
                        Math.Atan2(_canted.Deep.Length.ToMillimetres(), _canted.Across.Length.ToMillimetres())
                            * 180
                            / Math.PI
                            * 1e9
                    ),
                1_000_000_000
            );

    private static Measure.Length Step => Measure.Length.FromMillimetres(Roots.LengthStepMm);

    private static Figure Fine(Figure figure) => figure.RoundTo(Step);

    /// <summary>The long side of a right-angled triangle, rounded once where it has no exact value.</summary>
    private static Figure RootOf(Figure a, Figure b)
    {
        var area = Square(a) + Square(b);
        var (root, exact) = Roots.Of(area.Quantity.Magnitude, Roots.LengthStepMm);
        return new(new Quantity(root, 1), new RootReason(area, exact));

        static Figure Square(Figure side) =>
            new(new Quantity(side.Quantity.Magnitude * side.Quantity.Magnitude, 2), new ProductReason(side, side));
    }
}
