using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Fronts.Handles;

/// <summary>
/// Sets pulls and knobs by rule and bores for them: in the middle of the stile or rail they sit on, upright on doors and
/// level on drawers and flaps; two on wide ones.
/// </summary>
internal sealed class HandleMaker(PieceBuilder piece, HandlePlan plan, string name, SourcePlace source)
{
    /// <summary>A door that turns: away from the hinges, as near as it can be to the height of the house.</summary>
    /// <param name="latch">Width of the member it sits on; null for a slab.</param>
    /// <param name="hangs">Whether its carcase hangs on a wall, wherever that is: the handle then is at its bottom.</param>
    public void OnDoor(DoorUnit unit, Direction hinged, Length? latch, bool hangs)
    {
        var (end, half) = (piece.Shop.Length(HandleRules.FromEnd).Length, plan.Centres / 2);
        var (low, high) = (unit.Extent.Min.Z + end + half, unit.Extent.Max.Z - end - half);
        var middle = (unit.Extent.Min.Z + unit.Extent.Max.Z) / 2;
        var z = plan.At switch
        {
            "top" => high,
            "bottom" => low,
            "middle" => middle,
            _ when hangs => low,
            _ => Length.Max(low, Length.Min(high, piece.Shop.Length(HandleRules.Height).Length)),
        };
        // A door so low that both ends are too near gets it in the middle.
        if (low > high)
            z = middle;
        var edge = unit.Extent.Side(hinged.Opposite());
        Set(
            unit.Face,
            unit.Extent,
            new(edge + (In(latch) * hinged.Opposite().Sign() * -1), unit.Extent.Min.Y, z),
            Axis.Z
        );
    }

    /// <summary>A flap: level, on the rail away from its hinges.</summary>
    /// <param name="latch">Width of that rail; null for a slab.</param>
    public void OnFlap(DoorUnit unit, Direction hinged, Length? latch)
    {
        var z = unit.Extent.Side(hinged.Opposite()) + (In(latch) * hinged.Sign());
        foreach (var x in Across(unit.Extent))
            Set(unit.Face, unit.Extent, new(x, unit.Extent.Min.Y, z), Axis.X);
    }

    /// <summary>A drawer: level, in the middle of its height, through the front and what it is screwed to.</summary>
    /// <param name="parts">The front with its bands, and the front of the box behind it.</param>
    public void OnDrawer(IReadOnlyList<PartDraft> parts, Extent extent)
    {
        var z = (extent.Min.Z + extent.Max.Z) / 2;
        foreach (var x in Across(extent))
            Set(parts, extent, new(x, extent.Min.Y, z), Axis.X);
    }

    private Length In(Length? latch) => latch is { } width ? width / 2 : piece.Shop.Length(HandleRules.FromEdge).Length;

    private Length[] Across(Extent extent)
    {
        var wide = extent.Width;
        return wide < piece.Shop.Length(HandleRules.TwoFrom).Length
            ? [extent.Min.X + (wide / 2)]
            : [extent.Min.X + (wide / 4), extent.Max.X - (wide / 4)];
    }

    private void Set(IReadOnlyList<PartDraft> parts, Extent front, Point at, Axis along)
    {
        var across = along == Axis.X ? Axis.Z : Axis.X;
        var room = new Extent(at, at)
            .Grown(Directions.Along(along, 1), plan.Length / 2)
            .Grown(Directions.Along(along, -1), plan.Length / 2)
            .Grown(Directions.Along(across, 1), plan.Across / 2)
            .Grown(Directions.Along(across, -1), plan.Across / 2);
        if (
            room.Min.X < front.Min.X
            || room.Max.X > front.Max.X
            || room.Min.Z < front.Min.Z
            || room.Max.Z > front.Max.Z
        )
            throw NoRoom.Of(
                $"The {name} is {NoRoom.Show(front.Width)} wide and {NoRoom.Show(front.Height)} high: too small for its {plan.Family.Called} of {NoRoom.Show(plan.Length)}.",
                source,
                "a shorter pull, a knob, or `pull: none`"
            );
        var carries =
            parts.FirstOrDefault(part => Holds(part, at))
            ?? throw NoRoom.Of(
                $"The {plan.Family.Called} of the {name} meets no wood where it should sit.",
                source,
                "another distance from edge or end in the shop file's rules for handles, or `pull at:`"
            );
        var fitting = piece.FitHandle(
            plan.Family,
            at,
            new HandleSize(along, plan.Length, plan.Across, plan.StandsOff),
            carries
        );
        Point[] screws =
            plan.Centres > Length.Zero
                ?
                [
                    at.Moved(Directions.Along(along, -1), plan.Centres / 2),
                    at.Moved(Directions.Along(along, 1), plan.Centres / 2),
                ]
                : [at];
        foreach (var screw in screws)
        {
            foreach (var part in parts.Where(part => Holds(part, screw)))
                part.Bore(
                    CutKind.Bore,
                    screw.With(Axis.Y, part.Extent.Min.Y),
                    Direction.Back,
                    plan.Hole,
                    part.Extent.Depth,
                    fitting.Id
                );
        }
    }

    private static bool Holds(PartDraft part, Point at) =>
        part.Extent.Min.X < at.X && part.Extent.Max.X > at.X && part.Extent.Min.Z < at.Z && part.Extent.Max.Z > at.Z;
}
