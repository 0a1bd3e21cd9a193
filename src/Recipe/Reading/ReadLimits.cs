namespace Dryfit.Recipe;

/// <summary>How much a recipe or shop file may hold. Real ones stay far below; a hostile one is refused at once.</summary>
public static class ReadLimits
{
    /// <summary>1 MiB.</summary>
    public const int Bytes = 1 << 20;

    /// <summary>Lists and keys inside each other.</summary>
    public const int Depth = 64;

    /// <summary>Values, lists and words together.</summary>
    public const int Nodes = 100_000;
}
