using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Frames;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// Makes the frame of a door: stiles over the full height, rails between them with stub tenons in the stiles' grooves. It
/// is put together from the members as they were cut: the longer rail sets the width, shoulder to shoulder, and a
/// shorter one leaves its joint open on the side away from the hinges.
/// </summary>
internal static class FrameMaker
{
    private static readonly Lie Upright = Lie.Of(Direction.Up, Direction.Front);
    private static readonly Lie Level = Lie.Of(Direction.Right, Direction.Front);

    public static DoorFrame Make(PieceBuilder piece, Leaf leaf, FrameGroove groove)
    {
        var plan = leaf.Plan;
        var depth = groove.Depth;
        var insideWidth = (leaf.Width - leaf.LeftStile - leaf.RightStile).As("inside width");
        var insideHeight = (leaf.Height - plan.TopRail - plan.BottomRail).As("inside height");
        Refuse(leaf, groove, insideWidth, insideHeight);
        if (plan.IsMitred)
            MitredFrame.Refuse(leaf);
        var (reachLeft, reachRight) = (Reach(leaf.LeftStile), Reach(leaf.RightStile));
        var heights = RowHeights.Of(
            leaf.Group.Name,
            leaf.Height,
            plan.TopRail,
            plan.BottomRail,
            plan.Division.Rails,
            insideHeight
        );
        var middle = plan.Division.Rails;

        var arch = plan.Arch;
        if (heights[^1].Length <= arch?.Rise.Length)
            throw NoRoom.Of(
                $"The arch of the {leaf.Group.Name} rises by all the height there is below it: {NoRoom.Show(heights[^1].Length)}.",
                leaf.Source,
                "a smaller rise"
            );
        // Said as wide as it is in the middle; sawn out of a board that is wider by the rise.
        var topWidth = arch is null ? plan.TopRail : (plan.TopRail + arch.Rise).As("top rail at its shoulders");

        var height = leaf.Height.As("stile length");
        var across = (
            plan.IsThrough ? leaf.Width : leaf.Width - leaf.LeftStile - leaf.RightStile + reachLeft + reachRight
        ).As("rail length");
        // Between mitred corners middle rails keep their stub tenons.
        var (stubLeft, stubRight) = plan.IsMitred ? (depth, depth) : (reachLeft, reachRight);
        var acrossMiddle = plan.IsMitred
            ? (leaf.Width - leaf.LeftStile - leaf.RightStile + depth + depth).As("rail length")
            : across;
        var left = SizesOf("left stile", Role.DoorStile, height, leaf.LeftStile);
        var right = SizesOf("right stile", Role.DoorStile, height, leaf.RightStile);
        var top = SizesOf("top rail", Role.DoorRail, across, topWidth);
        var bottom = SizesOf("bottom rail", Role.DoorRail, across, plan.BottomRail);

        var middles = heights
            .SkipLast(1)
            .Select((_, n) => heights.Count == 2 ? "middle rail" : $"middle rail {n + 1}")
            .Select(name => (Name: name, Sizes: SizesOf(name, Role.DoorRail, acrossMiddle, middle!.Width)))
            .ToList();

        var between = Length.Max(
            Length.Max(top.Length.Length, bottom.Length.Length) - (reachLeft.Length + reachRight.Length),
            middles
                .Select(m => m.Sizes.Length.Length - (stubLeft.Length + stubRight.Length))
                .DefaultIfEmpty(Length.Zero)
                .Max()
        );
        var x = leaf.LeftOf(left.Width.Length + between + right.Width.Length);
        var innerLeft = x + left.Width.Length;
        var innerRight = innerLeft + between;
        var topZ = leaf.BottomZ + (leaf.BuiltFrom == Direction.Left ? left : right).Length.Length;

        if (between <= Length.Zero || topZ - top.Width.Length <= leaf.BottomZ + bottom.Width.Length)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} cannot be put together as its members were cut: nothing is left inside.",
                top.Place ?? bottom.Place ?? left.Place ?? right.Place ?? leaf.Source,
                "members as cut that leave room for the panel"
            );

        var leftStile = Stile("left stile", leaf.LeftStile, left, x);
        var rightStile = Stile("right stile", leaf.RightStile, right, innerRight);
        var topRail = Rail("top rail", topWidth, top, topZ - top.Width.Length);
        var bottomRail = Rail("bottom rail", plan.BottomRail, bottom, leaf.BottomZ);
        var middleRails = new List<PartDraft>();
        var z = leaf.BottomZ + plan.BottomRail.Length;
        foreach (var (name, sizes) in middles)
        {
            z += heights[middleRails.Count].Length;
            middleRails.Add(Rail(name, middle!.Width, sizes, z, isMiddle: true));
            z += middle.Width.Length;
        }

        Groove(leftStile, Direction.Right);
        Groove(rightStile, Direction.Left);
        if (arch is null)
            Groove(topRail, Direction.Down);
        else
            arch.Shape(topRail, groove, innerLeft, innerRight, isSquare: plan.Kind == DoorKind.Glazed);
        Groove(bottomRail, Direction.Up);
        foreach (var rail in middleRails)
        {
            Groove(rail, Direction.Down);
            Groove(rail, Direction.Up);
        }
        foreach (var rail in (IEnumerable<PartDraft>)[topRail, bottomRail, .. middleRails])
        {
            Direction? outer =
                rail == topRail ? Direction.Up
                : rail == bottomRail ? Direction.Down
                : null;
            if (plan.IsMitred && outer is { } end)
            {
                MitredFrame.Join(piece, leaf, leftStile, rail, end, Direction.Left, groove);
                MitredFrame.Join(piece, leaf, rightStile, rail, end, Direction.Right, groove);
                continue;
            }
            Tenon(rail, leftStile, Direction.Left, stubLeft, outer);
            Tenon(rail, rightStile, Direction.Right, stubRight, outer);
            rail.ShoulderLength = (rail.Length - stubLeft - stubRight).As("shoulder to shoulder");
        }
        return new DoorFrame
        {
            Leaf = leaf,
            Left = leftStile,
            Right = rightStile,
            Top = topRail,
            Bottom = bottomRail,
            Rows = Rows(),
            Groove = groove,
        };

        IReadOnlyList<FrameField> Rows()
        {
            List<PartDraft> levels = [bottomRail, .. middleRails, topRail];
            return
            [
                .. heights
                    .Select(
                        (height, n) =>
                            new FrameField
                            {
                                Name = FieldNames.Row(heights.Count - 1 - n, heights.Count),
                                Left = new(leftStile, depth),
                                Right = new(rightStile, depth),
                                Below = new(levels[n], depth),
                                Above = new(levels[n + 1], depth) { Rise = n + 1 == heights.Count ? arch?.Rise : null },
                                Width = insideWidth,
                                Height = height,
                            }
                    )
                    .Reverse(),
            ];
        }

        CutSizes SizesOf(string name, Role role, Figure length, Figure width) =>
            piece.SizesAsCut(leaf.Group, name, role, length, width, plan.Material.Thickness);

        PartDraft Stile(string name, Figure width, CutSizes sizes, Length atX) =>
            Member(name, Role.DoorStile, Upright, height, width, new(atX, Face(sizes), leaf.BottomZ));

        PartDraft Rail(string name, Figure width, CutSizes sizes, Length atZ, bool isMiddle = false)
        {
            var (toLeft, toRight) = isMiddle ? (stubLeft, stubRight) : (reachLeft, reachRight);
            var atX =
                leaf.BuiltFrom == Direction.Left
                    ? innerLeft - toLeft.Length
                    : innerRight + toRight.Length - sizes.Length.Length;
            return Member(
                name,
                Role.DoorRail,
                Level,
                isMiddle ? acrossMiddle : across,
                width,
                new(atX, Face(sizes), atZ)
            );
        }

        Length Face(CutSizes sizes) => leaf.FaceY(plan.Material.Thickness, sizes.Thickness);

        PartDraft Member(string name, Role role, Lie lie, Figure length, Figure width, Point at) =>
            piece.Board(leaf.Group, name, role, plan.Material, lie, length, width, at, leaf.Source);

        void Groove(PartDraft member, Direction edge) =>
            EdgeGroove.Cut(member, edge, depth.Length, groove.Lip.Length, groove.Width.Length);

        // Stopped tenons are alike at both ends; through ones are as long as each stile is wide.
        Figure Reach(Figure stile) =>
            plan.IsThrough || plan.IsMitred ? stile
            : plan.Tenoned ? GroovedTenon.LengthOf(piece, Narrower(leaf), groove)
            : depth;

        void Tenon(PartDraft rail, PartDraft stile, Direction into, Figure reach, Direction? outer)
        {
            var from = rail.Extent.Min.Y + groove.Lip.Length;
            if (plan.Tenoned)
                GroovedTenon.At(piece, stile, rail, into, reach.Length, outer, groove);
            else
                StubTenon.At(piece, stile, rail, into, depth.Length, Axis.Y, from, from + groove.Width.Length);
        }
    }

    private static Figure Narrower(Leaf leaf) =>
        leaf.LeftStile.Length <= leaf.RightStile.Length ? leaf.LeftStile : leaf.RightStile;

    private static void Refuse(Leaf leaf, FrameGroove groove, Figure insideWidth, Figure insideHeight)
    {
        var plan = leaf.Plan;
        if (insideWidth.Length <= Length.Zero)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} is {NoRoom.Show(leaf.Width.Length)} wide: its two stiles of {NoRoom.Show(plan.Stile.Length)} leave nothing between them.",
                leaf.Source,
                "narrower stiles, or a wider opening"
            );
        if (insideHeight.Length <= Length.Zero)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} is {NoRoom.Show(leaf.Height.Length)} high: its rails leave nothing between them.",
                leaf.Source,
                "narrower rails, or a higher opening"
            );
        if (groove.Lip.Length + groove.Width.Length >= plan.Material.Thickness.Length)
            throw NoRoom.Of(
                $"The {leaf.Group.Name} is {NoRoom.Show(plan.Material.Thickness.Length)} thick: its lip and groove take all of that.",
                leaf.Source,
                "a thicker material for stiles and rails"
            );
        if (plan.Division.Rails is { } rails && groove.Depth.Length * 2 >= rails.Width.Length)
            throw NoRoom.Of(
                $"A middle rail of the {leaf.Group.Name} is {NoRoom.Show(rails.Width.Length)} wide: its two grooves of {NoRoom.Show(groove.Depth.Length)} would cut it through.",
                rails.Place,
                "a middle rail wider than its two grooves are deep"
            );
        var narrowest = Length.Min(plan.Stile.Length, Length.Min(plan.TopRail.Length, plan.BottomRail.Length));
        if (groove.Depth.Length >= narrowest)
            throw NoRoom.Of(
                $"A member of the {leaf.Group.Name} is {NoRoom.Show(narrowest)} wide: its groove of {NoRoom.Show(groove.Depth.Length)} would cut it away.",
                leaf.Source,
                "stiles and rails wider than the groove is deep"
            );
    }
}
