using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Cli;

/// <summary><c>dryfit read RECIPE</c>: says back how every length and number of a recipe was understood.</summary>
internal static class ReadCommand
{
    private static readonly HelpPage Page = new(
        "Says back how every length, number and formula of the recipe was understood, in inches and in millimetres, with "
            + "its line and column. A sign behind a size (+ or -) tells what rounding for the eye left out; the size itself "
            + "stays exact.",
        [
            new("dryfit read cupboard.dryfit.yaml", "All of them, in the order of the recipe."),
            new("dryfit read cupboard.dryfit.yaml --set width=1.2m", "The same with another width."),
        ],
        []
    );

    public static (Command Command, HelpPage Page) Make(Surroundings surroundings)
    {
        var command = new Command("read", "how every length and number was understood");
        var shared = new SharedOptions();
        shared.AddTo(command);
        command.SetAction(parsed => Run(shared.Read(parsed), shared.IsJson(parsed), surroundings));
        return (command, Page);
    }

    private static int Run(Request request, bool json, Surroundings surroundings)
    {
        var understood = new Proof(surroundings).Understand(request, out var code);
        if (json)
            surroundings.Out.WriteLine(JsonText.Of(writer => WriteJson(understood, writer)));
        else
            WriteColumns(understood, request.Recipe, surroundings.Out);
        return code;
    }

    private static void WriteColumns(IReadOnlyList<Understood> values, string recipe, TextWriter writer)
    {
        string[][] rows =
        [
            .. values.Select(value =>
                new[]
                {
                    Where(value.Value.Place, recipe),
                    value.Value.Text,
                    value.Inches ?? value.Number ?? "",
                    value.Millimetres ?? "",
                }
            ),
        ];
        if (rows.Length == 0)
            return;
        var wide = Enumerable.Range(0, 3).Select(column => rows.Max(row => row[column].Length)).ToList();
        foreach (var row in rows)
        {
            var line = string.Join("  ", row.Select((cell, n) => n < wide.Count ? cell.PadRight(wide[n]) : cell));
            writer.WriteLine(line.TrimEnd());
        }
    }

    /// <summary>Line and column in the recipe; what was said elsewhere by the name of that file, or <c>--set</c>.</summary>
    private static string Where(SourcePlace place, string recipe) =>
        place.File == recipe ? string.Create(CultureInfo.InvariantCulture, $"{place.Line, 4}:{place.Column, -3}")
        : place.UsedAt is null ? $"  {place.File}"
        : $"  {place}";

    private static void WriteJson(IReadOnlyList<Understood> values, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteStartArray("values");
        foreach (var value in values)
        {
            json.WriteStartObject();
            json.WriteString("file", value.Value.Place.File);
            json.WriteNumber("line", value.Value.Place.Line);
            json.WriteNumber("column", value.Value.Place.Column);
            json.WriteString("written", value.Value.Text);
            if (value.Number is not null)
                json.WriteString("number", value.Number);
            if (value.Inches is not null)
                json.WriteString("inches", value.Inches);
            if (value.Millimetres is not null)
                json.WriteString("millimetres", value.Millimetres);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
