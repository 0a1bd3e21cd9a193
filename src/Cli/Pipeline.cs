using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Mending;
using Dryfit.Outputs;
using Dryfit.Outputs.CutList;
using Dryfit.Outputs.Documents;
using Dryfit.Outputs.FrontView;
using Dryfit.Outputs.Glb;
using Dryfit.Outputs.PartsList;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Cli;

/// <summary>The house from end to end: text in, a proved piece out, files from it.</summary>
internal static class Pipeline
{
    /// <summary>Reads, builds and inspects; all errors of both files come in one go.</summary>
    public static Result<ProvedPiece> Prove(InputFile recipe, InputFile? shop, Request request, INeighbourFiles files)
    {
        var design = Build(recipe, shop, request, files, out _);
        return design.Ok
            ? new(new ProvedPiece(design.Value!, Inspector.Inspect(design.Value!)), [])
            : new(null, design.Errors);
    }

    /// <summary>Reads, builds and inspects, and works out which numbers of the recipe would mend what was found.</summary>
    /// <param name="texts">The recipe and the files beside it, with all edits made: what to write where they are wanted.</param>
    public static Result<ProvedPiece> Mend(
        InputFile recipe,
        InputFile? shop,
        Request request,
        INeighbourFiles files,
        out IReadOnlyList<SourceText> texts
    )
    {
        var remembered = new RememberedFiles(files);
        var piece = Build(recipe, shop, request, remembered, out var understood);
        texts =
        [
            new(recipe.Name, recipe.Bytes),
            .. remembered.All.Select(file => new SourceText(file.Name, file.Bytes)),
        ];
        if (!piece.Ok)
            return new(null, piece.Errors);
        var report = Inspector.Inspect(piece.Value!);
        var job = new Job
        {
            Texts = texts,
            Understood = understood,
            Now = new(piece.Value!, report),
            Build = attempt => Try(attempt, shop, request, remembered),
        };
        return new(new ProvedPiece(piece.Value!, Mender.Mend(job)), []);
    }

    /// <summary>The piece from texts that differ from the files; null where they cannot be built.</summary>
    private static Tried? Try(Attempt attempt, InputFile? shop, Request request, RememberedFiles files)
    {
        var recipe = new InputFile(attempt.Texts[0].Name, attempt.Texts[0].Bytes);
        var beside = attempt.Texts.Skip(1).ToDictionary(text => text.Name, text => text.Bytes, StringComparer.Ordinal);
        var asked = request with { AsReckoned = attempt.AsReckoned };
        var proved = Prove(recipe, shop, asked, files.With(beside)).Value;
        return proved is null ? null : new Tried(proved.Piece, proved.Report);
    }

    /// <summary>Reads and builds.</summary>
    /// <param name="files">The files beside the recipe, for the maker's own words.</param>
    /// <param name="understood">Every length and number of the recipe as it was understood, those without errors.</param>
    public static Result<Piece> Build(
        InputFile recipe,
        InputFile? shop,
        Request request,
        INeighbourFiles files,
        out IReadOnlyList<Understood> understood
    )
    {
        understood = [];
        var tree = RecipeReader.Read(recipe.Name, recipe.Bytes);
        var rules = shop is null ? null : RecipeReader.Read(shop.Name, shop.Bytes);
        IReadOnlyList<InputError> misread = [.. tree.Errors, .. rules?.Errors ?? []];
        // A tree that is whole in spite of errors is looked through all the same, so that the rest of them show too.
        if (tree.Value is null || (rules is not null && rules.Value is null))
            return new(null, misread);

        var design = Design.Build(tree.Value, rules?.Value, Options(request, files), out var scope);
        understood = Understood.List(scope);
        return misread.Count == 0 ? design : new(null, [.. misread, .. design.Errors]);
    }

    /// <summary>Every file there is of a piece, or what is wrong with the maker's own template.</summary>
    /// <param name="cutList">The maker's own template of the cut list; null for the built-in one.</param>
    public static Result<IReadOnlyList<OutputFile>> Outputs(ProvedPiece proved, InputFile? cutList)
    {
        var (piece, report) = proved;
        var template = cutList is null ? null : new DocumentTemplate(cutList.Name, cutList.Text);
        Result<OutputFile>? page = null;
        // Side by side, each into its own place: what comes out does not depend on which is done first.
        Func<OutputFile?>[] writers =
        [
            () => GlbWriter.Write(piece),
            () => PartsCsv.Write(piece),
            () => PartsJson.Write(piece),
            () => (page = CutListHtml.Write(piece, report, template)).Value,
            () => FrontSvg.Write(piece, report),
            () => FindingsJson(proved),
        ];
        var files = new OutputFile?[writers.Length];
        Parallel.For(0, writers.Length, n => files[n] = writers[n]());
        return page!.Value is null ? new(null, page.Errors) : new([.. files.OfType<OutputFile>()], []);
    }

    public static OutputFile FindingsJson(ProvedPiece proved) =>
        Dryfit.Outputs.Findings.FindingsJson.Write(proved.Piece, proved.Report);

    private static DesignOptions Options(Request request, INeighbourFiles files) =>
        new([.. request.Set.Select(set => new Setting(set.Name, set.Value))], request.Units)
        {
            Files = files,
            AsReckoned = request.AsReckoned,
            AsListed = request.AsListed,
        };
}

/// <summary>A piece with what the checks have to say about it.</summary>
internal sealed record ProvedPiece(Piece Piece, Report Report);
