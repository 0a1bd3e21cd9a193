using System.Text.Encodings.Web;
using System.Text.Unicode;
using Scriban;
using Scriban.Functions;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Dryfit.Outputs.Documents;

/// <summary>
/// Runs templates within bounds: what an expression gives is text and comes out encoded for HTML, a name that is not
/// there is an error, nothing is read from disk, and neither loops nor output grow without end.
/// </summary>
internal sealed class HtmlContext : TemplateContext
{
    private const int MostLoops = 1_000_000;
    private const int MostDepth = 50;
    private const int MostOutput = 64 * 1024 * 1024;

    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    public HtmlContext(ScriptObject model)
        : base(Builtins(), StringComparer.Ordinal)
    {
        LoopLimit = MostLoops;
        LoopLimitQueryable = MostLoops;
        RecursiveLimit = MostDepth;
        ObjectRecursionLimit = MostDepth;
        LimitToString = MostOutput;
        OutputLimit = MostOutput;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        OnStringLimit = ScriptLimitBehavior.Throw;
        RegexTimeOut = TimeSpan.FromSeconds(1);
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        EnableRelaxedIndexerAccess = false;
        NewLine = "\n";
        PushGlobal(model);
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is Markup markup)
            return Write(markup.Html);
        return textAsObject is null ? this : Write(Encoder.Encode(ObjectToString(textAsObject) ?? ""));
    }

    /// <summary>Only what a page needs: nothing that reads files, looks at the clock, draws lots, or searches without end.</summary>
    private static ScriptObject Builtins()
    {
        var math = new MathFunctions();
        math.Remove("random");
        math.Remove("uuid");
        return new(StringComparer.Ordinal)
        {
            ["array"] = new ArrayFunctions(),
            ["math"] = math,
            ["string"] = new StringFunctions(),
        };
    }
}

/// <summary>HTML made by ourselves, which goes onto a page as it is.</summary>
internal sealed record Markup(string Html)
{
    /// <summary>As text it is nothing special: it is encoded like any other.</summary>
    public override string ToString() => Html;
}
