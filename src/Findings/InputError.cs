namespace Dryfit.Findings;

/// <summary>
/// Something in a recipe or shop file that cannot be understood or built. It stops the run (exit code 3) and says
/// where, what was found, what was expected, and the nearest thing that would have been right.
/// </summary>
/// <param name="Message">One sentence in the shop's words, without the place: "There is no material called 'mapel'."</param>
/// <param name="Place">Where in the text; null only where the whole file is meant.</param>
/// <param name="Expected">What would be right here, as a phrase: "a length such as 3 1/2".</param>
/// <param name="Suggestion">The nearest right word or value, if there is one: "maple".</param>
public sealed record InputError(string Message, SourcePlace? Place, string? Expected = null, string? Suggestion = null);
