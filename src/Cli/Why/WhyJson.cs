using Dryfit.Measure;
using Dryfit.Parameters.Why;

namespace Dryfit.Cli;

/// <summary>The answer to a question about sizes, for other programs.</summary>
internal static class WhyJson
{
    /// <param name="question">The part, unit or opening and its sizes.</param>
    /// <param name="format">How lengths are written; each stands exactly beside it, millimetres as a fraction.</param>
    /// <param name="recipe">The recipe's name in places.</param>
    public static string Write(SizeQuestion question, LengthFormat format, string recipe) =>
        JsonText.Of(json =>
        {
            json.WriteStartObject();
            json.WriteString(question.Asked.Kind, question.Asked.Id);
            json.WriteString("name", question.Asked.Name);
            json.WriteStartArray("sizes");
            foreach (var (name, figure) in question.Sizes)
            {
                json.WriteStartObject();
                json.WriteString("size", name);
                json.WriteString("text", format.WriteWithUnit(figure.Length));
                json.WriteString("exactMm", figure.Length.Millimetres.ToString());
                json.WriteStartArray("sum");
                foreach (var line in WhyText.Write(figure, format, recipeFile: recipe).TrimEnd('\n').Split('\n'))
                    json.WriteStringValue(line);
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        });
}
