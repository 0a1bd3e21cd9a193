using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Joinery;

/// <summary>An end butted against a face and held by glued dowels: a hole in each part for every dowel.</summary>
internal static class Dowels
{
    /// <summary>Wood left behind the bottom of a hole in a face.</summary>
    private static readonly Length Behind = Length.FromMillimetres(3);

    /// <summary>Bores both parts and ties them.</summary>
    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="spread">The axis along which the dowels stand in a row.</param>
    /// <param name="count">How many; they share the width evenly.</param>
    public static Joint Between(
        PieceBuilder piece,
        PartDraft receives,
        PartDraft enters,
        Direction into,
        Axis spread,
        int count
    ) => Between(piece, [receives], receives, enters, into, spread, count, receives.Extent.Size(into.Axis()) - Behind);

    /// <summary>The same into a part glued up of several: every one that a hole reaches is bored.</summary>
    /// <param name="glued">All of them.</param>
    /// <param name="meets">The one that the entering part lies against.</param>
    /// <param name="deepest">The deepest hole they can take.</param>
    /// <remarks>Half of a dowel goes into each part; where the face is too thin, more of it goes into the end.</remarks>
    public static Joint Between(
        PieceBuilder piece,
        IReadOnlyList<PartDraft> glued,
        PartDraft meets,
        PartDraft enters,
        Direction into,
        Axis spread,
        int count,
        Length deepest
    )
    {
        var diameter = piece.Shop.Length(JointRules.DowelDiameter).Length;
        var length = piece.Shop.Length(JointRules.DowelLength).Length;
        var room = piece.Shop.Length(JointRules.DowelRoom).Length;
        var inFace = Length.Min(length / 2, deepest - room);
        if (inFace < diameter)
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for dowels between the {enters.Name} and the {meets.Name}.",
                    enters.Source,
                    "thicker parts, thinner dowels in the shop file, or another joint"
                )
            );
        var joint = piece.NextJointId;
        var face = Meeting.Centre(enters.Reckoned, into);
        var (from, to) = Meeting.Shared(meets, enters, spread);
        var places = Stagger.Places(
            glued,
            from,
            to,
            count,
            place => HoleBox(face.With(spread, place), into, diameter, inFace + room)
        );
        foreach (var place in places)
        {
            var at = face.With(spread, place);
            foreach (var part in glued)
                BoreFace(part, at, into, diameter, inFace + room, joint);
            enters.Bore(
                CutKind.Bore,
                at.With(into.Axis(), enters.Extent.Side(into)),
                into.Opposite(),
                diameter,
                length - inFace + room,
                joint
            );
        }
        piece.Fit($"dowel {piece.Shop.DowelText}", face, count, enters, meets);
        return piece.Join(JointKind.Dowel, meets, enters, into);
    }

    /// <summary>Bores what of a hole lies in one part: from its own face where the hole comes through another before it.</summary>
    private static void BoreFace(
        PartDraft part,
        Point mouth,
        Direction into,
        Length diameter,
        Length depth,
        string joint
    )
    {
        var own = part.Extent.Side(into.Opposite());
        var before = (own - mouth[into.Axis()]) * into.Sign();
        var start = before > Length.Zero ? mouth.With(into.Axis(), own) : mouth;
        var left = before > Length.Zero ? depth - before : depth;
        if (left > Length.Zero && Extent.Shared(HoleBox(start, into, diameter, left), part.Extent) is not null)
            part.Bore(CutKind.Bore, start, into, diameter, left, joint);
    }

    /// <summary>The box round a hole.</summary>
    public static Extent HoleBox(Point mouth, Direction into, Length diameter, Length depth)
    {
        var box = new Extent(mouth, mouth).Grown(into, depth);
        foreach (var side in Enum.GetValues<Direction>())
        {
            if (side.Axis() != into.Axis())
                box = box.Grown(side, diameter / 2);
        }
        return box;
    }
}
