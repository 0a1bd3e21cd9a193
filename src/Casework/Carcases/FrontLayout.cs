using Dryfit.Casework.Building;
using Dryfit.Casework.Drawers;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Lights;
using Dryfit.Casework.Shelving;
using Dryfit.Casework.Shelving.Racks;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// Divides the front into openings: mullions and rails of a face frame or partitions of a frameless carcase between
/// them, partitions and dividing shelves behind, and at the end of each branch what fills the opening.
/// </summary>
internal sealed class FrontLayout(PieceBuilder piece, CarcasePlan plan, Box box, AsMeasured measured)
{
    private readonly FillingNames _names = new();
    private readonly BayDividers _dividers = new(piece, plan, box);
    private FrameMembers? _frame;
    private PartDraft? _blind;

    public void Lay(Region front)
    {
        _names.Count(front, plan.Shelves is not null);
        _blind = plan.Blind is null ? null : BlindPanel.Make(piece, plan, plan.Blind, box);
        Divide(front, plan.Face is null ? WholeInside() : FramedCell(plan.Face));
    }

    /// <summary>The whole inside of the box, with fronts that lap over its edges.</summary>
    private Cell WholeInside()
    {
        var edge = piece.Shop.Length(GapRules.OverlayGap, "edge gap");
        var (left, right) = (plan.SideThickness(Direction.Left), plan.SideThickness(Direction.Right));
        var reach = (plan.Body.Thickness - edge).As("overlay");
        // Under a top the fronts keep the gap of a stack from it.
        var above =
            plan.Top is null && !plan.IsCovered
                ? reach
                : (plan.Body.Thickness - piece.Shop.Length(GapRules.StackGap, "gap under the top")).As("overlay");
        var whole = new Cell
        {
            Width = box.InsideWidth,
            Height = box.InsideHeight,
            X = box.Inside.Min.X,
            Z = box.Inside.Min.Z,
            InsetLeft = null,
            Left = box.Left,
            Right = box.Right,
            Below = box.Bottom,
            Above = box.Closing[0],
            ReachLeft = (left - edge).As("overlay"),
            ReachRight = (right - edge).As("overlay"),
            ReachBelow = reach,
            ReachAbove = above,
            InsideLeft = box.Left,
            InsideRight = box.Right,
            Floor = box.Bottom,
            Ceiling = box.Closing,
            InsideWidth = box.InsideWidth,
            InsideHeight = box.InsideHeight,
            Inside = box.Inside,
            Bay = "",
            Shelves = plan.Shelves,
        };
        return plan.Blind is { } blind && _blind is { } panel
            ? BlindPanel.Beside(whole, blind, panel, plan.SideThickness(blind.End))
            : whole;
    }

    private Cell FramedCell(FacePlan face)
    {
        var group = piece.Group("face frame", GroupKind.FaceFrame, plan.Group, plan.Group.Source);
        _frame = new FrameMembers(piece, plan, face, group);
        var envelope = plan.Envelope;
        // Before a blind end the frame stops, with its stile on the edge of the panel.
        var (from, to) = (envelope.Min.X, envelope.Max.X);
        if (plan.Blind is { End: Direction.Left })
            from = _blind!.Reckoned.Max.X - face.Stile.Length;
        else if (plan.Blind is not null)
            to = _blind!.Reckoned.Min.X + face.Stile.Length;
        var left = _frame.Stile("left stile", from, box.BaseZ, box.FrontHeight);
        var right = _frame.Stile("right stile", to - face.Stile.Length, box.BaseZ, box.FrontHeight);
        var width = (
            plan.Blind is null ? plan.Width - face.Stile - face.Stile : plan.Width - plan.Blind.Width - face.Stile
        ).As("width between stiles");
        var height = (box.FrontHeight - face.Rail - face.Rail).As("height between rails");
        var bottom = _frame.Rail("bottom rail", left, right, width, box.BaseZ);
        var top = _frame.Rail("top rail", left, right, width, box.TopZ - face.Rail.Length);
        piece.Join(JointKind.Butt, plan.Blind is { End: Direction.Left } ? _blind! : box.Left, left, Direction.Back);
        piece.Join(JointKind.Butt, plan.Blind is { End: Direction.Right } ? _blind! : box.Right, right, Direction.Back);
        piece.Join(JointKind.Butt, box.Bottom, bottom, Direction.Back);
        piece.Join(JointKind.Butt, box.Closing[0], top, Direction.Back);
        var reach = piece.Shop.Length(GapRules.FrameOverlay, "overlay");
        return WholeInside() with
        {
            Width = width,
            Height = height,
            X = left.Reckoned.Max.X,
            Z = bottom.Reckoned.Max.Z,
            InsetLeft = plan.Blind is { End: Direction.Left } blind
                ? blind.Width - plan.SideThickness(Direction.Left)
                : face.Stile - plan.SideThickness(Direction.Left),
            Left = left,
            Right = right,
            Below = bottom,
            Above = top,
            ReachLeft = reach,
            ReachRight = reach,
            ReachBelow = reach,
            ReachAbove = reach,
        };
    }

