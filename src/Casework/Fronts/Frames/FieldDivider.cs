using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>
/// Divides a field of a door: muntins between panels, grooved along both edges; or glazing bars, rabbeted from behind for
/// a pane on each side. Both have stub tenons in the grooves of what they meet; upright bars run through and level bars
/// stand between, let into the rabbets of the upright ones.
/// </summary>
internal sealed class FieldDivider(PieceBuilder piece, DoorFrame frame)
{
    /// <summary>Wood that must be left of a bar between its two rabbets: 3 mm, common practice.</summary>
    private static readonly Length ThinnestWeb = Length.FromMillimetres(3);

    private FrameGroove Groove => frame.Groove;

    /// <summary>Sets so many muntins evenly in a row of panels.</summary>
    public IReadOnlyList<FrameField> Muntins(FrameField row, Muntins muntins)
    {
        RefuseNarrow("muntin", muntins.Width, Groove.Depth);
        return Columns(row, muntins.Count + 1, muntins.Width, Groove.Depth, isBar: false);
    }

    /// <summary>Sets bars in a field of glass: columns first, then rows in each.</summary>
    public IReadOnlyList<FrameField> Bars(FrameField field, GlazingBars bars)
    {
        RefuseNarrow("bar", bars.Width, bars.Rabbet);
        return
        [
            .. Columns(field, bars.Columns, bars.Width, bars.Rabbet, isBar: true)
                .SelectMany(column => Rows(column, field.Name, bars)),
        ];
    }

    private List<FrameField> Columns(FrameField field, int count, Figure width, Figure depth, bool isBar)
    {
        var what = isBar ? "bar" : "muntin";
        var each = Each(field.Width, width, count, isBar ? "width of a light" : "width between muntins");
        var length = (field.Height + field.Below.Depth + field.Above.Depth).As($"{what} length");
        var columns = new List<FrameField>();
        var left = field.Left;
        var x = field.Inside.Min.X;
        for (var n = 0; n < count; n++)
        {
            var right = field.Right;
            if (n + 1 < count)
            {
                x += each.Length;
                var name = FieldNames.Joined(field.Name, isBar ? "upright bar" : "muntin");
                var upright = piece.Board(
                    frame.Leaf.Group,
                    count == 2 ? name : $"{name} {n + 1}",
                    Role.DoorMuntin,
                    frame.Leaf.Plan.Material,
                    Lie.Of(Direction.Up, Direction.Front),
                    length,
                    width,
                    new(x, frame.FaceY, field.Inside.Min.Z - field.Below.Depth.Length),
                    frame.Leaf.Source
                );
                Shape(upright, depth, isBar, Direction.Left, Direction.Right);
                Tenon(upright, field.Below, Direction.Down);
                Tenon(upright, field.Above, Direction.Up);
                upright.ShoulderLength = (upright.Length - field.Below.Depth - field.Above.Depth).As(
                    "shoulder to shoulder"
                );
                right = new FrameMember(upright, depth, isBar);
                x += width.Length;
            }
            columns.Add(
                field with
                {
                    Name = FieldNames.Joined(field.Name, FieldNames.Column(n, count)),
                    Left = left,
                    Right = right,
                    Width = each,
                }
            );
            left = right;
        }
        return columns;
    }

    private List<FrameField> Rows(FrameField column, string within, GlazingBars bars)
    {
        var each = Each(column.Height, bars.Width, bars.Rows, "height of a light");
        var length = (column.Width + column.Left.Depth + column.Right.Depth).As("bar length");
        var ofColumn = column.Name[within.Length..].Trim();
        var rows = new List<FrameField>();
        var below = column.Below;
        var z = column.Inside.Min.Z;
        for (var n = 0; n < bars.Rows; n++)
        {
            var above = column.Above;
            if (n + 1 < bars.Rows)
            {
                z += each.Length;
                var name = FieldNames.Joined(FieldNames.Joined(within, ofColumn), "level bar");
                var level = piece.Board(
                    frame.Leaf.Group,
                    bars.Rows == 2 ? name : $"{name} {n + 1}",
                    Role.DoorMuntin,
                    frame.Leaf.Plan.Material,
                    Lie.Of(Direction.Right, Direction.Front),
                    length,
                    bars.Width,
                    new(column.Inside.Min.X - column.Left.Depth.Length, frame.FaceY, z),
                    frame.Leaf.Source
                );
                Shape(level, bars.Rabbet, isBar: true, Direction.Down, Direction.Up);
                Tenon(level, column.Left, Direction.Left);
                Tenon(level, column.Right, Direction.Right);
                level.ShoulderLength = (level.Length - column.Left.Depth - column.Right.Depth).As(
                    "shoulder to shoulder"
                );
                above = new FrameMember(level, bars.Rabbet, IsBar: true);
                z += bars.Width.Length;
            }
            var row = FieldNames.Row(bars.Rows - 1 - n, bars.Rows);
            rows.Add(
                column with
                {
                    Name = FieldNames.Joined(within, FieldNames.Joined(row, ofColumn)),
                    Below = below,
                    Above = above,
                    Height = each,
                }
            );
            below = above;
        }
        return rows;
    }

    private Figure Each(Figure whole, Figure divider, int count, string name)
    {
        if (count == 1)
            return whole;
        var each = ((whole - (divider * (count - 1))) / count).As(name);
        return each.Length > Length.Zero
            ? each
            : throw NoRoom.Of(
                $"The {frame.Leaf.Group.Name} has no room for its {(name.Contains("light", StringComparison.Ordinal) ? "bars" : "muntins")}: they leave nothing of {NoRoom.Show(whole.Length)}.",
                frame.Leaf.Source,
                "fewer or narrower ones, or a larger opening"
            );
    }

    private void Shape(PartDraft part, Figure depth, bool isBar, params ReadOnlySpan<Direction> edges)
    {
        foreach (var edge in edges)
            EdgeGroove.Cut(part, edge, depth.Length, Groove.Lip.Length, isBar ? null : Groove.Width.Length);
    }

    /// <summary>Into a bar the web goes whole, as far as the web of the other; into a rail or stile as thick as its groove.</summary>
    private void Tenon(PartDraft enters, FrameMember receives, Direction into)
    {
        var from = enters.Extent.Min.Y + Groove.Lip.Length;
        var to = receives.IsBar ? enters.Extent.Max.Y : from + Groove.Width.Length;
        StubTenon.At(piece, receives.Part, enters, into, receives.Depth.Length, Axis.Y, from, to);
    }

    private void RefuseNarrow(string what, Figure width, Figure depth)
    {
        if (width.Length - (depth.Length * 2) < ThinnestWeb)
            throw NoRoom.Of(
                $"A {what} of the {frame.Leaf.Group.Name} is {NoRoom.Show(width.Length)} wide: its two {(what == "bar" ? "rabbets" : "grooves")} of {NoRoom.Show(depth.Length)} leave no wood between them.",
                frame.Leaf.Source,
                $"a wider {what}"
            );
    }
}
