using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.CutList;

/// <summary>
/// The usual cautions for a piece, in plain words. They are reminders, not advice for the case at hand: local codes, the
/// makers of hardware and machines, and licensed practice come first.
/// </summary>
internal static class Cautions
{
    /// <summary>Storage furniture this high comes under tip-over rules in the United States: 27 in (16 CFR 1261, ASTM F2057-23).</summary>
    private static readonly Length TallEnoughToTip = Length.FromInches(27);

    /// <summary>A board shorter than this is hard to hold at a saw or planer (common practice: about 300 mm or 12 in).</summary>
    private static readonly Length ShortAtTheMachine = Length.FromInches(12);

    /// <summary>A strip narrower than this brings fingers close to the blade (common practice).</summary>
    private static readonly Length NarrowAtTheMachine = Length.FromInches(2);

    private static readonly CutKind[] ShapedByCutter =
    [
        CutKind.Chamfer,
        CutKind.RoundedEdge,
        CutKind.Cove,
        CutKind.Moulding,
    ];

    public static IEnumerable<(string Title, string Text)> For(Piece piece)
    {
        var cut = piece.Parts.Where(part => !part.IsKept).ToList();
        if (cut.Exists(part => part.Length.Length < ShortAtTheMachine || part.Width.Length < NarrowAtTheMachine))
        {
            yield return (
                "Small parts",
                "Some parts are short or narrow. Machine them as one longer or wider piece and part them last, or hold them in "
                    + "a sled or jig; use push sticks and hold-downs, and keep guard and riving knife on. Follow the "
                    + "manual of the machine."
            );
        }
        if (cut.Exists(part => part.Cuts.Any(shape => ShapedByCutter.Contains(shape.Kind))))
        {
            yield return (
                "Shaped edges",
                "Run a narrow moulding along the edge of a wide board and saw it off afterwards; never pass a strip or a short "
                    + "piece over a cutter by hand. Take several light cuts against the turn of the cutter, end grain first, with "
                    + "fence, guard and feather boards on. Follow the manual of the machine and of the cutter."
            );
        }
        if (cut.Exists(part => part.Cuts.Any(shape => shape.Kind == CutKind.Turning)))
        {
            yield return (
                "Turning",
                "Turn only sound blanks, free of splits and loose knots; centre them well and start slowly. Wear a face shield, no "
                    + "gloves and nothing loose, turn the blank by hand past the rest before you switch on, and follow the manual "
                    + "of the lathe."
            );
        }
        yield return (
            "Dust, noise, eyes",
            "Wood dust harms the lungs and some of it causes cancer; it burns and can explode. Collect it at the machine, wear "
                + "a fitted mask, and protect eyes and ears."
        );
        if (Height(piece) >= TallEnoughToTip)
        {
            yield return (
                "Tipping over",
                "A piece this high can tip when drawers or doors are open or a child climbs it. Fix it to the wall with fittings "
                    + "meant for that wall, tell the customer in writing, and look up the rules for storage furniture where "
                    + "it will stand."
            );
        }
        if (cut.Exists(part => part.Cuts.Any(hole => hole.Kind == CutKind.CutOut)))
        {
            yield return (
                "Sinks and hobs",
                "Cut to the template or sheet of what goes in: it says how far heat must stay from wood, and what must be free "
                    + "below. Seal the cut edges. Gas, water and mains are for licensed people, by local code."
            );
        }
        if (piece.Hardware.Any(hardware => hardware.IsInWall))
        {
            yield return (
                "Hanging on the wall",
                "What hangs can fall on people. Find out what the wall is made of and what it bears, use the fixings that their "
                    + "maker names for that wall and load, screw into studs or masonry and not into plaster alone, look for "
                    + "pipes and cables first, and follow local practice and codes; ask a licensed builder where in doubt."
            );
        }
        if (piece.Hardware.Any(hardware => hardware.IsElectric))
        {
            yield return (
                "Lights",
                "Whatever is joined to the mains is work for licensed people, by local code. Take drivers and lights made for "
                    + "furniture, give them the air and the reach their makers ask for, keep cables off edges and moving "
                    + "parts, and switch off before you open anything."
            );
        }
        if (cut.Exists(part => part.Material.Kind == MaterialKind.Glass))
        {
            yield return (
                "Glass",
                "Order panes to the glazier's advice. Low panes, doors and shelves often must be safety glass by local code. Let "
                    + "the glazier ease the edges, and carry panes with gloves."
            );
        }
        if (GlassToFallAgainst.In(piece) is { } panes)
        {
            yield return (
                "Glass that someone could fall against",
                $"Plain glass stands low or in a door here: {panes}. A person who trips, or a child, can go through it. Ask the "
                    + "glazier about toughened or laminated glass, and follow the local code for glass at that height and in doors."
            );
        }
        if (piece.Fronts.Any(front => front.Motion is FrontMotion.TurnsOnTopEdge or FrontMotion.TurnsOnBottomEdge))
        {
            yield return (
                "Flaps",
                "A flap falls shut or open by its own weight. Choose its stays by the table of their maker, by weight and height as "
                    + "listed, fit them before you let go of it, and do not load a drop front beyond what its stays carry."
            );
        }
        yield return (
            "Finishing",
            "Rags with drying oils can catch fire by themselves: lay them flat to dry outdoors or keep them under water in a closed "
                + "metal can. Air the room, and follow the label of the finish."
        );
        if (piece.Parts.Any(part => part.IsKept))
        {
            yield return (
                "Old parts",
                "Old paint may hold lead, and old timber nails. Test before you sand or scrape, search with a magnet before you saw."
            );
        }
        yield return (
            "What this page is not",
            "It does not replace local codes, the instructions of those who make hardware and machines, or the judgement of "
                + "licensed people where a code asks for them. Measure what you buy before you cut."
        );
    }

    private static Length Height(Piece piece) =>
        piece.Parts.Count == 0
            ? Length.Zero
            : piece.Parts.Select(part => part.Extent.Max.Z).Max() - piece.Parts.Select(part => part.Extent.Min.Z).Min();
}
