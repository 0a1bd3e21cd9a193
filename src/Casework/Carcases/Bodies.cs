using Dryfit.Casework.Building;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Carcases;

/// <summary>
/// The bodies of the recipe, carcases and kept ones: their sizes as names for formulas, and their places, settled in
/// whatever order they lean on each other.
/// </summary>
internal sealed class Bodies
{
    private readonly PieceBuilder _piece;
    private readonly AsMeasured _measured;
    private readonly List<Said> _said = [];
    private readonly Dictionary<string, Body> _settled = new(StringComparer.Ordinal);
    private readonly List<string> _settling = [];

    /// <summary>A body as the recipe says it.</summary>
    internal sealed record Said(string Name, Fields Fields, SourcePlace Place, bool IsKept)
    {
        public (Figure Width, Figure Height, Figure Depth)? Size { get; set; }
    }

    public Bodies(PieceBuilder piece, AsMeasured measured, Mapping recipe)
    {
        _piece = piece;
        _measured = measured;
        // Kept ones first: the new work goes round them.
        Gather(recipe["kept"] as Mapping, isKept: true);
        Gather(recipe["carcases"] as Mapping, isKept: false);
    }

    /// <summary>In the order in which they are built.</summary>
    public IReadOnlyList<Said> All => _said;

    /// <summary>Makes <c>base.width</c> and the like known to formulas.</summary>
    public void DefineNames()
    {
        foreach (var said in _said)
        {
            var name = FormulaName(said.Name);
            Define("width", s => s.Width);
            Define("height", s => s.Height);
            Define("depth", s => s.Depth);
            void Define(string what, Func<(Figure Width, Figure Height, Figure Depth), Figure> pick) =>
                _piece.Scope.Define($"{name}.{what}", said.Place, () => pick(SizeOf(said)).As($"{said.Name} {what}"));
        }
    }

    /// <summary>How formulas write the name of a carcase: <c>left wing</c> as <c>left_wing</c>.</summary>
    public static string FormulaName(string name) => name.Replace(' ', '_').Replace('-', '_');

    /// <summary>Size and place of a body.</summary>
    public Body Settle(Said said) => Settle(said.Name, said.Place);

    private void Gather(Mapping? bodies, bool isKept)
    {
        foreach (var entry in bodies?.Entries ?? [])
        {
            if (entry.Value is Mapping mapping)
                _said.Add(new Said(entry.Key, new Fields(mapping, _piece.Scope), entry.KeyPlace, isKept));
        }
    }

    private (Figure Width, Figure Height, Figure Depth) SizeOf(Said said) =>
        said.Size ??= said.IsKept ? KeptSize(said) : CarcaseSize(said);

    private (Figure, Figure, Figure) KeptSize(Said said)
    {
        var lift = StandWord.Lift(said.Fields.Map("stands on"), _piece);
        return KeptWord.Size(said.Fields, lift);
    }

    private (Figure, Figure, Figure) CarcaseSize(Said said)
    {
        var size = said.Fields.List("size").OfType<Scalar>().ToList();
        var measured = _measured.Carcase(said.Name);
        return (
            measured?.Width ?? _piece.Scope.Length(size[0], $"{said.Name} width"),
            measured?.Height ?? _piece.Scope.Length(size[1], $"{said.Name} height"),
            measured?.Depth ?? _piece.Scope.Length(size[2], $"{said.Name} depth")
        );
    }

    private Body Settle(string name, SourcePlace place)
    {
        if (_settled.TryGetValue(name, out var settled))
            return settled;
        var said = _said.Find(s => s.Name == name);
        if (said is null)
            throw new CannotBuildException(
                new InputError(
                    $"There is no carcase called '{name}'.",
                    place,
                    $"one of {string.Join(", ", _said.Select(s => s.Name))}",
                    NearestWord.To(name, _said.Select(s => s.Name))
                )
            );
        if (_settling.Contains(name))
            throw new CannotBuildException(
                new InputError(
                    $"The carcases lean on each other in a circle: {string.Join(" -> ", _settling.Append(name))}.",
                    place,
                    "one of them placed by itself"
                )
            );
        _settling.Add(name);
        var (width, height, depth) = SizeOf(said);
        var index = _said.IndexOf(said);
        var fields = said.Fields;
        // Only a body that says nothing of its place leans on the one before it.
        var leans = index > 0 && !PlaceWord.SaysWhere(fields);
        var spot = PlaceWord.Find(
            fields,
            _piece,
            (width.Length, height.Length, depth.Length),
            said.IsKept,
            leans ? Settle(_said[index - 1].Name, said.Place) : null,
            Settle
        );
        _settling.Remove(name);
        var envelope = new Extent(spot.Corner, spot.Corner + new Point(width.Length, depth.Length, height.Length));
        var turn = TurnedWord.Read(fields, envelope, spot.Frame, isFirst: index == 0) ?? spot.Frame;
        return _settled[name] = new Body(name, width, height, depth, envelope, said.IsKept, turn, spot)
        {
            Space = fields.Text("between") ?? (spot.Neighbour is { } below ? _settled[below].Space : null),
            Diagonal = said.IsKept ? null : DiagonalWord.Said(fields),
            IsBolted = fields.YesNo("bolted"),
        };
    }
}
