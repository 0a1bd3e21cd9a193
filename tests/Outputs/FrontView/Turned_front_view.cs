using System.Text;
using System.Xml.Linq;
using Dryfit.Casework;
using Dryfit.Outputs.FrontView;
using Dryfit.Outputs.Tests.Pieces;
using Dryfit.Recipe;

namespace Dryfit.Outputs.Tests.FrontView;

/// <summary>The front view of what stands at an angle in plan.</summary>
public class Turned_front_view
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Fronts_at_an_angle_are_lettered_with_their_real_sizes()
    {
        var texts = Texts(Angles.Corner("left: 30"));
        // Between stiles of 40 there are 420, less 2 on each side for the drawer front; its height 150 less 2 and 2.
        Assert.Contains("416 × 146", texts);
        Assert.Equal(2, texts.Count(text => text.StartsWith("416 ×", StringComparison.Ordinal)));
    }

    [Fact]
    public void Gaps_at_an_angle_are_told_as_they_really_are()
    {
        // All the gaps of the piece are 2; seen at 60 degrees those at the sides look half as wide.
        var texts = Texts(Angles.Corner("left: 60"));
        Assert.DoesNotContain("1", texts);
        Assert.Contains("2", texts);
    }

    [Fact]
    public void What_looks_away_is_not_lettered()
    {
        var texts = Texts(Angles.Corner("left: 90"));
        Assert.DoesNotContain(texts, text => text.Contains("two", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("one", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("left: 30")]
    [InlineData("right: 30")]
    public void Nearer_boards_are_painted_over_farther_ones(string turned)
    {
        var names = Drawing(Angles.Corner(turned))
            .Descendants(Svg + "path")
            .Select(path => path.Element(Svg + "title")?.Value ?? "")
            .ToList();
        // The panel lies behind the stiles and rails that hold it, the door before the shelf-less inside.
        foreach (var member in (string[])["left stile", "right stile", "top rail", "bottom rail"])
            Assert.True(names.LastIndexOf("two door panel") < names.LastIndexOf($"two door {member}"), member);
        Assert.True(names.LastIndexOf("two back") < names.LastIndexOf("two door panel"));
    }

    [Fact]
    public void Face_cut_at_an_angle_is_a_face_of_its_own()
    {
        // The open end of a run: each board shows its front edge, and beside it the edge that was cut.
        var recipe = RecipeReader.Read(
            "end.dryfit.yaml",
            Encoding.UTF8.GetBytes(
                """
                piece: End
                units: mm
                materials: { body: birch plywood 18 }
                carcases: { end: { size: [300, 720, 400], canted: { across: 150 } } }
                """
            )
        );
        var piece = Design.Build(recipe.Value!, null, DesignOptions.Plain).Value!;
        Assert.Equal(
            2,
            Drawing(piece).Descendants(Svg + "path").Count(path => path.Element(Svg + "title")?.Value == "end bottom")
        );
    }

    private static XElement Drawing(Piece piece) =>
        XDocument.Parse(Encoding.UTF8.GetString(FrontSvg.Write(piece, Cupboards.ReportOf()).Bytes.Span)).Root!;

    private static List<string> Texts(Piece piece) =>
        [.. Drawing(piece).Descendants(Svg + "text").Select(text => text.Value)];
}
