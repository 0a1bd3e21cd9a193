using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Sides;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// Makes the box: two sides, a bottom, a top panel or stretchers, and the back. Everything is reckoned from the
/// outside inwards, as a maker does it.
/// </summary>
internal sealed class BoxMaker(PieceBuilder piece, CarcasePlan plan)
{
    private readonly Figure _thickness = plan.Body.Thickness;
    private readonly Figure _left = plan.SideThickness(Direction.Left);
    private readonly Figure _right = plan.SideThickness(Direction.Right);
    private readonly BoxCorners _corners = new(piece, plan);

    public Box Make()
    {
        var envelope = plan.Envelope;
        var frame = plan.Face?.Material.Thickness;
        var frontY = envelope.Min.Y + (frame?.Length ?? Length.Zero);
        var sideWidth = Less(Less(plan.Depth, frame), PlantedBack()).As("side width");
        var baseLift = plan.Stand.Lift;
        var baseZ = envelope.Min.Z + (baseLift?.Length ?? Length.Zero);
        var sideLength = Less(Less(plan.Height, baseLift), plan.Top?.Material.Thickness).As("side length");
        var topZ = baseZ + sideLength.Length;

        var toe = plan.Stand as ToeSpacePlan;
        var raise = plan.Stand.Raise(plan.Face is not null);
        var leftPanel = Side("left side", Direction.Left, envelope.Min.X, GoesToFloor(Direction.Left));
        var rightPanel = Side(
            "right side",
            Direction.Right,
            envelope.Max.X - _right.Length,
            GoesToFloor(Direction.Right)
        );
        var (left, right) = (leftPanel.Panel, rightPanel.Panel);

        var insideWidth = (plan.Width - _left - _right).As("inside width");
        var frontBaseZ = baseZ + (raise?.Length ?? Length.Zero);
        var frontHeight = Less(sideLength, raise).As("front height");
        // With a face frame the bottom lies flush with the upper edge of the bottom rail.
        var floorUp = plan.Face?.Rail ?? _thickness;
        var bottomZ = frontBaseZ + floorUp.Length - _thickness.Length;
        var insideHeight = (frontHeight - floorUp - _thickness).As("inside height");
        RefuseNoInside(insideWidth, insideHeight);
        var flatWidth = (plan.Back?.Set == BackSet.Rabbeted ? sideWidth - plan.Back.Material.Thickness : sideWidth).As(
            "width to the back"
        );

        var floor = Flat("bottom", Role.Bottom, Direction.Down, WidthAt(Direction.Down), frontY, bottomZ);
        var bottom = floor.Panel;
        IReadOnlyList<BandedPanel> above;
        if (plan.ClosedBy == ClosedBy.Panel)
        {
            var panelZ = topZ - _thickness.Length;
            above = [Flat("top panel", Role.Top, Direction.Up, WidthAt(Direction.Up), frontY, panelZ)];
        }
        else
        {
            var stretcher = piece.Shop.Length(CarcaseRules.StretcherWidth, "stretcher width");
            var rearEdge = frontY + InsideDepth().Length;
            above =
            [
                Flat("front stretcher", Role.Stretcher, Direction.Up, stretcher, frontY, topZ - _thickness.Length),
                Flat(
                    "rear stretcher",
                    Role.Stretcher,
                    Direction.Up,
                    stretcher,
                    rearEdge - stretcher.Length,
                    topZ - _thickness.Length,
                    seen: false
                ),
            ];
        }

        IReadOnlyList<PartDraft> closing = [.. above.Select(flat => flat.Panel)];

        foreach (var flat in (IEnumerable<BandedPanel>)[floor, .. above])
        {
            var end = flat == floor ? Direction.Down : Direction.Up;
            _corners.Join(leftPanel, flat, end, Direction.Left, InsideDepth());
            _corners.Join(rightPanel, flat, end, Direction.Right, InsideDepth());
        }
        if (toe is not null)
            ToeSpace(toe, left, right, bottom, frontY, baseZ, insideWidth);
        if (plan.Stand is LetInPlinthPlan plinth)
            LetInPlinth(plinth, left, right, bottom, frontY, baseZ, insideWidth);

        var insideDepth = InsideDepth();
        var inside = new Extent(
            new(left.Reckoned.Max.X, frontY, bottom.Reckoned.Max.Z),
            new(right.Reckoned.Min.X, frontY + insideDepth.Length, topZ - _thickness.Length)
        );
        var back = plan.Back is null
            ? null
            : new BackMaker(
                piece,
                plan,
                left,
                right,
                bottom,
                closing,
                _corners,
                insideWidth,
                insideHeight,
                sideLength,
                baseZ
            ).Make(plan.Back, inside, topZ);
        return new Box
        {
            Left = left,
            Right = right,
            Bottom = bottom,
            Closing = closing,
            Back = back,
            Inside = inside,
            InsideWidth = insideWidth,
            InsideHeight = insideHeight,
            InsideDepth = insideDepth,
            BaseZ = frontBaseZ,
            TopZ = topZ,
            FrontHeight = frontHeight,
        };

        Figure InsideDepth() =>
            plan.Back?.Set switch
            {
                BackSet.Rabbeted => flatWidth.As("inside depth"),
                BackSet.Grooved => (sideWidth - BackInset() - plan.Back.Material.Thickness).As("inside depth"),
                _ => sideWidth.As("inside depth"),
            };

        // At a corner joint side and flat panel are equally wide, and the back lies in both.
        Figure WidthAt(Direction end) => _corners.Has(end) ? sideWidth : flatWidth;

        // How far a side goes down below the bottom.
        Figure? UnderBottom(Figure? below)
        {
            var under = below ?? raise;
            if (plan.Face is null)
                return under;
            var up = plan.Face.Rail - _thickness;
            return under is null ? up : under + up;
        }

        BandedPanel Side(string name, Direction shows, Length x, bool toFloor)
        {
            var below = toFloor ? baseLift : null;
            var length = below is null ? sideLength : (sideLength + below).As("side length to the floor");
            var at = new Point(x, frontY, toFloor ? envelope.Min.Z : baseZ);
            if (plan.Sides is not { } sides || !sides.IsFramed(shows))
                return Panels.Make(
                    piece,
                    plan,
                    name,
                    Role.Side,
                    plan.Body,
                    Lie.Of(Direction.Up, shows),
                    length,
                    sideWidth,
                    at,
                    toe is null ? null : [(Direction.Down, toe.Height)]
                );
            var outside = new Extent(
                at,
                at + new Point(plan.SideThickness(shows).Length, sideWidth.Length, length.Length)
            );
            return new(SideMaker.Make(piece, plan, sides, shows, outside, length, sideWidth, UnderBottom(below)), []);
        }

        BandedPanel Flat(string name, Role role, Direction end, Figure width, Length y, Length z, bool seen = true)
        {
            var lie = Lie.Of(Direction.Right, Direction.Up);
            var length = _corners.Length(end, insideWidth).As($"{name} length");
            var at = new Point(envelope.Min.X + _left.Length - (_corners.LetIn(end)?.Length ?? Length.Zero), y, z);
            // An edge that nobody sees gets no edging.
            return seen
                ? Panels.Make(
                    piece,
                    plan,
                    name,
                    role,
                    plan.Body,
                    lie,
                    length,
                    width,
                    at,
                    letIn: _corners.EdgingStops(end)
                )
                : new(piece.Board(plan.Group, name, role, plan.Body, lie, length, width, at), []);
        }
    }

