namespace Dryfit.Findings;

/// <summary>How much a finding matters, in rising order.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Look at it before cutting.</summary>
    Warn,

    /// <summary>Do not cut: it will not go together as drawn.</summary>
    Stop,
}
