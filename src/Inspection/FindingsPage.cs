using System.Text;
using Dryfit.Findings;

namespace Dryfit.Inspection;

/// <summary>The list of all that can be found, for people: generated from the catalogue, so that it is never behind it.</summary>
public static class FindingsPage
{
    /// <summary>The page as Markdown, with lines ended by a single line feed.</summary>
    public static string Write()
    {
        var page = new StringBuilder();
        page.Append("# What the dry fit finds\n\n");
        page.Append("Everything here is measured on the solid parts, by code that does not know what sized them.\n");
        page.Append(
            "*Stop*: do not cut. *Warn*: look before cutting. *Note*: worth knowing. A finding can be accepted in the\n"
        );
        page.Append(
            "recipe by its id with a reason; it still prints. What concerns people's safety cannot be accepted.\n"
        );
        foreach (var check in Catalogue.Checks)
        {
            page.Append("\n## ").Append(Capital(check.Name)).Append("\n\n").Append(check.How).Append("\n\n");
            WriteKinds(page, check.Kinds);
        }
        page.Append("\n## Accepted findings\n\n");
        WriteKinds(page, Accepted.Kinds);
        page.Append("\n## Not checked yet\n\n");
        foreach (var left in Catalogue.NotChecked)
            page.Append("- ").Append(Capital(left.Name)).Append('\n');
        return page.ToString();
    }

    private static void WriteKinds(StringBuilder page, IReadOnlyList<FindingKind> kinds)
    {
        page.Append("| id | severity | what | why it matters | source |\n|---|---|---|---|---|\n");
        foreach (var kind in kinds)
        {
            page.Append("| `").Append(kind.Id).Append("` | ").Append(Word(kind.Severity));
            page.Append(" | ").Append(kind.Title).Append(" | ").Append(kind.Why);
            if (kind.ConcernsSafety)
                page.Append(" Cannot be accepted.");
            page.Append(" | ").Append(kind.Source ?? "plain geometry").Append(" |\n");
        }
    }

    private static string Word(Severity severity) =>
        severity switch
        {
            Severity.Stop => "stop",
            Severity.Warn => "warn",
            _ => "note",
        };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
