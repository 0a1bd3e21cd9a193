using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// A tenon on the end of one part in a mortise of another. A third of the part in thickness, up to two thirds of the other
/// in length but no more than five times its own thickness, and a little shorter than the mortise is deep: published tips on
/// sizing mortises and tenons (WOOD magazine; Popular Woodworking for the length).
/// </summary>
internal static class MortiseTenon
{
    /// <summary>Thickness of the tenon of a part.</summary>
    public static Length ThicknessOf(PieceBuilder piece, Length part)
    {
        var step = StepOf(piece);
        return Length.Max((part / 3).RoundTo(step), step);
    }

    /// <summary>Length of a stopped tenon.</summary>
    /// <param name="part">Thickness of the part with the tenon.</param>
    /// <param name="other">Size of the other part, the way the tenon goes.</param>
    public static Figure LengthOf(PieceBuilder piece, Figure part, Figure other)
    {
        var step = StepOf(piece);
        var thickness = (part / 3).RoundTo(step).As("tenon thickness");
        return Figure
            .Min((other * new Rational(2, 3)).As("two thirds of the other part"), thickness * 5)
            .FloorTo(step)
            .As("tenon length");
    }

    /// <summary>Cuts tenon and mortise and ties the parts; the entering part is so much longer as the tenon is.</summary>
    /// <param name="through">All parts the tenon may reach into: the plies of a leg, or the one part.</param>
    /// <param name="meets">The one that its shoulder lies against.</param>
    /// <param name="spread">The axis along the width of the tenon.</param>
    /// <param name="length">Length of the tenon.</param>
    /// <param name="haunched">An edge at which the tenon is cut back to a haunch, since the other part ends there; null for none.</param>
    public static Joint Between(
        PieceBuilder piece,
        IReadOnlyList<PartDraft> through,
        PartDraft meets,
        PartDraft enters,
        Direction into,
        Axis spread,
        Length length,
        Direction? haunched = null
    )
    {
        var thick = (Axis)(3 - (int)into.Axis() - (int)spread);
        var whole = enters.Reckoned;
        var thickness = ThicknessOf(piece, whole.Size(thick));
        var shoulder = Length.Min(piece.Shop.Length(JointRules.TenonShoulder).Length, whole.Size(spread) / 6);
        var haunch = haunched is null ? Length.Zero : (whole.Size(spread) / 3).RoundTo(StepOf(piece));
        Length At(Direction edge) => edge == haunched ? haunch : shoulder;
        var (low, high) = (Directions.Along(spread, -1), Directions.Along(spread, 1));
        var tenon = whole
            .With(into.Opposite(), whole.Side(into) - (length * into.Sign()))
            .Grown(low, -At(low))
            .Grown(high, -At(high));
        var cheek = (whole.Size(thick) - thickness) / 2;
        tenon = tenon.Grown(Directions.Along(thick, -1), -cheek).Grown(Directions.Along(thick, 1), -cheek);
        if (tenon.Size(spread) <= Length.Zero || tenon.Size(into.Axis()) <= Length.Zero)
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for a tenon on the {enters.Name}.",
                    enters.Source,
                    "a wider part, or another joint"
                )
            );
        var joint = piece.NextJointId;
        var end = enters.Extent.With(into.Opposite(), tenon.Side(into.Opposite()));
        foreach (var way in (ReadOnlySpan<Direction>)[Directions.Along(thick, -1), Directions.Along(thick, 1)])
            enters.CutAway(CutKind.Shoulder, end.With(way.Opposite(), tenon.Side(way)), joint);
        // The haunch goes in as far as the tenon is thick, and keeps the end of the part from twisting.
        var stub = Length.Min(thickness, length / 2);
        foreach (var way in (ReadOnlySpan<Direction>)[low, high])
        {
            var strip = end.With(way.Opposite(), tenon.Side(way));
            if (way == haunched)
                strip = strip.With(into.Opposite(), strip.Side(into.Opposite()) + (stub * into.Sign()));
            enters.CutAway(CutKind.Shoulder, strip, joint);
        }
        var room =
            length >= meets.Reckoned.Size(into.Axis()) ? Length.Zero : piece.Shop.Length(JointRules.MortiseRoom).Length;
        Mortise(tenon.Grown(into, room));
        if (haunched is { } edge)
            Mortise(
                tenon
                    .With(edge, whole.Side(edge))
                    .With(edge.Opposite(), tenon.Side(edge))
                    .With(into, tenon.Side(into.Opposite()) + (stub * into.Sign()))
            );
        return piece.Join(JointKind.MortiseAndTenon, meets, enters, into, length);

        Length Stands(Extent box) => box.Side(into.Opposite()) * into.Opposite().Sign();

        void Mortise(Extent hole)
        {
            foreach (var part in through)
            {
                if (Extent.Shared(hole, part.Extent) is null)
                    continue;
                // It is chopped in from the edge as it is, and that of a part as cut may stand farther out.
                var mouth = part == meets && Stands(part.Extent) > Stands(hole) ? part.Extent : hole;
                part.CutAway(CutKind.Mortise, hole.With(into.Opposite(), mouth.Side(into.Opposite())), joint);
            }
        }
    }

    /// <summary>Chisels and cutters come by the sixteenth or the whole millimetre.</summary>
    private static Length StepOf(PieceBuilder piece) =>
        piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
}
