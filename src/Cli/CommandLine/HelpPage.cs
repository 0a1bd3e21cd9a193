namespace Dryfit.Cli;

/// <summary>What the help of one command says besides its arguments and options, which are listed from the parser's own.</summary>
/// <param name="About">What it does, in a few sentences.</param>
/// <param name="Examples">Command lines that can be typed as they stand, with what each does.</param>
/// <param name="Notes">What is worth knowing besides: exit codes, files.</param>
internal sealed record HelpPage(string About, IReadOnlyList<Example> Examples, IReadOnlyList<HelpNote> Notes);

/// <summary>A command line and what it does.</summary>
internal sealed record Example(string Line, string Does);

/// <summary>A short list under a heading.</summary>
internal sealed record HelpNote(string Heading, IReadOnlyList<(string Left, string Right)> Rows);
