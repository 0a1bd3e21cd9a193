using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Outputs.Documents;
using Dryfit.Outputs.Findings;
using Dryfit.Outputs.FrontView;
using Dryfit.Outputs.PartsList;
using Dryfit.Outputs.Text;
using Scriban.Runtime;

namespace Dryfit.Outputs.CutList;

/// <summary>The names a cut-list template may use. They are listed at the head of <c>templates/documents/cutlist.html</c>.</summary>
internal static class CutListModel
{
    /// <summary>What a page of A4 or Letter holds between its margins.</summary>
    private const double FigureWidthMm = 184;
    private const double FigureHeightMm = 158;

    private const int PartsNamed = 4;

    public static ScriptObject Of(Piece piece, Report report)
    {
        var names = PartNames.Of(piece);
        var rows = PartsRow.Of(piece);
        var cuts = new BriefCuts(piece);
        var figure = FrontSvg.Figure(piece, report, FigureWidthMm, FigureHeightMm, out var scale, out var overall);
        var findings = report.Findings.Select((finding, i) => FindingOf(finding, i + 1, piece.Format, names)).ToList();
        var stops = report.Findings.Select(finding =>
            finding.Kind.Severity == Severity.Stop && finding.AcceptedBecause is null
        );
        var sorted = findings.Zip(stops).ToList();
        return new(StringComparer.Ordinal)
        {
            ["piece"] = new ScriptObject(StringComparer.Ordinal)
            {
                ["name"] = PlainText.Apart(PlainText.Shortened(piece.Name, 300)),
                ["note"] = PlainText.Clean(piece.Note ?? ""),
                ["overall"] = overall,
                ["unit"] = piece.Format.Unit == LengthUnit.Inch ? "inches" : "millimetres",
            },
            ["front_view"] = new Markup(figure),
            ["front_scale"] = scale,
            ["stops_the_saw"] = report.StopsTheSaw,
            ["stops"] = List(sorted.Where(pair => pair.Second).Select(pair => pair.First)),
            ["other_findings"] = List(sorted.Where(pair => !pair.Second).Select(pair => pair.First)),
            ["checks"] = List(report.Checks.Where(check => check.Ran).Select(CheckOf)),
            ["not_checked"] = List(NotChecked(report)),
            ["materials"] = List(
                MaterialGroup
                    .Of(rows.Where(row => !row.First.IsKept), piece.Format)
                    .Select(group => MaterialOf(group, piece.Format, names, cuts))
            ),
            ["kept"] = List(rows.Where(row => row.First.IsKept).Select(row => RowOf(row, piece.Format, names, cuts))),
            ["hardware"] = List(HardwareOf(piece, names)),
            ["cautions"] = List(
                Cautions
                    .For(piece)
                    .Select(caution => new ScriptObject(StringComparer.Ordinal)
                    {
                        ["title"] = caution.Title,
                        ["text"] = caution.Text,
                    })
            ),
        };
    }

    private static ScriptObject FindingOf(Finding finding, int number, LengthFormat format, PartNames names) =>
        new(StringComparer.Ordinal)
        {
            ["number"] = number,
            ["sign"] = new Markup(Sign.Figure(number, finding)),
            ["severity"] = FindingWords.Severity(finding.Kind.Severity),
            ["id"] = finding.Kind.Id,
            ["title"] = finding.Kind.Title,
            ["why"] = finding.Kind.Why,
            ["message"] = PlainText.Clean(finding.Message),
            ["parts"] = names.Listed(finding.Parts, PartsNamed),
            ["place"] = PlainText.Clean(finding.Place?.ToString() ?? ""),
            ["measured"] = finding.Measured is { } measured
                ? $"{PlainText.Clean(measured.Name)} {FindingWords.Measured(measured, format)}"
                : "",
            ["wanted"] = finding.Wanted is { } wanted ? FindingWords.Wanted(wanted, format) : "",
            ["off_by"] = FindingWords.Missed(finding, format),
            ["remedy"] = PlainText.Clean(finding.Remedy?.Text ?? ""),
            ["remedy_is_sure"] = finding.Remedy?.Sure ?? false,
            ["assumptions"] = string.Join("; ", finding.Assumptions.Select(PlainText.Clean)),
            ["accepted_because"] = PlainText.Clean(finding.AcceptedBecause ?? ""),
        };

    private static ScriptObject CheckOf(CheckRun check) =>
        new(StringComparer.Ordinal)
        {
            ["name"] = check.Name,
            ["covered"] = check.Covered,
            ["of"] = check.Of,
        };

