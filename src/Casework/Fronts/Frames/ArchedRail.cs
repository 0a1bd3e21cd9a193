using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>
/// A top rail whose lower edge is part of a circle. Its groove runs along the same centre, and a panel follows it; behind
/// glass the arch is in the lip alone, so that pane and beads stay square.
/// </summary>
/// <param name="Rise">How much higher the edge is in the middle than at the stiles.</param>
internal sealed record ArchedRail(Figure Rise)
{
    /// <summary>Roots are rounded once, to this.</summary>
    private static readonly Length Step = Length.FromMillimetres(new Rational(1, 640));

    public static ArchedRail? Read(
        Fields? said,
        DoorKind kind,
        Division division,
        RaisedPanel? raised,
        SourcePlace place
    )
    {
        if (said?.LengthOrNull("arch", "rise of the arch") is not { } rise)
            return null;
        if (kind == DoorKind.Slab)
            throw NoRoom.Of("A slab has no top rail to arch.", place, "`kind: framed` or `kind: glazed`");
        if (division.Muntins is not null || division.Bars is not null)
            throw NoRoom.Of(
                "Muntins and bars end at straight rails, and this top rail is arched.",
                place,
                "no `arch:`, or no muntins and bars"
            );
        if (raised is not null)
            throw NoRoom.Of(
                "A bevel is run along straight edges, and the panel under an arched rail has a round one.",
                place,
                "flat panels, or no `arch:`"
            );
        return new(rise);
    }

    /// <summary>Saws the arch, and cuts the groove.</summary>
    /// <param name="from">The left end of the arch, in the piece.</param>
    /// <param name="to">The right end.</param>
    /// <param name="isSquare">Whether what lies in the groove is square above, as a pane is.</param>
    public void Shape(PartDraft rail, FrameGroove groove, Length from, Length to, bool isSquare)
    {
        EdgeArch.Cut(rail, Direction.Down, Direction.Front, Rise.Length, from, to);
        var (depth, lip, width) = (groove.Depth.Length, groove.Lip.Length, groove.Width.Length);
        var half = (to - from) / 2;
        var radius = Radius(half);
        // At the stiles the bottom of the groove lies so much over the shoulder, and goes on level through the tenons.
        var end = Height(radius + depth, half) - (radius - Rise.Length);
        EdgeGroove.Cut(rail, Direction.Down, isSquare ? depth + Rise.Length : Length.Max(depth, end), lip, width);
        if (isSquare)
            return;
        var rise = Rise.Length + depth - end;
        var front = rail.Extent.Min.Y + lip;
        Swept.Cut(
            rail,
            CutKind.Groove,
            new((from + to) / 2, front, rail.Extent.Min.Z),
            Direction.Right,
            Direction.Up,
            [
                (-half, Length.Zero),
                (half, Length.Zero),
                new(half, end, new(Length.Zero, end + rise - Radius(half, rise), Clockwise: false)),
                (-half, end),
            ],
            (front, front + width),
            called: "arched groove"
        );
    }

    /// <summary>Rounds the top of a panel and, where it has one, the shoulders of its tongue there.</summary>
    /// <param name="half">Half of the clear width between the stiles.</param>
    /// <param name="deep">From the edge of the arch to the edge of the panel in the middle.</param>
    /// <param name="tongue">Length of the tongue.</param>
    /// <param name="shoulders">What is taken off before and behind it.</param>
    public void RoundPanel(
        PartDraft panel,
        Length half,
        Length deep,
        Length tongue,
        (Length Front, Length Back) shoulders
    )
    {
        Round(panel, half, deep);
        var (front, back) = (panel.Extent.Min.Y, panel.Extent.Max.Y);
        if (shoulders.Front > Length.Zero)
            Round(panel, half, deep, tongue, (front, front + shoulders.Front));
        if (shoulders.Back > Length.Zero)
            Round(panel, half, deep, tongue, (back - shoulders.Back, back));
    }

    /// <summary>Rounds the top of a panel, which lies so deep in the groove, about the centre of the arch.</summary>
    /// <param name="deep">From the edge of the arch to the edge of the panel in the middle.</param>
    /// <param name="half">Half of the clear width between the stiles.</param>
    /// <param name="below">How far below the panel's own edge the round runs: nothing for the edge itself, the length of the
    /// tongue for its shoulder.</param>
    /// <param name="stretch">From where to where it is cut, front to back; null: right through.</param>
    private void Round(
        PartDraft panel,
        Length half,
        Length deep,
        Length below = default,
        (Length From, Length To)? stretch = null
    )
    {
        var radius = Radius(half) + deep - below;
        var reach = panel.Extent.Width / 2;
        var drop = radius - Height(radius, reach);
        Swept.Cut(
            panel,
            below == Length.Zero ? CutKind.SawnShape : CutKind.Shoulder,
            new((panel.Extent.Min.X + panel.Extent.Max.X) / 2, panel.Extent.Min.Y, panel.Extent.Max.Z),
            Direction.Right,
            Direction.Down,
            [
                (-reach, -Over),
                (reach, -Over),
                new(reach, below + drop, new(Length.Zero, below + Radius(reach, drop), Clockwise: true)),
                (-reach, below + drop),
            ],
            stretch
        );
    }

    /// <summary>The cut starts above the panel.</summary>
    private static readonly Length Over = Length.FromMillimetres(5);

    private Length Radius(Length half) => Radius(half, Rise.Length);

    /// <summary>By the theorem of intersecting chords: half span x half span = rise x (2 radius - rise).</summary>
    private static Length Radius(Length half, Length rise) => ((half * (half / rise)) + rise) / 2;

    /// <summary>How high over the centre a circle is, so far beside it.</summary>
    private static Length Height(Length radius, Length beside)
    {
        var (r, b) = (radius.ToMillimetres(), beside.ToMillimetres());
        var high = Math.Sqrt(Math.Max(0, (r * r) - (b * b)));
        return Length.FromMillimetres(new Rational((long)Math.Round(high * 1e6), 1_000_000)).RoundTo(Step);
    }
}
