using System.Text;

namespace Dryfit.Cli;

/// <summary><c>check --mend</c>: which numbers of the recipe mend what was found, as a diff, and made where that is asked.</summary>
internal sealed class MendAction(Surroundings surroundings)
{
    /// <param name="apply">Whether the edits are made.</param>
    /// <returns>The exit code: of the piece as the files say it when the command ends.</returns>
    public int Run(Request request, bool json, bool quiet, bool apply)
    {
        var proof = new Proof(surroundings);
        if (proof.Mended(request, json, out var texts, out var code) is not { Report.Mended: { } mended } proved)
            return code;
        var after = texts.Select(text => text.With(mended.Edits)).ToList();
        var written = apply ? EditedFiles.Write(texts, after, surroundings) : null;
        if (json)
        {
            surroundings.Out.Write(Encoding.UTF8.GetString(Pipeline.FindingsJson(proved).Bytes.Span));
        }
        else
        {
            ReportText.Write(proved, quiet, surroundings);
            MendedText.Write(mended, texts, after, written, surroundings.Out);
        }
        var report = apply ? mended.After : proved.Report;
        return report.StopsTheSaw ? ExitCode.Stop : ExitCode.Fine;
    }
}
