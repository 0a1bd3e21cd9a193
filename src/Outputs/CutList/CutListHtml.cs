using System.Text;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Outputs.Documents;

namespace Dryfit.Outputs.CutList;

/// <summary>
/// The cut list as a maker carries it to the saw: one printable page by material and thickness, with what stops the saw
/// at its head, the front view on it, hardware, and the usual cautions at its foot.
/// </summary>
public static class CutListHtml
{
    private const string TemplateName = "cutlist.html";

    /// <param name="piece">The piece.</param>
    /// <param name="report">What the checks found.</param>
    /// <param name="template">A template of the maker's own, or null for the one that comes with the tool.</param>
    /// <returns>The file <c>cutlist.html</c>, or what is wrong with the template and where.</returns>
    public static Result<OutputFile> Write(Piece piece, Report report, DocumentTemplate? template = null)
    {
        var page = (template ?? DocumentTemplate.BuiltIn(TemplateName)).Fill(CutListModel.Of(piece, report));
        return page.Value is { } html
            ? new(new OutputFile("cutlist.html", Encoding.UTF8.GetBytes(html)), [])
            : new(null, page.Errors);
    }
}
