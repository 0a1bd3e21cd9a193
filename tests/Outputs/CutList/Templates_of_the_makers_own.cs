using System.Text;
using Dryfit.Findings;
using Dryfit.Outputs.CutList;
using Dryfit.Outputs.Tests.Pieces;

namespace Dryfit.Outputs.Tests.CutList;

public class Templates_of_the_makers_own
{
    [Fact]
    public void A_template_takes_the_place_of_the_built_in_one()
    {
        var page = Fill("{{ for m in materials }}{{ m.stuff }}: {{ m.quantity }};{{ end }}");
        Assert.Equal("maple: 4;maple: 1;maple: 1;maple: 1;", Text(page)); // four boards 300 deep, then 270, 18 and 10
    }

    [Fact]
    public void What_a_template_prints_is_encoded_unless_it_is_the_tools_own_drawing()
    {
        Assert.Equal("&lt;b&gt;", Text(Fill("{{ '<b>' }}")));
        Assert.StartsWith("<svg", Text(Fill("{{ front_view }}")), StringComparison.Ordinal);
        Assert.StartsWith("&lt;svg", Text(Fill("{{ front_view | string.strip }}")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("first\n  {{ piece.nmae }}", 2, 12)]
    [InlineData("{{ nothing }}", 1, 4)]
    [InlineData("a\nb {{ for x in }}", 2, 0)]
    [InlineData("{{ include 'secrets.txt' }}", 1, 4)]
    [InlineData("{{ date.now }}", 1, 4)]
    [InlineData("{{ math.random 1 6 }}", 1, 9)]
    [InlineData("{{ regex.match 'a' 'a' }}", 1, 4)]
    [InlineData("{{ object.eval '1' }}", 1, 4)]
    public void What_is_wrong_in_a_template_is_told_with_its_place(string template, int line, int column)
    {
        var error = Fill(template).Errors[0];
        Assert.Equal("mine.html", error.Place!.File);
        Assert.Equal(line, error.Place.Line);
        if (column > 0)
            Assert.Equal(column, error.Place.Column);
    }

    [Theory]
    [InlineData("{{ while true }}{{ end }}")]
    [InlineData("{{ func f }}{{ f }}{{ end }}{{ f }}")]
    [InlineData("{{ for i in 1..1000000000 }}{{ end }}")]
    [InlineData("{{ x = 'a' }}{{ for i in 1..40 }}{{ x = x + x }}{{ end }}{{ x }}")]
    [InlineData("{{ 'a' * 2000000000 }}")]
    public void A_template_without_end_is_stopped(string template)
    {
        Assert.False(Fill(template).Ok);
    }

    [Fact]
    public void A_template_nested_too_deep_is_an_error_and_no_crash()
    {
        Assert.False(Fill("{{ " + new string('(', 100_000) + " }}").Ok);
        Assert.False(Fill(string.Concat(Enumerable.Repeat("{{ if true }}", 20_000))).Ok);
    }

    private static Result<OutputFile> Fill(string template) =>
        CutListHtml.Write(Cupboards.OneDoor(2).Build(), Cupboards.ReportOf(), new("mine.html", template));

    private static string Text(Result<OutputFile> page)
    {
        Assert.True(page.Ok, string.Join('\n', page.Errors));
        return Encoding.UTF8.GetString(page.Value!.Bytes.Span);
    }
}
