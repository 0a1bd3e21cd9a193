using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Trim;

/// <summary>What a cover strip lies on: the parts at the front of a body that end where its gap begins.</summary>
internal sealed class StripBed
{
    private readonly Extent _envelope;

    private StripBed(IReadOnlyList<PartDraft> parts, Extent envelope)
    {
        Parts = parts;
        _envelope = envelope;
    }

    public IReadOnlyList<PartDraft> Parts { get; }

    public IReadOnlyList<string> Ids => [.. Parts.Select(part => part.Id)];

    /// <param name="side">The side of the body on which the gap is.</param>
    public static StripBed Of(PieceBuilder piece, GroupDraft group, Extent envelope, Direction side) =>
        new(
            [
                .. piece.Parts.Where(part =>
                    IsOf(part.Group, group)
                    && part.Group.Kind is not (GroupKind.Door or GroupKind.Drawer)
                    && part.Reckoned.Min.Y == envelope.Min.Y
                    && part.Reckoned.Side(side) == envelope.Side(side)
                ),
            ],
            envelope
        );

    /// <summary>From where to where there is something to lie on.</summary>
    public (Length From, Length To) Course(Axis axis) =>
        Parts.Count == 0
            ? (_envelope.Min[axis], _envelope.Min[axis])
            : (Parts.Select(p => p.Reckoned.Min[axis]).Min(), Parts.Select(p => p.Reckoned.Max[axis]).Max());

    public static bool IsOf(GroupDraft? part, GroupDraft group) =>
        part is not null && (part == group || IsOf(part.Parent, group));

    /// <summary>Nothing else may stand where the strip should be.</summary>
    public static void RefuseClash(PieceBuilder piece, PartDraft strip, SourcePlace place)
    {
        var clash = piece.Parts.FirstOrDefault(part =>
            part != strip && part.Turn == strip.Turn && Extent.Shared(strip.Reckoned, part.Reckoned) is not null
        );
        if (clash is not null)
            throw new CannotBuildException(
                new InputError(
                    $"The {strip.Name} would stand in the place of the {clash.Name}.",
                    place,
                    "a narrower strip, or fronts that leave room for it"
                )
            );
    }

    /// <summary>Ties the strip to all that it lies on: screwed to what carries it, loose on the rest.</summary>
    public static void Lay(PieceBuilder piece, PartDraft strip, GroupDraft carrier)
    {
        foreach (var part in piece.Parts.Where(part => part != strip).ToList())
        {
            if (Resting.ShareFace(strip, part, Direction.Back))
            {
                if (IsOf(part.Group, carrier))
                    Screws.Between(piece, part, strip, Direction.Back, 3);
                else
                    piece.Join(JointKind.Resting, part, strip, Direction.Back, glued: false);
                continue;
            }
            foreach (var side in (Direction[])[Direction.Up, Direction.Down, Direction.Left, Direction.Right])
            {
                if (Resting.ShareFace(strip, part, side))
                    piece.Join(JointKind.Resting, part, strip, side, glued: false);
            }
        }
    }
}
