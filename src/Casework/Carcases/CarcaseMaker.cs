using Dryfit.Casework.Building;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Edges;
using Dryfit.Casework.Facings;
using Dryfit.Casework.Feet;
using Dryfit.Casework.Hanging;
using Dryfit.Casework.Heads;
using Dryfit.Casework.Room;
using Dryfit.Casework.Words;
using Dryfit.Measure;

namespace Dryfit.Casework.Carcases;

/// <summary>Builds one carcase from the inside out: box, stand, front, top.</summary>
internal static class CarcaseMaker
{
    public static void Make(PieceBuilder piece, CarcasePlan outer, AsMeasured measured)
    {
        var plan = FacingMaker.Within(outer);
        if (plan.Canted is not null)
        {
            new CantedMaker(piece, plan, plan.Canted).Make();
            return;
        }
        if (plan.Diagonal is not null)
        {
            new DiagonalMaker(piece, plan, plan.Diagonal).Make(measured);
            return;
        }
        var box = new BoxMaker(piece, plan).Make();
        var front = plan.Front is null
            ? new Region
            {
                Share = Rational.One,
                Filling = Filling.Open,
                Place = plan.Group.Source,
            }
            : RegionWord.Read(plan.Front, piece);
        new FrontLayout(piece, plan, box, measured).Lay(front);
        if (plan.Hangs is not null)
            new HangMaker(piece, plan, plan.Hangs, box).Make();
        if (plan.Filler is not null)
            FillerMaker.Make(piece, plan, plan.Filler, box);
        if (plan.FrontEdge is { } shape)
            FrontEdges.Cut(piece, plan.Group, shape);
        if (plan.GrainRunsOn is { } grain)
            GrainRuns.Set(piece, plan.Group, grain.Across, grain.Place);
        if (plan.Top is not null)
            TopMaker.Make(piece, outer, plan.Top, box);
        if (outer.Facing is { } facing)
            new FacingMaker(piece, outer, facing, box).Make();
        if (plan.Head is { } head)
            HeadMaker.Make(piece, plan, head, box.TopZ);
        StandUp(piece, plan, box);
        if (plan.Scribes is not null)
            new Scribes(piece, plan, box, plan.Scribes).Make();
    }

    private static void StandUp(PieceBuilder piece, CarcasePlan plan, Box box)
    {
        var stand = new StandMaker(piece, plan.Group, plan.Envelope, plan.Width, plan.Depth);
        var under = plan.Stand switch
        {
            LegsPlan legs => stand.Legs(legs, box.Left, box.Right),
            PlinthPlan plinth => stand.Plinth(plinth),
            BracketsPlan brackets => new BracketMaker(piece, plan.Group, plan.Envelope, plan.Depth).Make(brackets),
            _ => [],
        };
        if (plan.Stand is PlantedPlinthPlan planted)
        {
            var round = new SurroundMaker(piece, plan.Group, plan.Envelope, plan.Width, plan.Depth).Make(
                planted.Boards,
                plan.Envelope.Min.Z,
                Direction.Up
            );
            foreach (var board in round.Boards)
                planted.Arch?.Cut(board);
        }
        var above = piece.Parts.Where(p => BelongsTo(p, plan.Group) && !under.Contains(p)).ToList();
        Resting.On(piece, under, above, JointKind.Screwed);
    }

    private static bool BelongsTo(PartDraft part, GroupDraft group) =>
        part.Group == group || (part.Group.Parent == group && part.Group.Kind == GroupKind.FaceFrame);
}