    private IReadOnlyList<Front> Divide(Region region, Cell cell)
    {
        if (region.Shelves is not null)
            cell = cell with { Shelves = region.Shelves };
        if (region.Columns.Count > 0)
            return Columns(region, cell);
        return region.Rows.Count > 0 ? Rows(region, cell) : Fill(region, cell);
    }

    private List<Front> Columns(Region region, Cell cell)
    {
        var count = region.Columns.Count;
        var divider = plan.Face?.Mullion ?? plan.Body.Thickness;
        var widths = Sharing.Of(piece, cell.Width, count > 1 ? divider * (count - 1) : null, region.Columns, "width");
        var fronts = new List<Front>();
        var bays = BayNames.For(count, cell.Bay);
        var spans = new BaySpans(piece, plan.Group, Axis.X, region.Columns, widths);
        var rest = cell;
        for (var n = 0; n < count; n++)
        {
            var last = n == count - 1;
            var column = rest with { Width = widths[n], Bay = bays[n] };
            if (!last)
            {
                var dividerX = rest.X + widths[n].Length;
                var (upright, mullion) = Upright(cell, n + 1, dividerX, divider);
                var reach = mullion is null
                    ? ((divider - piece.Shop.Length(GapRules.StackGap, "gap")) / 2).As("overlay")
                    : rest.ReachLeft;
                var inset = mullion is null ? null : (divider - plan.Body.Thickness) / 2;
                var bay = Plus(Plus(widths[n], rest.InsetLeft), inset).As($"{bays[n]} width");
                var (before, after) = BayDividers.Split(rest, upright, bay, plan.Body.Thickness);
                column = before with
                {
                    Width = widths[n],
                    Bay = bays[n],
                    Right = mullion ?? upright,
                    ReachRight = reach,
                };
                rest = after with
                {
                    X = dividerX + divider.Length,
                    InsetLeft = inset,
                    Left = mullion ?? upright,
                    ReachLeft = reach,
                };
            }
            var openings = piece.Openings.Count;
            fronts.AddRange(Divide(region.Columns[n], column));
            spans.Add(n, bays[n], column.Left, column.Right, openings);
        }
        spans.Tell(region.Place);
        return fronts;
    }

    /// <summary>The partition behind a division and, with a face frame, the mullion before it.</summary>
    private (PartDraft Partition, PartDraft? Mullion) Upright(Cell cell, int n, Length x, Figure divider)
    {
        var mullion =
            _frame is null || cell.Below is null || cell.Above is null
                ? null
                : _frame.Mullion($"{Prefix(cell)}mullion {n}", cell.Below, cell.Above, cell.Height, x);
        var partition = _dividers.Partition(
            $"{Prefix(cell)}partition {n}",
            cell,
            x + ((divider.Length - plan.Body.Thickness.Length) / 2)
        );
        if (mullion is not null)
            piece.Join(JointKind.Butt, partition, mullion, Direction.Back);
        return (partition, mullion);
    }

    private List<Front> Rows(Region region, Cell cell)
    {
        var rows = region.Rows;
        // A dividing shelf stands between rows where one of the two is divided again or open to the inside.
        bool NeedsShelf(int upper) => !IsPlain(rows[upper]) || !IsPlain(rows[upper + 1]);
        Figure? taken = null;
        for (var n = 0; n + 1 < rows.Count; n++)
        {
            var divider = plan.Face?.Rail ?? (NeedsShelf(n) ? plan.Body.Thickness : null);
            if (divider is not null)
                taken = taken is null ? divider : taken + divider;
        }
        var heights = Sharing.Of(piece, cell.Height, taken, rows, "height");
        var bays = RowNames.For(rows, cell.Shelves is not null, cell.Bay);
        var spans = new BaySpans(piece, plan.Group, Axis.Z, rows, heights);
        var fronts = new List<Front>();
        var rest = cell;
        IReadOnlyList<Front> above = [];
        for (var n = 0; n < rows.Count; n++)
        {
            var last = n == rows.Count - 1;
            var row = rest with { Height = heights[n], Z = cell.Z };
            if (!last)
            {
                var rowZ = rest.Z + rest.Height.Length - heights[n].Length;
                (row, rest) = Split(rest, n, rowZ, heights[n], NeedsShelf(n));
            }
            var openings = piece.Openings.Count;
            var filled = Divide(rows[n], row with { Bay = bays[n] });
            spans.Add(n, $"row {n + 1}", row.Below, row.Above, openings);
            if (n > 0 && row.Above is null)
                Stack(above, filled);
            above = filled;
            fronts.AddRange(filled);
        }
        spans.Tell(region.Place);
        return fronts;
    }

