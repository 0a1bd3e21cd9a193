using Dryfit.Numbers;

namespace Dryfit.Cli;

/// <summary><c>check --numbers FILE</c>: a cut list written by hand against the model.</summary>
internal sealed class NumbersAction(Surroundings surroundings)
{
    public int Run(Request request, string list, bool json)
    {
        if (Hold(request, list, json, out var proved, out var code) is not { } held)
            return code;
        if (json)
            surroundings.Out.WriteLine(NumbersJson.Write(held, proved!.Piece));
        else
            NumbersText.Write(held, proved!.Piece, surroundings.Out);
        return held.IsRight ? ExitCode.Fine : ExitCode.Stop;
    }

    /// <summary>The list held against the model; null where the recipe or the list is wrong, which was said then.</summary>
    /// <exception cref="FileTroubleException">A file cannot be read.</exception>
    public Held? Hold(Request request, string list, bool json, out ProvedPiece? proved, out int code)
    {
        var proof = new Proof(surroundings);
        proved = proof.Of(request, json, out code);
        if (proved is null)
            return null;
        var file = InputFile.Read(list, "list", surroundings);
        var read = HandListReader.Read(file.Name, file.Bytes, proved.Piece.Format.Unit);
        if (read.Value is not { } lines)
        {
            proof.Say(read.Errors, [file], json);
            code = ExitCode.InvalidInput;
            return null;
        }
        return NumbersCheck.Hold(
            lines,
            new Built(proved.Piece, proved.Report),
            numbers =>
                proof.Try(request with { AsListed = numbers }) is { } tried ? new(tried.Piece, tried.Report) : null
        );
    }
}
