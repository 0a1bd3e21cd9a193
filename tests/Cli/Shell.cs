namespace Dryfit.Cli.Tests;

/// <summary>A folder of its own to run the program in, taken away afterwards, and what the program said.</summary>
internal sealed class Shell : IDisposable
{
    private readonly Dictionary<string, string> _variables = new(StringComparer.Ordinal);

    public Shell()
    {
        Folder = Directory.CreateTempSubdirectory("dryfit-test-").FullName;
    }

    public string Folder { get; }

    public bool HasColour { get; init; }

    public int Width { get; init; } = 80;

    public string Out { get; private set; } = "";

    public string Error { get; private set; } = "";

    public string this[string variable]
    {
        set => _variables[variable] = value;
    }

    /// <summary>Runs the program; what it printed is in <see cref="Out"/> and <see cref="Error"/>.</summary>
    /// <returns>Its exit code.</returns>
    public int Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = DryfitCommand.Run(
            arguments,
            new Surroundings
            {
                Out = output,
                Error = error,
                OutHasColour = HasColour,
                ErrorHasColour = HasColour,
                Width = Width,
                Folder = Folder,
                Variable = name => _variables.GetValueOrDefault(name),
            }
        );
        (Out, Error) = (output.ToString(), error.ToString());
        return code;
    }

    public string PathOf(string name) => Path.Combine(Folder, name);

    public void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
    }

    public string Read(string name) => File.ReadAllText(PathOf(name));

    public bool Has(string name) => File.Exists(PathOf(name));

    /// <summary>Names of all files and folders at the top of the folder given, hidden ones too, in order.</summary>
    public IReadOnlyList<string> Names(string folder = "") =>
        [
            .. Directory
                .EnumerateFileSystemEntries(PathOf(folder))
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal),
        ];

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
