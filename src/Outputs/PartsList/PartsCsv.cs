using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;
using Dryfit.Parameters;

namespace Dryfit.Outputs.PartsList;

/// <summary>The parts list for a spreadsheet, <c>parts.csv</c>: one line per kind of equal parts.</summary>
public static class PartsCsv
{
    public static OutputFile Write(Piece piece)
    {
        var joints = new JointWords(piece);
        var columns = Columns(piece, joints);
        var csv = new CsvText();
        csv.Row(columns.Select(column => column.Name));
        foreach (var row in PartsRow.Of(piece))
            csv.Row(columns.Select(column => column.Cell(row)));
        return new("parts.csv", csv.ToUtf8());
    }

    /// <summary>
    /// Lengths are written twice: as the maker writes them, with the unit (a bare 3/4 would be a date to a spreadsheet),
    /// and as a plain number of millimetres.
    /// </summary>
    private static (string Name, Func<PartsRow, string> Cell)[] Columns(Piece piece, JointWords joints)
    {
        var format = piece.Format;
        var groups = piece.Groups.ToDictionary(group => group.Id, group => group.Name, StringComparer.Ordinal);
        return
        [
            ("id", row => CsvText.Words(row.First.Id)),
            ("name", row => CsvText.Words(row.Name)),
            ("quantity", row => row.Quantity.ToString(CultureInfo.InvariantCulture)),
            ("role", row => CsvText.Words(string.Join(", ", row.Roles.Select(Words.Of)))),
            ("material", row => CsvText.Words(row.First.Material.Name)),
            ("stuff", row => CsvText.Words(row.First.Material.Stuff)),
            ("length", row => Written(row.First.Length)),
            ("width", row => Written(row.First.Width)),
            ("thickness", row => Written(row.First.Thickness)),
            ("shoulder length", row => Written(row.First.ShoulderLength)),
            ("shoulder width", row => Written(row.First.ShoulderWidth)),
            ("finished length", row => Written(row.First.FinishedLength)),
            ("finished width", row => Written(row.First.FinishedWidth)),
            ("length mm", row => Mm(row.First.Length)),
            ("width mm", row => Mm(row.First.Width)),
            ("thickness mm", row => Mm(row.First.Thickness)),
            ("shoulder length mm", row => Mm(row.First.ShoulderLength)),
            ("shoulder width mm", row => Mm(row.First.ShoulderWidth)),
            ("finished length mm", row => Mm(row.First.FinishedLength)),
            ("finished width mm", row => Mm(row.First.FinishedWidth)),
            (
                "grain",
                row =>
                    GrainWords.Of(row.First, piece.Format) is { } run ? CsvText.Words($"along the length; {run}")
                    : row.First.Material.HasGrain ? "along the length"
                    : "any way"
            ),
            ("show face", row => CsvText.Words(FaceWords.Of(row))),
            ("cuts", row => CsvText.Words(string.Join(" | ", new CutWords(row.First, format).All()))),
            ("joints", row => CsvText.Words(string.Join(" | ", Distinct(row, joints.Summary)))),
            ("volume cm3", row => ExactNumbers.Decimal(row.VolumeCubicMm / 1000, 6)),
            ("mass kg", row => ExactNumbers.Decimal(row.MassKg, 3)),
            ("place", row => CsvText.Words(string.Join(" | ", Distinct(row, part => Place(part, groups, format))))),
            ("finishes", row => CsvText.Words(string.Join(" | ", Distinct(row, Finishes)))),
            ("kept", row => row.First.IsKept ? "yes" : "no"),
            ("as cut", row => CsvText.Words(string.Join(' ', Ids(row, part => part.IsAsCut)))),
            ("all ids", row => CsvText.Words(string.Join(' ', Ids(row, _ => true)))),
        ];

        string Written(Figure? size) => size is null ? "" : CsvText.Words(format.WriteWithUnit(size.Length));

        static string Mm(Figure? size) =>
            size is null ? "" : ExactNumbers.Millimetres(size.Length).ToString(CultureInfo.InvariantCulture);
    }

    private static IEnumerable<string> Ids(PartsRow row, Func<Part, bool> which) =>
        row.Kind.Members.Select(member => member.Part).Where(which).Select(part => part.Id);

    private static IEnumerable<string> Distinct(PartsRow row, Func<Part, string> tell) =>
        row.Kind.Members.Select(member => tell(member.Part)).Distinct(StringComparer.Ordinal);

    /// <summary>The part's finish under each scheme, schemes in the order of their names.</summary>
    private static string Finishes(Part part) =>
        string.Join("; ", part.Finishes.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => $"{f.Key}: {f.Value}"));

    private static string Place(Part part, Dictionary<string, string> groups, LengthFormat format)
    {
        var extent = part.Extent;
        var group = groups.GetValueOrDefault(part.Group, part.Group);
        return $"{group}: across {Run(Axis.X)}, back {Run(Axis.Y)}, up {Run(Axis.Z)}; {PlaceWords.Lie(part)}{PlaceWords.Angle(part)}";

        string Run(Axis axis) => $"{format.Write(extent.Min[axis])} to {format.Write(extent.Max[axis])}";
    }
}
