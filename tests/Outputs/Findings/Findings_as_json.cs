using System.Text.Json;
using System.Text.Json.Nodes;
using Dryfit.Findings;
using Dryfit.Outputs.Findings;
using Dryfit.Outputs.Tests.Pieces;
using Json.Schema;

namespace Dryfit.Outputs.Tests.Findings;

public class Findings_as_json
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "findings.schema.json"))
    );

    [Fact]
    public void Every_shape_of_finding_fits_the_published_schema()
    {
        var plain = Cupboards.TooWide(9);
        Finding[] findings =
        [
            plain,
            plain with
            {
                Measured = new MeasuredRange("gap", Sketch.Mm(0), Sketch.Mm(5)),
                AcceptedBecause = "so be it",
            },
            plain with
            {
                Measured = new MeasuredVolume("overlap", 1234.5, Sketch.Mm(3)),
                Wanted = null,
            },
            new() { Kind = plain.Kind, Message = "Nothing else is known." },
            plain with
            {
                Related = [Sketch.Somewhere],
                Assumptions = ["the floor is level"],
                Wanted = new(null, Sketch.Mm(3)),
            },
        ];
        AssertFits(FindingsJson.Write(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf(findings)));
    }

    [Fact]
    public void A_mended_report_fits_it_too()
    {
        var edit = new Edit(Sketch.Somewhere, "390", "397");
        var mended = Cupboards.TooWide(9) with
        {
            Remedy = new("In line 3: 390 -> 397.", Sure: true) { Edits = [edit] },
        };
        var report = Cupboards.ReportOf(mended);
        AssertFits(
            FindingsJson.Write(
                Cupboards.OneDoor(9).Build(),
                report with
                {
                    Mended = new([edit], [new Unmended(1, "No number mends it.")], 7, report),
                }
            )
        );
    }

    [Fact]
    public void Lengths_are_given_exactly()
    {
        var json = Parsed(
            FindingsJson.Write(
                Cupboards.OneDoor(9).Build(),
                Cupboards.ReportOf(
                    Cupboards.TooWide(9) with
                    {
                        Measured = new MeasuredLength("gap", Dryfit.Measure.Length.FromInches(0, 5, 16)),
                    }
                )
            )
        );
        var value = json["findings"]![0]!["measured"]!["value"]!;
        Assert.Equal("127/16", value["exactMm"]!.GetValue<string>()); // 5/16 in is 7.9375 mm
        Assert.Equal(7.9375, value["mm"]!.GetValue<double>());
        Assert.True(json["stopsTheSaw"]!.GetValue<bool>());
    }

    [Fact]
    public void Hostile_names_stay_text()
    {
        foreach (var name in Cupboards.HostileNames)
        {
            var piece = Cupboards.OneDoor(9).Change("case/door/slab", part => part with { Name = name }).Build();
            var file = FindingsJson.Write(piece, Cupboards.ReportOf(Cupboards.TooWide(9)));
            AssertFits(file);
            Assert.DoesNotContain("<script>", Text(file), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_findings_give_the_same_bytes()
    {
        OutputFile Write() =>
            FindingsJson.Write(Cupboards.OneDoor(9).Build(), Cupboards.ReportOf(Cupboards.TooWide(9)));
        Assert.Equal(Write().Bytes.ToArray(), Write().Bytes.ToArray());
    }

    private static void AssertFits(OutputFile file)
    {
        using var document = JsonDocument.Parse(file.Bytes);
        var result = Schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, JsonSerializer.Serialize(result));
    }

    private static JsonNode Parsed(OutputFile file) => JsonNode.Parse(file.Bytes.Span)!;

    private static string Text(OutputFile file) => System.Text.Encoding.UTF8.GetString(file.Bytes.Span);
}