    /// <summary>How far a slid-in back stays from the rear edge: a carcase that hangs has its rails behind it.</summary>
    private Figure BackInset()
    {
        var inset = piece.Shop.Length(JointRules.BackGrooveInset, "back inset");
        return plan.Hangs is { } hang && hang.Material.Thickness.Length > inset.Length
            ? hang.Material.Thickness.As("room for the hanging rail")
            : inset;
    }

    private Figure? PlantedBack() => plan.Back?.Set == BackSet.Planted ? plan.Back.Material.Thickness : null;

    private static Figure Less(Figure figure, Figure? by) => by is null ? figure : figure - by;

    private bool GoesToFloor(Direction end) =>
        plan.Stand is LegsPlan legs && !(end == Direction.Left ? legs.AtLeft : legs.AtRight);

    private void RefuseNoInside(params ReadOnlySpan<Figure> sizes)
    {
        foreach (var size in sizes)
        {
            if (size.Length <= Length.Zero)
                throw new CannotBuildException(
                    new InputError(
                        $"The {plan.Group.Name} has no inside: its boards take all of its size.",
                        plan.Group.Source,
                        "a carcase larger than its boards and what it stands on"
                    )
                );
        }
    }

    /// <param name="depth">From the front edge of the sides to the toe board.</param>
    private void RefuseToe(Length depth, PartDraft side)
    {
        if (depth > Length.Zero && depth + _thickness.Length <= side.Reckoned.Depth)
            return;
        throw new CannotBuildException(
            new InputError(
                depth > Length.Zero
                    ? "The toe space is deeper than the carcase."
                    : "The toe space is no deeper than the face frame before it.",
                plan.Group.Source,
                "a toe depth that ends between the front and the back"
            )
        );
    }

