using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// The tenon of a rail in a stile that is grooved for a panel: as thick as the groove, and deeper than it in a mortise. At
/// the end of the stile the outer third of the tenon is cut back to a haunch that fills the groove.
/// </summary>
internal static class GroovedTenon
{
    /// <param name="into">Which way the tenon points.</param>
    /// <param name="length">Length of the tenon; more than the groove is deep.</param>
    /// <param name="outer">The edge of the rail at the end of the stile; null for a rail between.</param>
    /// <param name="shows">Where the front of the frame looks.</param>
    public static Joint At(
        PieceBuilder piece,
        PartDraft stile,
        PartDraft rail,
        Direction into,
        Length length,
        Direction? outer,
        FrameGroove groove,
        Direction shows = Direction.Front
    )
    {
        Length In(PartDraft part, Length deep) => part.Extent.Side(shows) - (deep * shows.Sign());
        var (lip, behind) = (groove.Lip.Length, groove.Lip.Length + groove.Width.Length);
        var joint = piece.NextJointId;
        var tenon = rail.Extent.With(into.Opposite(), rail.Extent.Side(into) - (length * into.Sign()));
        rail.CutAway(CutKind.Shoulder, tenon.With(shows.Opposite(), In(rail, lip)), joint);
        rail.CutAway(CutKind.Shoulder, tenon.With(shows, In(rail, behind)), joint);
        // The mortise is cut by the rail as reckoned, from the edge of the stile.
        var edge = stile.Extent.Side(into.Opposite());
        var room = piece.Shop.Length(JointRules.MortiseRoom).Length;
        var mortise = rail
            .Reckoned.With(shows, In(stile, lip))
            .With(shows.Opposite(), In(stile, behind))
            .With(into.Opposite(), edge)
            .With(into, edge + (Length.Min(length + room, stile.Extent.Size(into.Axis())) * into.Sign()));
        if (outer is { } end)
        {
            var haunch = (rail.Reckoned.Size(Axis.Z) / 3).RoundTo(MarkingOut.StepOf(piece));
            rail.CutAway(
                CutKind.Shoulder,
                tenon
                    .With(into.Opposite(), tenon.Side(into.Opposite()) + (groove.Depth.Length * into.Sign()))
                    .With(end.Opposite(), tenon.Side(end) - (haunch * end.Sign())),
                joint
            );
            mortise = mortise.Grown(end, -haunch).Grown(end.Opposite(), -groove.Depth.Length);
        }
        else
        {
            mortise = mortise.Grown(Direction.Down, -groove.Depth.Length).Grown(Direction.Up, -groove.Depth.Length);
        }
        stile.CutAway(CutKind.Mortise, mortise, joint);
        return piece.Join(JointKind.MortiseAndTenon, stile, rail, into, length);
    }

    /// <summary>Two thirds of the stile, but no more than five times the tenon's thickness, which is that of the groove.</summary>
    public static Figure LengthOf(PieceBuilder piece, Figure stile, FrameGroove groove)
    {
        var step = piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        var length = Figure
            .Min(
                (stile * new Rational(2, 3)).As("two thirds of the stile"),
                (groove.Width * 5).As("five times its thickness")
            )
            .FloorTo(step);
        return Figure.Max(length, groove.Depth).As("tenon length");
    }
}
