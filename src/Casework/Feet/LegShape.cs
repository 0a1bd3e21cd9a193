using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Feet;

/// <summary>How a leg gets thinner towards the floor.</summary>
/// <param name="To">What is left of its width, and of its depth, on the floor.</param>
/// <param name="Faces">On one face (the inside as seen from the front), on both inside faces, or on all four.</param>
/// <param name="Below">How far under the rails it begins.</param>
internal sealed record TaperPlan(Figure To, int Faces, Figure Below, SourcePlace Place);

/// <summary>What is done to a leg besides sawing it square.</summary>
/// <param name="Turning">What is turned on them; null: nothing.</param>
/// <param name="Edge">Run along its four edges, from the floor to the rails; null: left sharp.</param>
internal sealed record LegShape(TaperPlan? Taper, EdgeShape? Edge, TurningPlan? Turning)
{
    /// <summary>Shapes a leg, whole or glued up of several plies.</summary>
    /// <param name="plies">Its plies from the front to the back.</param>
    /// <param name="inside">The way to the other end of the piece: right for a left leg.</param>
    /// <param name="behind">The way to the other leg of this end: back for a front leg.</param>
    /// <param name="rails">The underside of the rails.</param>
    public void Cut(IReadOnlyList<PartDraft> plies, Direction inside, Direction behind, Length rails)
    {
        var whole = plies.Aggregate(
            plies[0].Extent,
            (all, ply) => all.With(Direction.Back, Length.Max(all.Max.Y, ply.Extent.Max.Y))
        );
        if (Taper is { } taper)
            Thin(plies, whole, taper, inside, behind, rails);
        Turning?.Cut(plies[0], rails);
        if (Edge is null)
            return;
        foreach (var side in (Direction[])[Direction.Left, Direction.Right])
        {
            ShapedEdge.Cut(plies[0], side, Direction.Front, Edge, (whole.Min.Z, rails));
            ShapedEdge.Cut(plies[^1], side, Direction.Back, Edge, (whole.Min.Z, rails));
        }
    }

    private static void Thin(
        IReadOnlyList<PartDraft> plies,
        Extent whole,
        TaperPlan taper,
        Direction inside,
        Direction behind,
        Length rails
    )
    {
        var length = rails - whole.Min.Z - taper.Below.Length;
        if (length <= Length.Zero)
            throw Refuse("The taper begins below the floor.", taper, "a taper that begins nearer to the rails");
        Direction[] faces = taper.Faces switch
        {
            1 => [inside],
            2 => [inside, behind],
            _ => [inside, behind, inside.Opposite(), behind.Opposite()],
        };
        foreach (var face in faces)
        {
            var off = whole.Size(face.Axis()) - taper.To.Length;
            if (off <= Length.Zero)
                throw Refuse(
                    "The legs are no thicker than they should be at the floor.",
                    taper,
                    "a taper to less than the leg"
                );
            foreach (var ply in plies)
                FaceTaper.Cut(ply, whole, face, Direction.Down, length, taper.Faces == 4 ? off / 2 : off);
        }
    }

    private static CannotBuildException Refuse(string message, TaperPlan taper, string wanted) =>
        new(new InputError(message, taper.Place, wanted));
}
