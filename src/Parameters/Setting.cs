namespace Dryfit.Parameters;

/// <summary>A parameter's value given outside the recipe: <c>--set width=48</c>.</summary>
/// <param name="Name">The parameter.</param>
/// <param name="Text">Its value as written.</param>
public sealed record Setting(string Name, string Text);
