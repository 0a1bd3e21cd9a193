using Dryfit.Casework.Building;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// How a front fits its opening, side by side: an inset one keeps its gap inside, an overlaid one laps over, and where
/// another front follows with no part between both stop half a gap short of each other.
/// </summary>
internal sealed class FrontFit
{
    private readonly FrontSite _site;
    private readonly Figure _gap;
    private readonly Dictionary<Direction, Figure> _overlays = [];

    /// <param name="said">The keys of the word; null where only the short form or nothing stands.</param>
    /// <param name="hang">How it hangs, where the short form says so.</param>
    public FrontFit(PieceBuilder piece, FrontSite site, Fields? said, string? hang)
    {
        _site = site;
        var word = said?.Text("hang") ?? hang;
        Hang = word switch
        {
            "inset" => Hang.Inset,
            "overlaid" or "half overlaid" or "rebated" => Hang.Overlay,
            _ => site.UsualHang,
        };
        IsLipped = word == "rebated";
        if (word == "half overlaid" && site.IsFramed)
            throw NoRoom.Of(
                "Fronts lap half over a side or a partition; before a face frame they lap over its members.",
                said?.PlaceOf("hang") ?? site.Opening.Source,
                "`overlaid` with an `overlay:`"
            );
        if (IsLipped && site.OpenSides.Count > 0)
            throw NoRoom.Of(
                "A rebated front needs a part on every side to lap over; here only a gap divides it from the next.",
                said?.PlaceOf("hang") ?? site.Opening.Source,
                "a rail or a shelf between the two"
            );
        _gap = said?.LengthOrNull("gap") ?? piece.Shop.Length(GapRules.InsetGap, "gap");
        foreach (var side in (ReadOnlySpan<Direction>)[Direction.Left, Direction.Right, Direction.Down, Direction.Up])
        {
            _overlays[side] =
                SaidOverlay(said, side)
                ?? (
                    IsLipped ? piece.Shop.Length(GapRules.LipOverlay, "overlay")
                    : word == "half overlaid" ? HalfOf(piece, side)
                    : ReachOn(side)
                );
        }
    }

    public Hang Hang { get; }

    /// <summary>Whether its back goes into the opening, and only a lip around it laps over.</summary>
    public bool IsLipped { get; }

    /// <summary>How wide the rabbet behind the lip is on a side: what laps over, and the gap of an inset front.</summary>
    public Length LipWidth(Direction side) => _overlays[side].Length + _gap.Length;

    /// <summary>How deep that rabbet is, from the back: half the thickness.</summary>
    public Length LipDepth(Length thickness) => IsLipped ? thickness / 2 : Length.Zero;

    /// <summary>Width of what closes the opening.</summary>
    /// <param name="between">The gap in the middle of a pair, which takes from the whole as well.</param>
    public Figure Width(Figure? between = null)
    {
        var width = Less(_site.Width, Direction.Left);
        if (between is not null)
            width -= between;
        return Less(width, Direction.Right);
    }

    public Figure Height => Less(Less(_site.Height, Direction.Down), Direction.Up);

    /// <summary>The coordinate at which the front ends on a side.</summary>
    public Length Edge(Direction side)
    {
        var opening = _site.Opening.Clear.Side(side);
        var outward =
            KeepsGap(side) ? -_gap.Length
            : StopsShort(side) ? -_overlays[side].Length
            : _overlays[side].Length;
        return opening + (outward * side.Sign());
    }

    /// <summary>The Y of the plane on which the front's back lies, or an inset front's face.</summary>
    public Length BackY(PieceBuilder piece, Figure thickness) =>
        Hang == Hang.Inset
            ? _site.FaceY + thickness.Length
            : _site.FaceY - piece.Shop.Length(GapRules.BumperGap).Length + LipDepth(thickness.Length);

    /// <summary>The gaps or overlays wanted, by side.</summary>
    public WantedSides Wanted =>
        new(WantedOn(Direction.Left), WantedOn(Direction.Right), WantedOn(Direction.Down), WantedOn(Direction.Up));

    private Length? WantedOn(Direction side) =>
        StopsShort(side) ? null
        : KeepsGap(side) ? _gap.Length
        : _overlays[side].Length;

    private bool KeepsGap(Direction side) => Hang == Hang.Inset && !StopsShort(side);

    private bool StopsShort(Direction side) => _site.OpenSides.Contains(side);

    private Figure Less(Figure size, Direction side) =>
        KeepsGap(side) ? size - _gap
        : StopsShort(side) ? size - _overlays[side]
        : size + _overlays[side];

    private Figure? SaidOverlay(Fields? said, Direction side) =>
        said is null || StopsShort(side)
            ? null
            : said.Map("overlay")?.LengthOrNull(NameOf(side), "overlay") ?? said.LengthOrNull("overlay");

    private static string NameOf(Direction side) =>
        side switch
        {
            Direction.Down => "bottom",
            Direction.Up => "top",
            _ => Spoken.Of(side),
        };

    /// <summary>Half of the upright at a side, less half the gap to a front that laps over the other half.</summary>
    private Figure HalfOf(PieceBuilder piece, Direction side)
    {
        if (side.Axis() == Axis.Z)
            return ReachOn(side);
        var upright = side == Direction.Left ? _site.HingeLeft : _site.HingeRight;
        return ((upright.Thickness - piece.Shop.Length(GapRules.StackGap, "gap")) / 2).As("half overlay");
    }

    private Figure ReachOn(Direction side) =>
        side switch
        {
            Direction.Left => _site.Reach.Left,
            Direction.Right => _site.Reach.Right,
            Direction.Down => _site.Reach.Bottom,
            _ => _site.Reach.Top,
        };
}
