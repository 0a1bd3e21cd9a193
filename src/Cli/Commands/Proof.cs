using Dryfit.Findings;
using Dryfit.Mending;
using Dryfit.Parameters;

namespace Dryfit.Cli;

/// <summary>What every command does that reads a recipe: read, build, and say what is wrong with the input.</summary>
internal sealed class Proof(Surroundings surroundings)
{
    /// <summary>Stands as the file in places of values given by <c>--set</c>.</summary>
    private const string SetFile = "--set";

    /// <summary>The piece with its report, or null where the input is wrong; that was said then.</summary>
    /// <param name="request">What is asked for.</param>
    /// <param name="json">Whether errors are a result too, as JSON.</param>
    /// <param name="code">What to leave with where there is no piece.</param>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public ProvedPiece? Of(Request request, bool json, out int code)
    {
        var (recipe, shop) = Read(request);
        var beside = new BesideRecipe(recipe, surroundings);
        var proved = Pipeline.Prove(recipe, shop, request, beside);
        code = proved.Ok ? ExitCode.Fine : Refuse(proved.Errors, All(recipe, shop, beside), json);
        return proved.Ok ? proved.Value : null;
    }

    /// <summary>The same without a word where the piece cannot be built: it is only tried.</summary>
    public ProvedPiece? Try(Request request)
    {
        var (recipe, shop) = Read(request);
        return Pipeline.Prove(recipe, shop, request, new BesideRecipe(recipe, surroundings)).Value;
    }

    /// <summary>The same with what would mend its findings.</summary>
    /// <param name="texts">The recipe and the files beside it that it is built from.</param>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public ProvedPiece? Mended(Request request, bool json, out IReadOnlyList<SourceText> texts, out int code)
    {
        var (recipe, shop) = Read(request);
        var beside = new BesideRecipe(recipe, surroundings);
        var proved = Pipeline.Mend(recipe, shop, request, beside, out texts);
        code = proved.Ok ? ExitCode.Fine : Refuse(proved.Errors, All(recipe, shop, beside), json);
        return proved.Ok ? proved.Value : null;
    }

    /// <summary>What was understood of the recipe's lengths and numbers; what is wrong with the rest is said.</summary>
    /// <param name="code">What to leave with.</param>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public IReadOnlyList<Understood> Understand(Request request, out int code)
    {
        var (recipe, shop) = Read(request);
        var beside = new BesideRecipe(recipe, surroundings);
        var piece = Pipeline.Build(recipe, shop, request, beside, out var understood);
        code = piece.Ok ? ExitCode.Fine : Refuse(piece.Errors, All(recipe, shop, beside), json: false);
        return understood;
    }

    private (InputFile Recipe, InputFile? Shop) Read(Request request) =>
        (
            InputFile.Read(request.Recipe, "recipe", surroundings),
            request.Shop is null ? null : InputFile.Read(request.Shop, "shop file", surroundings)
        );

    /// <summary>All files read, to show lines of them.</summary>
    private static IReadOnlyList<InputFile> All(InputFile recipe, InputFile? shop, BesideRecipe beside) =>
        [recipe, .. shop is null ? (InputFile[])[] : [shop], .. beside.Read];

    private int Refuse(IReadOnlyList<InputError> errors, IReadOnlyList<InputFile> files, bool json)
    {
        Say(errors, files, json);
        // A value that does not suit the recipe is a slip on the command line.
        return errors.All(error => error.Place?.File == SetFile) ? ExitCode.Usage : ExitCode.InvalidInput;
    }

    /// <summary>Says what is wrong with the files read.</summary>
    public void Say(IReadOnlyList<InputError> errors, IReadOnlyList<InputFile> files, bool json)
    {
        foreach (var error in errors)
            surroundings.Error.Write(Text(error, files));
        if (json)
            ErrorsJson.Write(errors, surroundings.Out);
    }

    private string Text(InputError error, IReadOnlyList<InputFile> files) =>
        error.Place?.File == SetFile
            ? $"{DryfitCommand.Name}: {SetFile}: " + ErrorText.Write(error with { Place = null }, null)
            : ErrorText.Write(
                error,
                files.FirstOrDefault(file => file.Name == error.Place?.File)?.Text,
                surroundings.ErrorHasColour
            );
}
