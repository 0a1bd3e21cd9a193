using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts.Sliding;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// One door before its parts are made. Its size is the maker's own where the door as a whole was cut to other numbers; it
/// is built out from its hinge edge and up from its bottom gap, whatever comes of the rest.
/// </summary>
internal sealed record Leaf
{
    public required GroupDraft Group { get; init; }

    public required DoorPlan Plan { get; init; }

    /// <summary>The edge it turns on; of a sliding one the side at which it stands when shut.</summary>
    public required Direction Hinged { get; init; }

    /// <summary>The side from which it is built out: the hinges' of a door, the left one of a flap.</summary>
    public Direction BuiltFrom => Hinged == Direction.Right ? Direction.Right : Direction.Left;

    /// <summary>As reckoned from the opening; what the carcase is bored by.</summary>
    public required Figure ReckonedHeight { get; init; }

    public required Figure Width { get; init; }

    /// <summary>Width of the stiles of a framed door; the one that lies in a rebate is wider by as much.</summary>
    public required Figure LeftStile { get; init; }

    public required Figure RightStile { get; init; }

    public required Figure Height { get; init; }

    /// <summary>The X of the edge it is built out from.</summary>
    public required Length HingeX { get; init; }

    /// <summary>The Z of the lower end.</summary>
    public required Length BottomZ { get; init; }

    /// <summary>The Y of the back.</summary>
    public required Length BackY { get; init; }

    /// <summary>The line that sets its size.</summary>
    public required SourcePlace Source { get; init; }

    /// <summary>The left end of something that begins at the edge it is built out from.</summary>
    public Length LeftOf(Length width) => BuiltFrom == Direction.Left ? HingeX : HingeX - width;

    /// <summary>The Y of the front face for a member of some thickness: inset faces are flush with the frame, overlaid
    /// backs lie in one plane.</summary>
    public Length FaceY(Figure reckoned, Figure actual) =>
        Plan.Fit.Hang == Hang.Inset ? BackY - reckoned.Length : BackY - actual.Length;

    /// <summary>Works out the doors of a plan, left to right.</summary>
    public static IReadOnlyList<Leaf> Of(PieceBuilder piece, FrontSite site, DoorPlan plan)
    {
        var fit = plan.Fit;
        var tracks = plan.Opens == Opens.Sliding ? new SlidingTracks(piece, site, plan) : null;
        var height = tracks?.Height ?? fit.Height.As("door height");
        if (!plan.IsPair)
            return [Make(NameOf(plan.Opens), plan.Hinged, fit.Width().As("door width"))];
        var width = tracks?.Width ?? (fit.Width(plan.PairGap) / 2).As("door width");
        return [Make("left door", Direction.Left, width), Make("right door", Direction.Right, width)];

        Leaf Make(string name, Direction hinged, Figure width)
        {
            var stile = plan.Stile;
            var meeting = stile;
            if (plan.Meeting is { } rebate && rebate.First == hinged)
            {
                width = (width + rebate.Width).As("door width with its rebate");
                meeting = (stile + rebate.Width).As("meeting stile");
            }
            var group = piece.Group(site.NameOf(name), GroupKind.Door, site.Carcase, plan.Place);
            var own = piece.AsCut.ForUnit(group.Name);
            NoRoom.Unless(width.Length > Length.Zero && height.Length > Length.Zero, group.Name, site, plan.Place);
            group.Measures("width", own?.Width ?? width);
            group.Measures("height", own?.Height ?? own?.Length ?? height);
            return new Leaf
            {
                Group = group,
                Plan = plan,
                Hinged = hinged,
                ReckonedHeight = height,
                Width = own?.Width ?? width,
                LeftStile = hinged == Direction.Right ? meeting : stile,
                RightStile = hinged == Direction.Left ? meeting : stile,
                Height = own?.Height ?? own?.Length ?? height,
                HingeX = tracks?.Edge(hinged) ?? fit.Edge(hinged == Direction.Right ? Direction.Right : Direction.Left),
                BottomZ = tracks?.BottomZ ?? fit.Edge(Direction.Down),
                BackY = tracks?.BackY(hinged) ?? fit.BackY(piece, plan.Material.Thickness),
                Source = own?.Place ?? plan.Place,
            };
        }
    }

    private static string NameOf(Opens opens) =>
        opens switch
        {
            Opens.LiftUp => "flap",
            Opens.DropFront => "drop front",
            _ => "door",
        };
}
