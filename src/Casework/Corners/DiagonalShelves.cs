using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Shelving;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Corners;

/// <summary>Five-sided shelves of a diagonal corner carcase: let into both ends, or on pins in them.</summary>
internal sealed class DiagonalShelves(PieceBuilder piece, CarcasePlan plan, DiagonalShape shape, DiagonalBox box)
{
    public void Make(ShelvesPlan shelves, DiagonalMaker maker)
    {
        var doors = plan.Front is not null;
        var setback = shelves.Setback ?? piece.Shop.Length(ShelfRules.ShelfSetback, "setback");
        // Inset doors reach in behind the frame by what they are thicker.
        if (doors && plan.Fronts.Thickness.Length > plan.Face!.Material.Thickness.Length)
            setback += (plan.Fronts.Thickness - plan.Face.Material.Thickness).As("door behind the frame");
        var line = box.Line + DiagonalShape.Across(setback).As("setback across the corner");
        var body = plan with { Body = shelves.Material ?? plan.Body };
        if (body.Body.Thickness.Length != plan.Body.Thickness.Length)
            throw Refused(
                "Shelves across a corner are of the carcase's own thickness.",
                "a material as thick as the body"
            );
        var count = shelves.Fixed.Count + shelves.Adjustable.Count;
        if (shelves.Fixed.Count > 0 && shelves.Adjustable.Count > 0)
            throw Refused("Shelves across a corner are all fixed or all adjustable.", "one of fixed, adjustable");
        var said = shelves.Fixed.Count > 0 ? shelves.Fixed : shelves.Adjustable;
        var heights = said.At.Count > 0 ? said.At : Spaces.Evenly(box.InsideHeight, plan.Body.Thickness, said.Count);
        if (heights.Count != count)
            throw Refused(
                $"There are {count} shelves and {heights.Count} heights for them.",
                "a height for each, or none"
            );
        var floor = box.Bottom.Reckoned.Max.Z;
        var least = Length.Zero;
        for (var n = 0; n < count; n++)
        {
            var z = floor + heights[n].Length;
            if (heights[n].Length <= least || z + plan.Body.Thickness.Length >= box.Top.Reckoned.Min.Z)
                throw Refused(
                    "There is no room for the shelves one above the other.",
                    "fewer shelves, or other heights"
                );
            least = heights[n].Length + plan.Body.Thickness.Length;
            if (shelves.Fixed.Count > 0)
                maker.Tie(
                    box.Near,
                    box.Far,
                    maker.Flat($"fixed shelf {n + 1}", Role.Shelf, line, box.Back, z, maker.LetIn)
                );
            else
                OnPins($"adjustable shelf {n + 1}", line, z);
        }

        CannotBuildException Refused(string message, string wanted) =>
            new(new InputError(message, shelves.Place, wanted));
    }

    private void OnPins(string name, Figure line, Length z)
    {
        var play = piece.Shop.Length(ShelfRules.ShelfPlay, "play");
        var start = plan.Body.Thickness + play;
        var shelf = piece.Board(
            plan.Group,
            name,
            Role.Shelf,
            plan.Shelves!.Material ?? plan.Body,
            Lie.Of(Direction.Right, Direction.Up),
            (Less(plan.Width) - start - play).As("shelf length"),
            (Less(plan.Depth) - start - play).As("shelf width"),
            shape
                .Box(
                    (start.Length, Less(plan.Width).Length - play.Length),
                    (start.Length, Less(plan.Depth).Length - play.Length),
                    (z, z)
                )
                .Min
        );
        shape.CutCorner(shelf, start.Length, line.Length);
        var pin = piece.Families.ShelfPin(said: null, shelf.Source);
        var setback = piece.Shop.Length(ShelfRules.PinSetback).Length;
        Bore(pin, box.Near, shelf, shape.Near, Axis.Y, line.Length, setback, z);
        Bore(pin, box.Far, shelf, Direction.Front, Axis.X, line.Length, setback, z);
    }

    private Figure Less(Figure size) => box.Back is null ? size : size - box.Back;

    /// <summary>Two rows in one end: near the line, and near the wall; each a few holes around the pin.</summary>
    private void Bore(
        HardwareFamily pin,
        PartDraft end,
        PartDraft shelf,
        Direction into,
        Axis along,
        Length line,
        Length setback,
        Length z
    )
    {
        var diameter = pin.Length(ShelfRules.PinDiameter).Length;
        var depth = pin.Length(ShelfRules.PinDepth).Length;
        var pitch = piece.Shop.Length(ShelfRules.PinPitch).Length;
        var holes = piece.Shop.Count(ShelfRules.PinHoles);
        var mid = z - (diameter / 2);
        var (least, most) = (box.Bottom.Reckoned.Max.Z + diameter, box.Top.Reckoned.Min.Z - diameter);
        var fitting = piece.NextFittingId;
        var first = line - plan.Body.Thickness.Length + setback;
        var face = end.Reckoned.Side(into.Opposite());
        Point? pinAt = null;
        foreach (var off in (ReadOnlySpan<Length>)[first, Last(along) - setback])
        {
            // Told from the front and from the near end alike.
            var box0 = shape.Box((off, off), (off, off), (mid, mid)).Min;
            for (var n = 0; n < holes; n++)
            {
                var height = mid + (pitch * (n - (holes / 2)));
                var at = box0.With(into.Axis(), face).With(Axis.Z, height);
                pinAt ??= at;
                var isBored = end.Cuts.OfType<RoundCut>().Any(c => c.From == end.Place.ToBoard(at));
                if ((n == holes / 2 || (height > least && height < most)) && !isBored)
                    end.Bore(CutKind.ShelfPinHole, at, into, diameter, depth, fitting);
            }
        }
        piece.Fit(pin, null, pinAt!.Value, 2, shelf, end);
    }

    /// <summary>Where the inside ends before the wall.</summary>
    private Length Last(Axis along) => Less(along == Axis.Y ? plan.Depth : plan.Width).Length;
}
