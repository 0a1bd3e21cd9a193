using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Room;

/// <summary>
/// Strips that close a carcase against walls and floor that are not straight: each as wide as its worst place, sawn along
/// what was measured, so that it lies against the wall over its whole length.
/// </summary>
internal sealed class Scribes(PieceBuilder piece, CarcasePlan plan, Box box, ScribePlan scribes)
{
    private readonly WallSpace _space = scribes.Space;

    /// <summary>A strip thinner than this splits when it is screwed on: common practice.</summary>
    private static readonly Length Thinnest = Length.FromMillimetres(4);

    public void Make()
    {
        var top = box.BaseZ + box.FrontHeight.Length;
        if (_space.Heights[^1] < top)
            throw Refused(
                $"The {_space.Name} is measured up to {NoRoom.Show(_space.Heights[^1])} and the {plan.Group.Name} is {NoRoom.Show(top)} high.",
                "a width at or over the top of what goes in"
            );
        if (scribes.AtWalls is not null)
        {
            AtWall(Direction.Left, scribes.AtWalls);
            AtWall(Direction.Right, scribes.AtWalls);
        }
        if (scribes.AlongFloor is not null)
            AlongFloor(scribes.AlongFloor);
    }

    private void AtWall(Direction side, Material material)
    {
        var wall = _space.Wall(side);
        var (bottom, top) = (box.BaseZ, box.BaseZ + box.FrontHeight.Length);
        var edge = plan.Envelope.Side(side);
        var heights = _space.Heights.Where(h => h > bottom && h < top).Prepend(bottom).Append(top).ToList();
        var gaps = heights.ConvertAll(h => (wall(h) - edge) * side.Sign());
        var (least, most) = (gaps.Aggregate(Length.Min), gaps.Aggregate(Length.Max));
        if (least < Thinnest)
            throw Refused(
                $"Only {NoRoom.Show(least)} are left between the {plan.Group.Name} and the {Spoken.Of(side)} wall for a scribe.",
                "a narrower carcase, which leaves 10 mm or more on both sides"
            );
        var width = Figure.Given(
            $"widest gap at the {Spoken.Of(side)} wall",
            most,
            new TradeOrigin("from the readings of the wall")
        );
        var holds = FillerMaker.HeldBy(piece, plan, box, side);
        var strip = piece.Board(
            plan.Group,
            $"{Spoken.Of(side)} scribe",
            Role.Filler,
            material,
            Lie.Of(Direction.Up, Direction.Front),
            box.FrontHeight.As("scribe height"),
            width.As("scribe width"),
            new(side == Direction.Left ? edge - most : edge, holds.Reckoned.Min.Y, bottom)
        );
        SawnToRoom.AtWall(strip, _space, side);
        Screws.Between(piece, holds, strip, side.Opposite(), 4);
    }

    /// <summary>A strip before the plinth or the toe board, from wall to wall and down to the floor.</summary>
    private void AlongFloor(Material material)
    {
        var front =
            piece.Parts.FirstOrDefault(p =>
                p.Role == Role.Plinth
                && (p.Group == plan.Group || p.Group.Parent == plan.Group)
                && p.Place.Lie.Shows == Direction.Front
            )
            ?? throw Refused(
                $"The {plan.Group.Name} has no plinth and no toe space for a strip along the floor.",
                "stands on: { plinth: 90 }, or { toe space: 100 }"
            );
        var height = Figure.Given("height over the floor", front.Reckoned.Max.Z, new TradeOrigin("of what it covers"));
        if (_space.Fall is { } fall)
            height += fall;
        var foot = front.Reckoned.Max.Z - height.Length;
        var (left, right) = _space.Tightest(front.Reckoned.Max.Z);
        var play = piece.Shop.Length(RoomRules.FloorStripPlay, "play").Length;
        var x = left + play;
        var length = Figure.Given(
            "from wall to wall less the play",
            right - play - x,
            new TradeOrigin("from the readings of the walls")
        );
        var strip = piece.Board(
            plan.Group,
            "floor scribe",
            Role.Filler,
            material,
            Lie.Of(Direction.Right, Direction.Front),
            length.As("floor scribe length"),
            height.As("floor scribe height"),
            new(x, front.Reckoned.Min.Y - material.Thickness.Length, foot)
        );
        if (_space.Floor is { Points.Count: > 1 } floor)
        {
            var line = floor.Points.Select(p => new OutlineCorner(p.At, _space.FloorAt(p.At))).ToList();
            var below = foot - Length.FromMillimetres(10);
            // Past both ends the floor goes on level.
            line.Insert(0, new(Length.Min(line[0].A, x) - Length.FromMillimetres(10), line[0].B));
            line.Add(new(Length.Max(line[^1].A, right) + Length.FromMillimetres(10), line[^1].B));
            Swept.Cut(
                strip,
                CutKind.Scribe,
                default,
                Direction.Right,
                Direction.Up,
                [.. line, new(line[^1].A, below), new(line[0].A, below)]
            );
        }
        Screws.Between(piece, front, strip, Direction.Back, 3);
    }

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, plan.Group.Source, wanted));
}

/// <summary>What closes a carcase against the room.</summary>
/// <param name="AtWalls">The material of the strips at both walls; null for none.</param>
/// <param name="AlongFloor">The material of the strip along the floor; null for none.</param>
internal sealed record ScribePlan(WallSpace Space, Material? AtWalls, Material? AlongFloor);
