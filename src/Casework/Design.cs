using Dryfit.Casework.Boards;
using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Faces;
using Dryfit.Casework.Own;
using Dryfit.Casework.Room;
using Dryfit.Casework.Trim;
using Dryfit.Casework.Words;
using Dryfit.Casework.Worktops;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>What is asked for besides the recipe.</summary>
/// <param name="Settings">Parameters set from outside.</param>
/// <param name="Show">The unit to write lengths in; null for the recipe's own.</param>
public sealed record DesignOptions(IReadOnlyList<Setting> Settings, LengthUnit? Show)
{
    public static DesignOptions Plain { get; } = new([], null);

    /// <summary>The files beside the recipe, for the maker's own words; null where there are none to be had.</summary>
    public INeighbourFiles? Files { get; init; }

    /// <summary>Whether the maker's own numbers (<c>as cut</c>) are left out, and every part is as reckoned.</summary>
    public bool AsReckoned { get; init; }

    /// <summary>Numbers from a list of the maker's own, to be tried in place.</summary>
    public IReadOnlyList<CutNumbers> AsListed { get; init; } = [];
}

/// <summary>What a list of the maker's own says of one part or unit; null where it says nothing.</summary>
/// <param name="Name">Its whole name.</param>
/// <param name="Length">Along the grain; of a door from bottom to top.</param>
/// <param name="Width">Across the grain; of a door from left to right.</param>
public sealed record CutNumbers(string Name, Length? Length, Length? Width, Length? Thickness, SourcePlace Place);

/// <summary>The door of the stage: a checked tree becomes a finished piece.</summary>
public static class Design
{
    /// <summary>Checks a recipe and a shop file against their shapes, works out their numbers and builds the piece.</summary>
    /// <param name="recipe">The recipe as read.</param>
    /// <param name="shop">The shop file as read; null for the built-in habits.</param>
    /// <returns>The piece, or every error that was found.</returns>
    public static Result<Piece> Build(Mapping recipe, Mapping? shop, DesignOptions options) =>
        Build(recipe, shop, options, out _);

    /// <summary>The same, giving out besides the names and values met on the way, for saying what was understood.</summary>
    public static Result<Piece> Build(Mapping recipe, Mapping? shop, DesignOptions options, out Scope scope)
    {
        scope = new Scope(UnitOf(recipe));
        ParameterSection.Bind(recipe["parameters"] as Mapping, options.Settings, scope);
        var plain = recipe;
        recipe = (Mapping)
            NamedWords.Put(recipe, RecipeWord.Shape, scope, (name, of) => OwnWords.IsNameOf(plain, name, of));
        var shapeErrors = ShapeCheck.Check(recipe, RecipeWord.Shape).ToList();
        if (shop is not null)
            shapeErrors.AddRange(ShapeCheck.Check(shop, ShopFile.Shape));
        var written = OwnWords.Out(recipe, options.Files, scope);
        if (written.Errors.Count > 0)
            return Failed([.. shapeErrors, .. written.Errors, .. scope.Errors]);
        recipe = written.Recipe;
        foreach (var unknown in NameCheck.Check(recipe, shop))
            scope.Report(unknown);
        if (shapeErrors.Count > 0)
        {
            // What can be told of materials and formulas all the same belongs into the same report.
            new Sections(recipe, scope).Materials();
            scope.LeaveSizesOpen();
            Binding.CheckFormulas(recipe, RecipeWord.Shape, scope);
            scope.WorkOutAll();
            // One place, one error: what the shape refuses need not be refused again when it is worked out.
            var told = shapeErrors.Select(error => error.Place).ToHashSet();
            return Failed([.. shapeErrors, .. scope.Errors.Where(error => !told.Contains(error.Place))]);
        }
        var rules = new Shop(shop, scope.Unit);
        try
        {
            return Build(written, scope, rules, options);
        }
        catch (CannotBuildException cannot)
        {
            // What stopped the build may be told already.
            return Failed([.. scope.Errors.Concat(rules.Errors).Append(cannot.Error).Distinct()]);
        }
    }