    /// <summary>Divides a cell at the lower edge of its upper row.</summary>
    private (Cell Row, Cell Below) Split(Cell cell, int n, Length rowZ, Figure height, bool needsShelf)
    {
        var gap = piece.Shop.Length(GapRules.StackGap, "gap");
        var shelfThickness = plan.Body.Thickness;
        if (_frame is not null)
        {
            var face = plan.Face!;
            var rail = _frame.Rail(
                $"{Prefix(cell)}rail {n + 1}",
                cell.Left,
                cell.Right,
                cell.Width,
                rowZ - face.Rail.Length
            );
            var row = cell with { Height = height, Z = rowZ, Below = rail };
            var rest = cell with { Height = (cell.Height - height - face.Rail).As("height left"), Above = rail };
            if (!needsShelf)
                return BayDividers.SplitOpen(row, rest, face.Rail);
            // Behind the rail, flush with its upper edge.
            var shelf = _dividers.Shelf($"{Prefix(cell)}divider {n + 1}", cell, rowZ - shelfThickness.Length);
            piece.Join(JointKind.Butt, shelf, rail, Direction.Back);
            var below = (rest.Height + face.Rail - shelfThickness).As("height below");
            return BayDividers.SplitFlat(row, rest, shelf, below, shelfThickness);
        }
        if (needsShelf)
        {
            var shelf = _dividers.Shelf($"{Prefix(cell)}divider {n + 1}", cell, rowZ - shelfThickness.Length);
            var half = ((shelfThickness - gap) / 2).As("overlay");
            var below = (cell.Height - height - shelfThickness).As("height left");
            return BayDividers.SplitFlat(
                cell with
                {
                    Height = height,
                    Z = rowZ,
                    Below = shelf,
                    ReachBelow = half,
                },
                cell with
                {
                    Height = below,
                    Above = shelf,
                    ReachAbove = half,
                },
                shelf,
                below,
                shelfThickness
            );
        }
        var halfGap = (gap / 2).As("half the gap");
        return BayDividers.SplitOpen(
            cell with
            {
                Height = height,
                Z = rowZ,
                Below = null,
                ReachBelow = halfGap,
            },
            cell with
            {
                Height = (cell.Height - height).As("height left"),
                Above = null,
                ReachAbove = halfGap,
            },
            between: null
        );
    }

    private static Figure Plus(Figure figure, Figure? more) => more is null ? figure : figure + more;

    /// <summary>Whether a row needs no board below or above it: rails of a face frame do for what wants one in front.</summary>
    private bool IsPlain(Region region) =>
        region.IsLeaf
        && region.Filling != Filling.Open
        && (
            plan.Face is not null
            || region.Filling != Filling.Doors
            || region.Said is not { } said
            || !DoorsWord.WantsBoards(said)
        );

    private static string Prefix(Cell cell) => cell.Bay.Length == 0 ? "" : $"{cell.Bay} ";

    private IReadOnlyList<Front> Fill(Region region, Cell cell)
    {
        var site = Site(region, cell);
        if (region.Filling is not (Filling.Drawer or Filling.FalseFront))
            FurnishBehind(region, cell, site);
        var before = piece.Fronts.Count;
        switch (region.Filling)
        {
            case Filling.Doors:
                DoorsWord.Build(piece, site, region.Said!, piece.Scope);
                break;
            case Filling.Drawer
                when _blind is not null && (cell.Left == _blind || cell.Right == _blind || _frame is not null):
                throw BlindPanel.NoDrawer(plan.Blind!);
            case Filling.Drawer when region.PullOuts is { } trays:
                PullOutFront.Build(piece, site, trays);
                break;
            case Filling.Drawer:
                DrawerWord.Build(piece, site, region.Said, piece.Scope, _names.NextDrawer(cell.Bay));
                break;
            case Filling.FalseFront:
                FalseFront.Build(piece, site, region.Said, piece.Scope);
                break;
        }
        return [.. piece.Fronts.Skip(before)];
    }

