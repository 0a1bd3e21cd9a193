namespace Dryfit.Reference.Tests.Published;

/// <summary>One published value with its source, as it stands in a file of <c>Data</c>.</summary>
/// <param name="Value">As printed: a fraction, a decimal, a range.</param>
/// <param name="Inputs">The formula or inputs the source gives.</param>
/// <param name="Status">SEEN, MEMORY or COMPUTED; see the readme of <c>Data</c>.</param>
public sealed record PublishedRow(
    string Id,
    string Item,
    string Quantity,
    string Value,
    string Unit,
    string Inputs,
    string Source,
    string Status
)
{
    /// <summary>For test names and failure messages.</summary>
    public override string ToString() => $"{Id} {Item}: {Quantity} {Value} {Unit} [{Status}; {Source}]";
}