    private static Result<Piece> Build(Written written, Scope scope, Shop rules, DesignOptions options)
    {
        var recipe = written.Recipe;
        var sections = new Sections(recipe, scope);
        var measured = sections.Measured();
        var cut = options.AsReckoned ? new AsCut() : sections.Cut();
        foreach (var numbers in options.AsListed)
            cut.Add(numbers);
        var materials = sections.Materials(rules);
        var families = new Families(rules, recipe["hardware"] as Mapping);
        var spaces = RoomWord.Read(recipe, scope);
        var piece = new PieceBuilder(scope, rules, materials, cut) { Families = families, Spaces = spaces };
        var bodies = new Bodies(piece, measured, recipe);
        measured.Know([.. bodies.All.Select(b => b.Name)]);
        bodies.DefineNames();
        RoomWord.DefineNames(scope, spaces);
        written.LendSizes();
        scope.WorkOutAll();
        Binding.CheckFormulas(recipe, RecipeWord.Shape, scope);
        if (scope.Errors.Count + rules.Errors.Count > 0)
            return Failed([.. scope.Errors, .. rules.Errors]);
        var boards = BoardCopies.Read(written, scope, materials);

        if (!cut.IsEmpty)
        {
            // The maker's phrases are read against the names of the piece as reckoned.
            var reckoned = new PieceBuilder(scope, rules, materials, new AsCut())
            {
                Families = families,
                Spaces = spaces,
            };
            Construct(reckoned, recipe, bodies, boards, measured);
            cut.Know([.. NamesOf(reckoned)]);
        }
        Construct(piece, recipe, bodies, boards, measured);
        if (piece.Parts.Count == 0)
            scope.Report(
                new InputError("The piece has no parts.", recipe.Place, "carcases: with a name and a size, or boards:")
            );
        foreach (var (phrase, place) in cut.Unused)
            scope.Report(Unknown(phrase, place, "part or unit", NamesOf(piece)));
        var finishes = sections.Finishes();
        foreach (var (phrase, place) in finishes.Unused(piece.Parts))
            scope.Report(Unknown(phrase, place, "part", piece.Parts.Select(p => p.Name).Concat(FinishPlan.Words)));
        foreach (var (phrase, place) in measured.Unused)
            scope.Report(Unknown(phrase, place, "opening or carcase", piece.Openings.Select(o => o.Name)));
        var names = piece.Groups.ToDictionary(group => group.Id, group => group.Name, StringComparer.Ordinal);
        Front[] fronts = [.. piece.Fronts.Select(front => measured.Found(front, names[front.Group]))];
        foreach (var (phrase, place) in measured.UnusedOfDoors)
            scope.Report(Unknown(phrase, place, "hinged door", piece.Fronts.Select(front => names[front.Group])));
        if (scope.Errors.Count + rules.Errors.Count > 0)
            return Failed([.. scope.Errors, .. rules.Errors]);

        var format = sections.Format(options.Show);
        var grid = GridChoice.For(piece.Parts);
        return new Result<Piece>(
            new Piece
            {
                Name = piece.Groups[0].Name,
                Note = (recipe["note"] as Scalar)?.Text,
                Format = format,
                Grid = grid,
                Groups =
                [
                    .. piece.Groups.Select(g => new Group(g.Id, g.Name, g.Kind, g.Parent?.Id, g.Source, g.Turn)
                    {
                        Sizes = g.Sizes,
                    }),
                ],
                Parts = PieceFinisher.Finish(piece, grid, finishes),
                Joints = piece.Joints,
                Hardware = piece.Hardware,
                Openings = piece.Openings,
                Fronts = fronts,
                Loads = piece.Loads,
                Room = [.. spaces.Values.SelectMany(space => RoomSolids.Of(space, grid))],
                Covers = piece.Covers,
                Banks = piece.Banks,
                Finishes = finishes.Schemes,
                Accepted = sections.Accepted(),
            },
            []
        );
    }

    private static void Construct(
        PieceBuilder piece,
        Mapping recipe,
        Bodies bodies,
        IReadOnlyList<BoardPlan> boards,
        AsMeasured measured
    )
    {
        var root = piece.Group((recipe["piece"] as Scalar)!.Text, GroupKind.Piece, null, recipe.Place);
        var covered = WorktopWord.Covered(recipe);
        var built = new List<(Body Body, GroupDraft Group)>();
        foreach (var said in bodies.All)
        {
            var body = bodies.Settle(said);
            var group = piece.Group(
                said.Name,
                said.IsKept ? GroupKind.KeptCarcase : GroupKind.Carcase,
                root,
                said.Place,
                body.Turn
            );
            group.Measures("width", body.Width);
            group.Measures("height", body.Height);
            group.Measures("depth", body.Depth);
            if (said.IsKept)
                KeptBodyMaker.Make(piece, group, said.Fields, body);
            else
                CarcaseMaker.Make(
                    piece,
                    CarcaseWord.Read(said.Fields, piece, group, body, covered.Contains(said.Name)),
                    measured
                );
            built.Add((body, group));
        }
        Neighbours.Tie(piece, built);
        new WorktopMaker(piece, root, built).Make((recipe["worktops"] as Mapping)?.Entries ?? []);
        BoardMaker.Make(piece, root, built, boards);
        var trim = new TrimMaker(piece, built);
        // Everything else is built from faces as they are by habit.
        foreach (var (said, (body, group)) in bodies.All.Zip(built).Where(pair => !pair.First.IsKept))
            ShowFacesWord.Set(piece, group, said.Fields, body.Envelope);
        trim.Make([.. ((recipe["trim"] as Mapping)?.Entries ?? []).Select(strip => TrimWord.Read(strip, piece))]);
    }

    private static LengthUnit UnitOf(Mapping recipe) =>
        (recipe["units"] as Scalar)?.Text == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;

    private static IEnumerable<string> NamesOf(PieceBuilder piece) =>
        piece.Parts.Select(p => p.Name).Concat(piece.Groups.Select(g => g.Name));

    private static InputError Unknown(string phrase, SourcePlace place, string what, IEnumerable<string> names) =>
        new(
            $"No {what} of the piece is called '{phrase}'.",
            place,
            $"words from the name of a {what}",
            NearestWord.To(phrase, names)
        );

    private static Result<Piece> Failed(IReadOnlyList<InputError> errors) => new(null, InputErrors.InTextOrder(errors));
}