    /// <summary>Shelves, racks, rails and lights behind an opening.</summary>
    private void FurnishBehind(Region region, Cell cell, FrontSite site)
    {
        var doors = BlindPanel.Before(
            _blind,
            region.Filling == Filling.Doors ? DoorsWord.ReachIn(piece, site, region.Said!, piece.Scope) : null
        );
        if (region.Rack is { FillsTheBay: true, Place: var place } && region.Shelves is not null)
            throw new CannotBuildException(
                new InputError("A rack fills this bay, so that no shelves go in.", place, "the rack or the shelves")
            );
        IReadOnlyList<PartDraft> fixedShelves = [];
        if (region.PullOuts is { } trays)
        {
            if (region.Shelves is not null || region.Rack is not null)
                throw new CannotBuildException(
                    new InputError(
                        "Pull-outs take the place of shelves and racks.",
                        trays.Place,
                        "the one or the other"
                    )
                );
            new PullOuts(piece, site, trays, region.Filling == Filling.Doors).Make(
                cell.Inside,
                cell.InsideHeight,
                doors
            );
        }
        else if (cell.Shelves is not null && region.Rack is not { FillsTheBay: true })
            fixedShelves = new ShelfMaker(piece, plan).Make(cell, cell.Shelves, box.InsideDepth, doors);
        if (region.Rack is not null)
            RackMaker.Make(piece, plan, cell, region.Rack, box.InsideDepth, doors);
        if (region.ClothesRail is not null)
            ClothesRail.Make(piece, cell, region.ClothesRail);
        if (region.Lights is not null)
            new LightMaker(piece, plan, box, cell, region.Lights).Make(fixedShelves);
    }

    private FrontSite Site(Region region, Cell cell)
    {
        var name = $"{Prefix(cell)}opening{_names.NextOpening(cell.Bay)}";
        var full = plan.Group.Full(name);
        var found = measured.Opening(full, cell.Width, cell.Height);
        var (width, height) = (found?.Width ?? cell.Width, found?.Height ?? cell.Height);
        // What was measured counts from the lower left corner.
        var clear = new Extent(
            new(cell.X, plan.Envelope.Min.Y, cell.Z),
            new(cell.X + width.Length, cell.Inside.Max.Y, cell.Z + height.Length)
        );
        var opening = new Opening(
            piece.Unique($"{plan.Group.Id}/{Slug.Of(name)}"),
            full,
            clear,
            new OpeningBounds(
                [cell.Left.Edge(Direction.Front).Id],
                [cell.Right.Edge(Direction.Front).Id],
                Ids(cell.Below),
                Ids(cell.Above)
            ),
            found?.Sides,
            region.Place
        )
        {
            Sizes = [new("width", width), new("height", height), new("depth", box.InsideDepth)],
        };
        piece.Add(opening);
        var open = new List<Direction>();
        if (cell.Below is null)
            open.Add(Direction.Down);
        if (cell.Above is null)
            open.Add(Direction.Up);
        return new FrontSite
        {
            Carcase = plan.Group,
            Prefix = _names.Prefix(region.Filling, cell.Bay),
            Opening = opening,
            Width = width,
            Height = height,
            UsualHang = plan.Face is null ? Hang.Overlay : Hang.Inset,
            Reach = new SideFigures(cell.ReachLeft, cell.ReachRight, cell.ReachBelow, cell.ReachAbove),
            OpenSides = open,
            FaceY = plan.Envelope.Min.Y,
            InsideFrontY = box.Inside.Min.Y,
            InsideBackY = box.Inside.Max.Y,
            InsideDepth = box.InsideDepth,
            InsideLeft = cell.InsideLeft,
            InsideRight = cell.InsideRight,
            HingeLeft = cell.Left,
            HingeRight = cell.Right,
            Below = cell.Below,
            Above = cell.Above,
            Floor = cell.Floor,
            Ceiling = cell.Ceiling.MinBy(part => part.Reckoned.Min.Z),
            Hangs = plan.Hangs is not null,
            MiddleX = (plan.Envelope.Min.X + plan.Envelope.Max.X) / 2,
            Material = plan.Fronts,
        };
    }

    private static IReadOnlyList<string> Ids(PartDraft? part) => part is null ? [] : [part.Id];

    /// <summary>Makes the fronts of two rows neighbours where only a gap divides them.</summary>
    private void Stack(IReadOnlyList<Front> upper, IReadOnlyList<Front> lower)
    {
        var gap = piece.Shop.Length(GapRules.StackGap).Length;
        foreach (var above in upper)
        {
            foreach (var below in lower)
            {
                piece.MakeNeighbours(above.Group, Direction.Down, below.Group, gap);
            }
        }
    }
}
