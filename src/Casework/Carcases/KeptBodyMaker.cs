using Dryfit.Casework.Building;
using Dryfit.Casework.Feet;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Carcases;

/// <summary>Puts a kept carcase in its place, on its new plinth where the recipe gives it one.</summary>
internal static class KeptBodyMaker
{
    public static void Make(PieceBuilder piece, GroupDraft group, Fields fields, Body body)
    {
        var material = piece.Materials.Get(fields.Text("material")!, fields.PlaceOf("material"));
        var stand = StandWord.Read(fields.Map("stands on"), piece, NewWork(piece, material, fields));
        if (stand is not (NoStand or PlinthPlan or BracketsPlan))
            throw new CannotBuildException(
                new InputError(
                    "A kept carcase is not cut for legs or a toe space.",
                    fields.PlaceOf("stands on"),
                    "stands on: { plinth: 90 mm }"
                )
            );
        var lift = stand.Lift?.Length ?? Length.Zero;
        var old = new KeptMaker(piece, group, material, fields).Make(
            body.Envelope.Min + new Point(default, default, lift)
        );
        IReadOnlyList<PartDraft> under = stand switch
        {
            PlinthPlan plinth => new StandMaker(piece, group, body.Envelope, body.Width, body.Depth).Plinth(plinth),
            BracketsPlan feet => new BracketMaker(piece, group, body.Envelope, body.Depth).Make(feet),
            _ => [],
        };
        Resting.On(piece, under, [old], JointKind.Resting);
    }

    /// <summary>New work under an old piece is made of the new material, unless the recipe has none.</summary>
    private static Material NewWork(PieceBuilder piece, Material old, Fields fields) =>
        piece.Materials.Has("body") ? piece.Materials.Get("body", fields.Place) : old;
}
