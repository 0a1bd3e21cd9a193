using System.Text;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Kit;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Slips;

/// <summary>A recipe whose piece raises nothing, under parameters drawn by a seed: what slips are made on.</summary>
internal sealed class SoundPiece
{
    private readonly string _path;
    private readonly Lazy<NearFaces> _faces;
    private readonly Lazy<IReadOnlyList<string>> _notes;

    private SoundPiece(string path, string text, IReadOnlyList<Setting> drawn, Mapping recipe, Piece piece)
    {
        _path = path;
        Text = text;
        Drawn = drawn;
        Recipe = recipe;
        Piece = piece;
        _faces = new(() => new NearFaces(piece));
        _notes = new(() => [.. Inspector.Inspect(piece).Findings.Select(KeyOf)]);
    }

    /// <summary>The name of its file without the ending.</summary>
    public string Name => Path.GetFileName(_path)[..^".dryfit.yaml".Length];

    public string Text { get; }

    /// <summary>The parameters that were set; none for the recipe as it stands.</summary>
    public IReadOnlyList<Setting> Drawn { get; }

    public Mapping Recipe { get; }

    public Piece Piece { get; }

    public bool IsInInches => Piece.Format.Unit == LengthUnit.Inch;

    /// <summary>Which faces of its parts face each other, and how far apart.</summary>
    public NearFaces Faces => _faces.Value;

    /// <summary>The recipe with its parameters, as one would say it to a colleague.</summary>
    public string Said =>
        Drawn.Count == 0 ? Name : $"{Name} with {string.Join(", ", Drawn.Select(d => $"{d.Name} = {d.Text}"))}";

    /// <summary>
    /// Builds a recipe; null where these parameters cannot be built. Whether it is sound is the caller's question.
    /// </summary>
    /// <param name="seed">0 for the recipe as it stands.</param>
    public static SoundPiece? Of(string path, int seed)
    {
        var text = File.ReadAllText(path);
        var recipe = Read(path, text);
        IReadOnlyList<Setting> drawn = seed == 0 ? [] : ParameterDraw.From(recipe, seed);
        var built = Design.Build(recipe, null, new DesignOptions(drawn, null) { Files = RecipeFiles.Beside(path) });
        return built.Value is { } piece ? new(path, text, drawn, recipe, piece) : null;
    }

    /// <summary>The same recipe under other parameters; null where these cannot be built.</summary>
    public SoundPiece? DrawnBy(int seed) => Of(_path, seed);

    /// <summary>The same piece from a changed text; null where that cannot be built.</summary>
    public Piece? Rebuilt(string text)
    {
        var options = new DesignOptions(Drawn, null) { Files = RecipeFiles.Beside(_path) };
        return RecipeReader.Read(_path, Encoding.UTF8.GetBytes(text)).Value is { } recipe
            ? Design.Build(recipe, null, options).Value
            : null;
    }

    /// <summary>What the sound piece tells all the same: notes, and what its maker accepts.</summary>
    public IReadOnlyList<string> Notes => _notes.Value;

    /// <summary>What makes a finding the same as another.</summary>
    public static string KeyOf(Finding finding) => $"{finding.Kind.Id} {string.Join(' ', finding.Parts)}";

    /// <summary>What keeps a maker from cutting, or will look or work badly, and is not accepted.</summary>
    public static IReadOnlyList<Finding> Faults(Report report) =>
        [.. report.Findings.Where(f => f.Kind.Severity != Severity.Note && f.AcceptedBecause is null)];

    private static Mapping Read(string path, string text) =>
        RecipeReader.Read(path, Encoding.UTF8.GetBytes(text)).Value
        ?? throw new InvalidOperationException($"{path} cannot be read.");
}
