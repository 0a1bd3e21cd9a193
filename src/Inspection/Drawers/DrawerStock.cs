using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>Whether drawer boxes still fit their slides when their sides come thicker or thinner than they are said to be.</summary>
internal sealed class DrawerStock : ICheck
{
    public static FindingKind OnlyAtNominal { get; } =
        new(
            "drawer-fits-only-at-nominal",
            Severity.Warn,
            "Drawer box fits only if its stock is as said",
            "Sheets are sold by a thickness and come thicker or thinner. Two sides add their difference to the width of the box, and slides forgive less than a millimetre.",
            "PS 1: 1/64 in for sanded plywood up to 3/4 in; EN 324-1: 0.3 mm for particleboard; go by the sheet of the slides in hand"
        );

    private static readonly Direction[] Sides = [Direction.Left, Direction.Right];

    public string Name => "drawer boxes from stock of another thickness than said";

    public string Of => "drawers";

    public string How =>
        "The room measured beside each box is held against its slides' window again with the sides of the box as thick and as thin as their stock may be: as the "
        + "recipe says (`varies by`), else by the house rule for its kind (published), or little where `actual` says what it measured. What is jointed to the inner face of a side keeps "
        + "its place, and the outer face moves; dovetailed and finger-jointed boxes are as wide as their front and are left out, as are slides that go by the inside of the box. "
        + "Uprights are taken to stand where their inner faces are marked. Within 1/128 in (0.2 mm) nothing is said. Boxes of one stock are told together.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [OnlyAtNominal];

    public Outcome Run(InspectedPiece piece)
    {
        var located = LocatedFromWithin(piece);
        var covered = 0;
        var tight = new List<Room>();
        foreach (var front in piece.Piece.Fronts)
        {
            var seen = piece.From(front);
            if (DrawerBox.Of(seen, front) is not { Fit.GoesByInside: false } box)
                continue;
            covered++;
            tight.AddRange(Sides.Select(side => Measure(seen, box, side, located)).OfType<Room>());
        }
        return new(
            covered,
            [
                .. tight
                    .GroupBy(room => (room.Side.Material.Name, room.Side.Thickness.Length, room.Box.Fit.SideClearance))
                    .Select(alike => Tell(piece, [.. alike])),
            ]
        );
    }

    /// <summary>Parts to whose broad faces others are jointed: those faces stay where they are, however thick the part.</summary>
    private static HashSet<string> LocatedFromWithin(InspectedPiece piece) =>
        [
            .. piece
                .Piece.Joints.Where(joint =>
                    joint.Kind is not (JointKind.Dovetail or JointKind.BoxJoint or JointKind.Loose)
                    && piece.Shape(joint.Receives).Part.Place.Lie.Shows.Axis() == joint.Into.Axis()
                )
                .Select(joint => joint.Receives),
        ];

    /// <summary>The room beside a box; null where it is enough however the stock comes, or is wrong as it is.</summary>
    private static Room? Measure(InspectedPiece piece, DrawerBox box, Direction side, HashSet<string> located)
    {
        var carrying = box.Carrying(side).Part;
        var (least, most) = box.Fit.SideClearance;
        if (
            carrying.Material.Varies is not { } varies
            || carrying.IsKept
            || carrying.IsAsCut
            || !located.Contains(carrying.Id)
            || box.Beside(side) is not { } gap
        )
            return null;
        var room = piece.ToLength(gap.Smallest.Gap);
        if (room < least - Tolerance.Rounding || room > most + Tolerance.Rounding)
            return null;
        var (thick, thin) = (room - varies.Length, room + varies.Length);
        if (thick >= least - Tolerance.Fitting && thin <= most + Tolerance.Fitting)
            return null;
        var (own, other) = gap.Shown(gap.Smallest, piece.ToUnits(Tolerance.Fitting))
            .Ends(side, Axis.Z, box.Around.Centre().Y);
        return new(box, carrying, room, thick, thin, piece.ToSpace(other, own));
    }

    private static Finding Tell(InspectedPiece piece, List<Room> alike)
    {
        var worst = alike.MinBy(room => room.Thick)!;
        var (side, fit) = (worst.Side, worst.Box.Fit);
        var drawers = alike.Select(room => room.Box.Front.Group).Distinct(StringComparer.Ordinal).Count();
        var others =
            drawers == 1 ? ""
            : drawers == 2 ? " and one like it"
            : $" and {drawers - 1} like it";
        var (thinnest, thickest) = (
            side.Thickness.Length - (fit.SideClearance.AtMost - worst.AsSaid),
            side.Thickness.Length + (worst.AsSaid - fit.SideClearance.AtLeast)
        );
        return new()
        {
            Kind = OnlyAtNominal,
            Message =
                $"The box of the {worst.Box.Name}{others} {(drawers == 1 ? "fits its" : "fit their")} slides only while the {side.Material.Stuff} of the sides is as thick as said.",
            Parts = PartIds.Together(alike.Select(room => room.Side.Id)),
            Place = side.Material.Source,
            Related = piece.Group(worst.Box.Front.Group) is { } group ? [group.Source] : [],
            Where = worst.Where,
            Measured = new MeasuredRange("room beside the box", worst.Thick, worst.Thin),
            Wanted = new(fit.SideClearance.AtLeast, fit.SideClearance.AtMost),
            Remedy = new(
                $"Measure the {side.Material.Stuff} and say `actual:` in its material. The boxes fit while it measures from {piece.Say(thinnest)} to {piece.Say(thickest)}.",
                Sure: true
            ),
            Assumptions =
            [
                $"{Capital(side.Material.Stuff)} of {piece.Say(side.Thickness.Length)} is taken to come up to {piece.Say(side.Material.Varies!.Length)} thicker or thinner.",
            ],
        };
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The room at one side of a box: as drawn, and with the thickest and the thinnest stock.</summary>
    private sealed record Room(DrawerBox Box, Part Side, Length AsSaid, Length Thick, Length Thin, SpacePlace Where);
}