    private static ScriptObject MaterialOf(MaterialGroup group, LengthFormat format, PartNames names, BriefCuts cuts) =>
        new(StringComparer.Ordinal)
        {
            ["name"] = string.Join(", ", group.Names.Select(PlainText.Apart)),
            ["stuff"] = PlainText.Apart(group.Material.Stuff),
            ["kind"] = Words.Of(group.Material.Kind),
            ["thickness"] = format.WriteWithUnit(group.Thickness),
            ["called"] = group.Material.Called is { } called ? format.WriteWithUnit(called) : "",
            ["one_good_face"] = group.Material.HasOneGoodFace,
            ["rows"] = List(group.Rows.Select(row => RowOf(row, format, names, cuts))),
            ["quantity"] = group.Quantity,
            ["has_shoulders"] = group.Rows.Any(row =>
                row.First.ShoulderLength is not null || row.First.ShoulderWidth is not null
            ),
            ["has_finished"] = group.Rows.Any(row =>
                row.First.FinishedLength is not null || row.First.FinishedWidth is not null
            ),
            ["totals"] = string.Join(", ", group.Totals),
        };

    private static ScriptObject RowOf(PartsRow row, LengthFormat format, PartNames names, BriefCuts cuts)
    {
        var part = row.First;
        var members = row.Kind.Members.Select(member => names[member.Part.Id]).ToList();
        return new(StringComparer.Ordinal)
        {
            ["name"] = PlainText.Apart(PlainText.Shortened(row.Name, 200)),
            ["members"] = members.Count > 1 ? PlainText.Shortened(string.Join(", ", members), 400) : "",
            ["quantity"] = row.Quantity,
            ["role"] = string.Join(", ", row.Roles.Select(Words.Of)),
            ["length"] = format.Write(part.Length.Length),
            ["width"] = format.Write(part.Width.Length),
            ["thickness"] = format.Write(part.Thickness.Length),
            ["shoulder_length"] = part.ShoulderLength is { } sl ? format.Write(sl.Length) : "",
            ["shoulder_width"] = part.ShoulderWidth is { } sw ? format.Write(sw.Length) : "",
            ["finished_length"] = part.FinishedLength is { } fl ? format.Write(fl.Length) : "",
            ["finished_width"] = part.FinishedWidth is { } fw ? format.Write(fw.Length) : "",
            ["grain"] = part.Material.HasGrain ? "lengthwise" : "either way",
            ["show_face"] = FaceWords.Of(row),
            ["cuts"] = List(cuts.Of(part).Select(cut => (object)cut)),
            ["as_cut"] = part.IsAsCut,
            ["mass"] = Amounts.Mass(row.MassKg, format.Unit),
        };
    }

    private static IEnumerable<ScriptObject> HardwareOf(Piece piece, PartNames names)
    {
        var groupOfPart = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var part in piece.Parts)
            groupOfPart.TryAdd(part.Id, part.Group);
        return piece
            .Hardware.GroupBy(item => item.Kind, StringComparer.Ordinal)
            .Select(kind =>
            {
                var places = kind.Select(item => PlaceOf(item, groupOfPart, names))
                    .Where(name => name.Length > 0)
                    .Distinct(StringComparer.Ordinal)
                    .ToList();
                return new ScriptObject(StringComparer.Ordinal)
                {
                    ["kind"] = PlainText.Clean(kind.Key),
                    ["count"] = kind.Sum(item => (long)item.Count).ToString(CultureInfo.InvariantCulture),
                    ["where"] = PlainText.Shortened(string.Join(", ", places), 400),
                };
            });
    }

    /// <summary>The door, drawer or carcase that a thing is for: that of the part that moves, where one does.</summary>
    private static string PlaceOf(Hardware item, Dictionary<string, string> groupOfPart, PartNames names) =>
        item.Ties.Count == 0 ? ""
        : groupOfPart.TryGetValue(item.Ties[0], out var group) ? names[group]
        : names[item.Ties[0]];

    /// <summary>What was not checked, by the reason why.</summary>
    private static IEnumerable<ScriptObject> NotChecked(Report report) =>
        report
            .Checks.Where(check => !check.Ran)
            .GroupBy(check => check.NotRun ?? "", StringComparer.Ordinal)
            .Select(reason => new ScriptObject(StringComparer.Ordinal)
            {
                ["why"] = PlainText.Clean(reason.Key),
                ["names"] = string.Join("; ", reason.Select(check => check.Name)),
            });

    private static ScriptArray List(IEnumerable<object> items) => [.. items];
}
