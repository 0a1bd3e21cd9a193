using Dryfit.Casework.Building;
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

    /// <summary>The edge it turns on: left or right.</summary>
    public required Direction Hinged { get; init; }

    /// <summary>As reckoned from the opening; what the carcase is bored by.</summary>
    public required Figure ReckonedHeight { get; init; }

    public required Figure Width { get; init; }

    public required Figure Height { get; init; }

    /// <summary>The X of the hinge edge.</summary>
    public required Length HingeX { get; init; }

    /// <summary>The Z of the lower end.</summary>
    public required Length BottomZ { get; init; }

    /// <summary>The Y of the back.</summary>
    public required Length BackY { get; init; }

    /// <summary>The line that sets its size.</summary>
    public required SourcePlace Source { get; init; }

    /// <summary>The left end of something that begins at the hinge edge.</summary>
    public Length LeftOf(Length width) => Hinged == Direction.Left ? HingeX : HingeX - width;

    /// <summary>The Y of the front face for a member of some thickness: inset faces are flush with the frame, overlaid
    /// backs lie in one plane.</summary>
    public Length FaceY(Figure reckoned, Figure actual) =>
        Plan.Fit.Hang == Hang.Inset ? BackY - reckoned.Length : BackY - actual.Length;

    /// <summary>Works out the doors of a plan, left to right.</summary>
    public static IReadOnlyList<Leaf> Of(PieceBuilder piece, FrontSite site, DoorPlan plan)
    {
        var fit = plan.Fit;
        var height = fit.Height.As("door height");
        if (!plan.IsPair)
            return [Make("door", plan.Hinged, fit.Width().As("door width"))];
        var width = (fit.Width(plan.PairGap) / 2).As("door width");
        return [Make("left door", Direction.Left, width), Make("right door", Direction.Right, width)];

        Leaf Make(string name, Direction hinged, Figure width)
        {
            var group = piece.Group(site.NameOf(name), GroupKind.Door, site.Carcase, plan.Place);
            var own = piece.AsCut.ForUnit(group.Name);
            NoRoom.Unless(width.Length > Length.Zero && height.Length > Length.Zero, group.Name, site, plan.Place);
            return new Leaf
            {
                Group = group,
                Plan = plan,
                Hinged = hinged,
                ReckonedHeight = height,
                Width = own?.Width ?? width,
                Height = own?.Height ?? own?.Length ?? height,
                HingeX = fit.Edge(hinged),
                BottomZ = fit.Edge(Direction.Down),
                BackY = fit.BackY(piece, plan.Material.Thickness),
                Source = own?.Place ?? plan.Place,
            };
        }
    }
}