    private void ToeSpace(
        ToeSpacePlan toe,
        PartDraft left,
        PartDraft right,
        PartDraft bottom,
        Length frontY,
        Length floorZ,
        Figure insideWidth
    )
    {
        var depth = toe.Depth.Length - (frontY - plan.Envelope.Min.Y);
        RefuseToe(depth, left);
        foreach (var side in (PartDraft[])[left, right])
        {
            side.CutAway(
                CutKind.Notch,
                side.Extent.With(Direction.Back, frontY + depth).With(Direction.Up, floorZ + toe.Height.Length)
            );
        }
        FootBoard("toe board", plan.Body, toe.Height, frontY + depth, left, right, bottom, floorZ, insideWidth);
    }

    private void LetInPlinth(
        LetInPlinthPlan plinth,
        PartDraft left,
        PartDraft right,
        PartDraft bottom,
        Length frontY,
        Length floorZ,
        Figure insideWidth
    )
    {
        var y = plinth.Setback is { } setback ? plan.Envelope.Min.Y + setback.Length : frontY;
        if (y < frontY || y + plinth.Material.Thickness.Length > left.Reckoned.Max.Y)
            throw new CannotBuildException(
                new InputError(
                    "The plinth is not let in between the sides: it would stand before or behind them.",
                    plinth.Place,
                    "a setback of at least the face frame's thickness, and less than the depth"
                )
            );
        var board = FootBoard("plinth", plinth.Material, plinth.Height, y, left, right, bottom, floorZ, insideWidth);
        plinth.Arch?.Cut(board);
    }

    /// <summary>A board between the sides, from the floor up to the bottom.</summary>
    private PartDraft FootBoard(
        string name,
        Material material,
        Figure height,
        Length y,
        PartDraft left,
        PartDraft right,
        PartDraft bottom,
        Length floorZ,
        Figure insideWidth
    )
    {
        var board = piece.Board(
            plan.Group,
            name,
            Role.Plinth,
            material,
            Lie.Of(Direction.Right, Direction.Front),
            insideWidth,
            // Behind a face frame the bottom lies higher than the space before it, and the board goes up to it.
            plan.Face
                is null
                ? height
                : (height + plan.Face.Rail - _thickness).As($"{name} width"),
            new(left.Reckoned.Max.X, y, floorZ)
        );
        Screws.Between(piece, bottom, board, Direction.Up, 3);
        Screws.Between(piece, left, board, Direction.Left, 2);
        Screws.Between(piece, right, board, Direction.Right, 2);
        return board;
    }
}
