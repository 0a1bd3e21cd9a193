namespace Dryfit.Findings;

/// <summary>What a stage hands on: a value, or the errors that stopped it. All errors of an input come in one go.</summary>
public sealed record Result<T>(T? Value, IReadOnlyList<InputError> Errors)
    where T : class
{
    public bool Ok => Errors.Count == 0 && Value is not null;
}
