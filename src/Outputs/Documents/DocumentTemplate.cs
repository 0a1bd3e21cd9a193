using System.Reflection;
using System.Text;
using Dryfit.Findings;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Dryfit.Outputs.Documents;

/// <summary>A page's template: the tool's own or the maker's.</summary>
/// <param name="Name">The file as the user named it; errors carry it.</param>
/// <param name="Text">The whole template, in the Scriban language.</param>
public sealed record DocumentTemplate(string Name, string Text)
{
    /// <summary>A template that comes with the tool, by its file name in <c>templates/documents</c>.</summary>
    /// <exception cref="InvalidOperationException">There is none of that name: a fault of ours.</exception>
    public static DocumentTemplate BuiltIn(string name)
    {
        using var stream =
            Assembly.GetExecutingAssembly().GetManifestResourceStream($"documents/{name}")
            ?? throw new InvalidOperationException($"The template '{name}' is not built in.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return new(name, reader.ReadToEnd());
    }

    /// <summary>The page filled in, or what is wrong with the template and where.</summary>
    /// <param name="model">The names that the template may use.</param>
    internal Result<string> Fill(ScriptObject model)
    {
        try
        {
            var template = Template.Parse(Text, Name);
            if (template.HasErrors)
                return new(
                    null,
                    [.. template.Messages.Where(IsError).Select(message => Error(message.Message, message.Span))]
                );
            return new(template.Render(new HtmlContext(model)), []);
        }
        catch (ScriptRuntimeException error)
        {
            return new(null, [Error(error.OriginalMessage, error.Span)]);
        }
    }

    private static bool IsError(LogMessage message) => message.Type == ParserMessageType.Error;

    private InputError Error(string message, SourceSpan span)
    {
        var length = span.Start.Line == span.End.Line ? span.End.Column - span.Start.Column + 1 : 1;
        // Scriban counts lines and columns from 0.
        var place = new SourcePlace(
            Name,
            Math.Max(0, span.Start.Line) + 1,
            Math.Max(0, span.Start.Column) + 1,
            Math.Max(1, length)
        );
        return new(
            $"The template cannot be filled in: {message.TrimEnd('.')}.",
            place,
            "a Scriban template of known names"
        );
    }
}
