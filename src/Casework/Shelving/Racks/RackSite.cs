using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>A bay that gets a rack, and what racks of all sorts ask of it.</summary>
internal sealed record RackSite(
    PieceBuilder Piece,
    CarcasePlan Plan,
    Cell Bay,
    RackPlan Rack,
    Figure InsideDepth,
    Figure? Doors
)
{
    public Material Material => Rack.Material ?? Plan.Body;

    public string Prefix => Bay.Bay.Length == 0 ? "" : $"{Bay.Bay} ";

    /// <summary>From the front of the inside to the front of the rack.</summary>
    public Figure Setback
    {
        get
        {
            var setback = Piece.Shop.Length(ShelfRules.ShelfSetback, "setback");
            return Doors is null ? setback : setback + Doors;
        }
    }

    public Length FrontY => Bay.Inside.Min.Y + Setback.Length;

    public Figure Rule(Rule rule, string name) => Piece.Shop.Length(rule, name);

    public Figure Pitch(Rule rule) => Rack.Pitch ?? Piece.Shop.Length(rule, "pitch");

    /// <summary>How many fit side by side, each taking a pitch.</summary>
    /// <param name="more">What the first of them takes more than a pitch.</param>
    public int Across(Length pitch, Length more, string what)
    {
        var count = (int)((Bay.InsideWidth.Length - more) / pitch).Floor();
        return count > 0
            ? count
            : throw Refused(
                $"Not one of the {what} fits into {NoRoom.Show(Bay.InsideWidth.Length)}.",
                "a wider bay, or a smaller pitch"
            );
    }

    /// <summary>A rail from upright to upright, screwed through both.</summary>
    /// <param name="shows">The direction that its show face looks.</param>
    public PartDraft Rail(string name, Direction shows, Figure width, Length y, Length z)
    {
        var rail = Piece.Board(
            Plan.Group,
            $"{Prefix}{name}",
            Role.RackRail,
            Material,
            Lie.Of(Direction.Right, shows),
            Bay.InsideWidth.As("rail length"),
            width,
            new(Bay.Inside.Min.X, y, z),
            Rack.Place
        );
        Screws.Between(Piece, Bay.InsideLeft, rail, Direction.Left, 1);
        Screws.Between(Piece, Bay.InsideRight, rail, Direction.Right, 1);
        return rail;
    }

    /// <summary>Refuses a rack that reaches further back than the bay.</summary>
    public void NeedsDepth(Length depth, string what)
    {
        if (Bay.Inside.Depth < depth)
            throw Refused(
                $"The {what} wants a bay {NoRoom.Show(depth)} deep and has {NoRoom.Show(Bay.Inside.Depth)}.",
                "a deeper carcase"
            );
    }

    /// <summary>Refuses rows that do not fit one above the other.</summary>
    public void NeedsHeight(Length each, Length more, string what)
    {
        var rows = (int)((Bay.Inside.Height - more) / each).Floor();
        if (rows < Rack.Rows)
            throw Refused(
                $"{Rack.Rows} rows of {what}, {NoRoom.Show(each)} each, do not fit into a bay {NoRoom.Show(Bay.Inside.Height)} high.",
                rows > 0 ? $"{rows} or fewer" : "a higher bay"
            );
    }

    /// <summary>Tells what the rack holds when it is full.</summary>
    public void Holds(string name, string what, int count, int gramsEach, Length top, IEnumerable<PartDraft> parts) =>
        Piece.Add(
            new Load(
                Plan.Group.Full($"{Prefix}{name}"),
                what,
                count,
                gramsEach,
                top,
                Piece.Shop.Length(RackRules.Reach).Length,
                [.. parts.Select(p => p.Id)],
                "from memory",
                Rack.Place
            )
        );

    public CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, Rack.Place, wanted));
}
