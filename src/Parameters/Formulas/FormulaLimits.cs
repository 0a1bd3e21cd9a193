namespace Dryfit.Parameters.Formulas;

/// <summary>How much a formula may ask for. Real ones stay far below; hostile ones end in an error, not in a crash.</summary>
internal static class FormulaLimits
{
    /// <summary>Characters of one formula.</summary>
    public const int Characters = 1000;

    /// <summary>Brackets and ifs inside each other.</summary>
    public const int Nesting = 16;

    /// <summary>Names that lean on names that lean on names.</summary>
    public const int Chain = 64;

    /// <summary>Bits above or below the fraction line: some 150 decimal digits.</summary>
    public const int Bits = 512;
}
