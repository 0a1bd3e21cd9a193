using Dryfit.Parameters.Formulas;

namespace Dryfit.Parameters;

/// <summary>Which names formulas can use.</summary>
public static class FormulaNames
{
    /// <summary>Letters, digits, <c>_</c> and dots, beginning with a letter or <c>_</c>, and no word of the formulas' own.</summary>
    public static bool IsName(string name) =>
        name.Length > 0
        && Lexer.IsNameStart(name[0])
        && name.All(Lexer.IsNamePart)
        && !name.EndsWith('.')
        && !Functions.IsReserved(name);

    /// <summary>Words that mean something in formulas: units, functions, <c>if</c>.</summary>
    public static bool IsReserved(string name) => Functions.IsReserved(name);

    /// <summary>The nearest name that can be used: <c>side bay</c> becomes <c>side_bay</c>; null where there is none.</summary>
    public static string? Mend(string name)
    {
        var mended = new string([.. name.Trim().Select(c => char.IsLetterOrDigit(c) ? c : '_')]);
        return IsName(mended) ? mended : null;
    }
}
