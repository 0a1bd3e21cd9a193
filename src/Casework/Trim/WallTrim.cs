using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Room;
using Dryfit.Casework.Shaping;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Trim;

/// <summary>
/// Strips on the front of a carcase that reach out to a wall or up to the ceiling: screwed to the carcase, sawn to the room
/// as it was measured. The one under the ceiling runs through; those at the walls stand under it (common practice).
/// </summary>
internal sealed class WallTrim(PieceBuilder piece, Body body, GroupDraft group)
{
    /// <summary>What of a room a strip may reach to, as a recipe calls it.</summary>
    public static IReadOnlyList<string> Names { get; } = ["left wall", "right wall", "ceiling"];

    /// <summary>What of a room a strip may reach to, by its name, and on which side of a carcase it is.</summary>
    public static Direction? SideOf(string name) =>
        name switch
        {
            "left wall" => Direction.Left,
            "right wall" => Direction.Right,
            "ceiling" => Direction.Up,
            _ => null,
        };

    /// <param name="side">The side of the carcase on which its gap to the room is.</param>
    /// <param name="others">All strips of the recipe.</param>
    /// <param name="made">The strips made so far, by their names.</param>
    public PartDraft Make(
        TrimPlan plan,
        Direction side,
        IReadOnlyList<TrimPlan> others,
        IReadOnlyDictionary<string, PartDraft> made
    )
    {
        if (body.Space is not { } name || body.Turn is not null)
            throw Refuse(
                plan,
                $"The {body.Name} stands square in no space between walls: nothing was measured for a strip.",
                "between: with the name of a space of the room, for it or for what it stands on"
            );
        var space = piece.Spaces[name];
        if (side == Direction.Up && space.Ceiling is null)
            throw Refuse(plan, $"The ceiling of the {name} is missing.", "ceiling: its readings, in the room");
        var bed = StripBed.Of(piece, group, body.Envelope, side);
        if (bed.Parts.Count == 0)
            throw Refuse(
                plan,
                $"The {body.Name} has no edge there for a strip to lie on.",
                "a carcase without a top that overhangs"
            );
        var run = side == Direction.Up ? Axis.X : Axis.Z;
        var (from, to) = bed.Course(run);
        var ceiling = Strips(Direction.Up).Select(other => made.GetValueOrDefault(other.Name)).FirstOrDefault();
        if (side != Direction.Up && ceiling is not null)
            to = Length.Min(to, ceiling.Reckoned.Min.Z);
        if (run == Axis.Z && space.Heights[^1] < to)
            throw Refuse(
                plan,
                $"The {space.Name} is measured up to {NoRoom.Show(space.Heights[^1])} and the {plan.Name} goes up to {NoRoom.Show(to)}.",
                "a width at or over its top"
            );
        var step = piece.Scope.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);
        var course = (from, to);
        if (side == Direction.Up)
        {
            var low = body.Envelope.Max.Z - (plan.Width ?? plan.Lap).Length;
            (from, to) = (End(Direction.Left, from), End(Direction.Right, to));

            // Where a strip stands at the wall, this one runs on to the wall.
            Length End(Direction end, Length edge) =>
                Strips(end).Any() ? Furthest(space, end, low, space.Ceiling!.Most.Length) : edge;
        }
        // Up to a whole mark: what is too much is sawn off.
        var gap = Gap(plan, space, side, from, to).CeilingTo(step);
        var width = (plan.Width ?? gap + plan.Lap).As("strip width");
        if (width.Length <= gap.Length)
            throw Refuse(
                plan,
                $"The {plan.Name} is {NoRoom.Show(width.Length)} wide, and its gap is up to {NoRoom.Show(gap.Length)}.",
                "a wider strip, or none said: it is then as wide as the gap and a lap"
            );
        var outer = body.Envelope.Side(side) + (gap.Length * side.Sign());
        var length = Figure.Given("course of what it lies on", to - from, new WrittenOrigin(plan.Place));
        var at = body
            .Envelope.Min.With(run, from)
            .With(side.Axis(), Length.Min(outer, outer - (width.Length * side.Sign())))
            .Moved(Direction.Front, plan.Material.Thickness.Length);
        var strip = piece.Board(
            piece.Groups[0],
            plan.Name,
            Role.CoverStrip,
            plan.Material,
            Lie.Of(Directions.Along(run, 1), Direction.Front),
            (side == Direction.Up ? length.CeilingTo(step) : length).As("strip length"),
            width,
            at,
            plan.Place
        );
        StripBed.RefuseClash(piece, strip, plan.Place);
        if (plan.Edge is { } edge)
        {
            if (
                side == Direction.Up
                && Strips(Direction.Left).Concat(Strips(Direction.Right)).FirstOrDefault() is { } other
            )
                throw Refuse(
                    plan,
                    $"The {other.Name} would end against the shaped edge of the {plan.Name}, and leave a hole there.",
                    "a square edge under the ceiling, where strips at the walls meet it"
                );
            ShapedEdge.Cut(strip, side.Opposite(), Direction.Front, edge);
        }
        Saw(strip, space, side);
        StripBed.Lay(piece, strip, group);
        piece.Add(
            new Cover(strip.Id, bed.Ids, [], side, plan.Lap.Length, plan.Place)
            {
                Course = course,
                Wall = $"{space.Name} {(side == Direction.Up ? "ceiling" : $"{Spoken.Of(side)} wall")}",
            }
        );
        return strip;

        IEnumerable<TrimPlan> Strips(Direction at) =>
            others.Where(other =>
                (other.One == body.Name && SideOf(other.Other) == at)
                || (other.Other == body.Name && SideOf(other.One) == at)
            );
    }

    /// <summary>The widest place of the gap between the carcase and the room.</summary>
    private Figure Gap(TrimPlan plan, WallSpace space, Direction side, Length from, Length to)
    {
        var edge = body.Envelope.Side(side);
        Func<Length, Length> room = side == Direction.Up ? x => space.Ceiling!.At(x) : space.Wall(side);
        var places = (side == Direction.Up ? space.Ceiling!.Points.Select(p => p.At) : space.Heights)
            .Where(place => place > from && place < to)
            .Prepend(from)
            .Append(to);
        var gaps = places.Select(place => (room(place) - edge) * side.Sign()).ToList();
        if (gaps.Min() < Length.Zero)
            throw Refuse(
                plan,
                $"There is no gap between the {body.Name} and the {NameOf(side)}: they are in each other's way.",
                "a smaller carcase"
            );
        return Figure.Given(
            $"widest gap at the {NameOf(side)}",
            gaps.Max(),
            new TradeOrigin("from the readings of the room")
        );
    }

    private static void Saw(PartDraft strip, WallSpace space, Direction side)
    {
        if (side != Direction.Up)
        {
            SawnToRoom.AtWall(strip, space, side);
            return;
        }
        SawnToRoom.UnderCeiling(strip, space);
        foreach (var end in (Direction[])[Direction.Left, Direction.Right])
            SawnToRoom.AtWall(strip, space, end);
    }

    /// <summary>The furthest out that a wall stands between two heights.</summary>
    private static Length Furthest(WallSpace space, Direction wall, Length low, Length high)
    {
        var places = space.Heights.Where(h => h > low && h < high).Append(low).Append(high).Select(space.Wall(wall));
        return wall == Direction.Left ? places.Min() : places.Max();
    }

    private static string NameOf(Direction side) => side == Direction.Up ? "ceiling" : $"{Spoken.Of(side)} wall";

    private static CannotBuildException Refuse(TrimPlan plan, string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));
}
