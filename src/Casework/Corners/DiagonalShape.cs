using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Shaping;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>
/// The plan of a diagonal corner carcase. Distances run from its near end (the one beside the run) towards the corner of
/// the walls, and from its front; "the line" is its front, across the corner at 45 degrees.
/// </summary>
internal sealed class DiagonalShape(Extent outside, Figure depth, PlanTurn? within, DiagonalPlan diagonal)
{
    private readonly Extent _outside = outside;

    public DiagonalShape(CarcasePlan plan, DiagonalPlan diagonal)
        : this(plan.Envelope, plan.Depth, plan.Group.Turn, diagonal) { }

    /// <summary>How much of each wall the line cuts off.</summary>
    public Figure Cut { get; } = (depth - diagonal.Beside).As("corner cut off");

    /// <summary>The near end, as a direction of the carcase.</summary>
    public Direction Near => diagonal.WallAtRight ? Direction.Left : Direction.Right;

    public Direction Far => Near.Opposite();

    /// <summary>The whole front, from corner to corner.</summary>
    public Figure FrontWidth => Across(Cut).As("diagonal front");

    /// <summary>Where the line begins at its left end, seen from before it; the frame of the front turns about it.</summary>
    public Point Pivot =>
        diagonal.WallAtRight
            ? new(_outside.Min.X, _outside.Min.Y + Cut.Length, _outside.Min.Z)
            : new(_outside.Max.X - Cut.Length, _outside.Min.Y, _outside.Min.Z);

    /// <summary>The turn of the front.</summary>
    public PlanTurn Turn => new(Pivot, diagonal.WallAtRight ? -45 : 45, within);

    /// <summary>The long side of a square's half: a length times the root of 2, rounded once where it has no exact value.</summary>
    public static Figure Across(Figure leg)
    {
        var square = leg.Quantity.Magnitude * leg.Quantity.Magnitude * 2;
        var (root, exact) = Roots.Of(square, Roots.LengthStepMm);
        var area = new Figure(new Quantity(square, 2), new ProductReason(leg, leg * 2));
        return new(new Quantity(root, 1), new RootReason(area, exact));
    }

    /// <summary>A box told from the near end and from the front, in the frame of the carcase.</summary>
    public Extent Box((Length From, Length To) along, (Length From, Length To) back, (Length From, Length To) up)
    {
        var (from, to) = diagonal.WallAtRight
            ? (_outside.Min.X + along.From, _outside.Min.X + along.To)
            : (_outside.Max.X - along.To, _outside.Max.X - along.From);
        return new(new(from, _outside.Min.Y + back.From, up.From), new(to, _outside.Min.Y + back.To, up.To));
    }

    /// <summary>Takes the corner off a flat board along the line, or a line behind it.</summary>
    /// <param name="start">Where the board begins, alike from the near end and from the front.</param>
    /// <param name="line">Where the line stands on either wall: what it cuts off there.</param>
    public void CutCorner(PartDraft board, Length start, Length line)
    {
        var leg = line - (start * 2);
        Swept.Cut(
            board,
            CutKind.Mitre,
            Swept.Corner(board.Extent, Direction.Front, Near),
            Far,
            Direction.Back,
            [(Length.Zero, Length.Zero), (leg, Length.Zero), (Length.Zero, leg)],
            called: "corner cut off"
        );
    }
}
