using System.Text;
using Dryfit.Casework;
using Dryfit.Outputs.CutList;
using Dryfit.Outputs.PartsList;
using Dryfit.Outputs.Tests.Pieces;

namespace Dryfit.Outputs.Tests.CutList;

public class Show_faces
{
    [Theory]
    [InlineData(false, "show face")]
    [InlineData(true, "good face")]
    public void Stand_beside_the_grain_and_a_sheet_with_one_good_face_is_told(bool isOne, string column)
    {
        var sketch = new Sketch().Board("side", Role.Side, (0, 0, 0), (700, 18, 300));
        sketch.Change("side", part => part with { Material = part.Material with { HasOneGoodFace = isOne } });
        var piece = sketch.Build();
        var shows = piece.Parts[0].Place.Lie.Shows.ToString().ToLowerInvariant();

        var page = Encoding.UTF8.GetString(CutListHtml.Write(piece, Cupboards.ReportOf()).Value!.Bytes.Span);
        Assert.Contains($"Grain; {column}", page, StringComparison.Ordinal);
        Assert.Contains($"; {shows}</td>", page, StringComparison.Ordinal);
        Assert.Equal(isOne, page.Contains("Teeth tear where they leave the sheet", StringComparison.Ordinal));
        var csv = Encoding.UTF8.GetString(PartsCsv.Write(piece).Bytes.Span).Split('\n');
        var at = Array.IndexOf(csv[0].Split(','), "show face");
        Assert.Contains($",{shows},", csv[1], StringComparison.Ordinal);
        Assert.True(at > 0);
    }
}
