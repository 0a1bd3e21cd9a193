using Dryfit.Casework.Building;
using Dryfit.Casework.Joinery;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Fronts;

/// <summary>
/// The side slides of a drawer and what they are fixed to: the upright itself, or a packer on it where a face frame
/// stands in before it.
/// </summary>
internal static class DrawerSlides
{
    private const int PackerScrews = 3;

    /// <summary>Fits both slides; returns the parts they are fixed to.</summary>
    public static (PartDraft Left, PartDraft Right) Fit(
        PieceBuilder piece,
        FrontSite site,
        string name,
        DrawerPlan plan,
        DrawerSizes sizes,
        DrawerBox box
    )
    {
        var left = RunFor(Direction.Left, site.InsideLeft, site.HingeLeft);
        var right = RunFor(Direction.Right, site.InsideRight, site.HingeRight);
        var kind = $"side slide {LengthFormat.For(piece.Scope.Unit).WriteWithUnit(sizes.Slide.Length)}";
        piece.Fit(kind, Meeting.Centre(box.Left.Extent, Direction.Left), 1, box.Left, left);
        piece.Fit(kind, Meeting.Centre(box.Right.Extent, Direction.Right), 1, box.Right, right);
        return (left, right);

        PartDraft RunFor(Direction side, PartDraft upright, PartDraft frame)
        {
            var wall = upright.Reckoned.Side(side.Opposite());
            var opening = site.Opening.Clear.Side(side);
            var gap = side == Direction.Left ? opening - wall : wall - opening;
            if (gap < Length.Zero)
                throw NoRoom.Of(
                    $"The slides of the {site.Carcase.Full(name)} have nothing to be fixed to: the opening is wider than the inside behind it.",
                    plan.Place,
                    "a face frame that stands in at least as far as the sides"
                );
            return gap == Length.Zero ? upright : Packer(side, upright, frame, gap);
        }

        PartDraft Packer(Direction side, PartDraft upright, PartDraft frame, Length gap)
        {
            var width = piece.Shop.Length(DrawerRules.PackerWidth, "packer width");
            if (width.Length > site.Height.Length)
                width = Figure.Min(width, site.Height).As("packer width");
            var length = Figure.Min(sizes.Slide, site.InsideDepth.As("inside depth")).As("packer length");
            var thickness = Figure
                .Given(
                    "from the upright to the edge of the opening",
                    gap,
                    new TradeOrigin("between parts that stand already")
                )
                .As("packer thickness");
            // In the middle of the box, but within its own opening.
            var clear = site.Opening.Clear;
            var z = sizes.BottomZ + ((sizes.Height.Length - width.Length) / 2);
            z = Length.Max(clear.Min.Z, Length.Min(z, clear.Max.Z - width.Length));
            var x = side == Direction.Left ? site.Opening.Clear.Min.X - gap : site.Opening.Clear.Max.X;
            var packer = piece.Board(
                site.Carcase,
                $"{name} {Spoken.Of(side)} packer",
                Role.Packer,
                plan.Box,
                Lie.Of(Direction.Back, side.Opposite()),
                length,
                width,
                new(x, site.InsideFrontY, z),
                plan.Place,
                thickness,
                holds: side
            );
            Screws.Between(piece, upright, packer, side, PackerScrews);
            if (frame != upright)
                piece.Join(JointKind.Butt, frame, packer, Direction.Front, glued: false);
            return packer;
        }
    }
}
