using Dryfit.Measure;

namespace Dryfit.Mending;

/// <summary>
/// Solves for one number by building the piece again: what is measured runs in straight pieces over the number, so a line
/// through two builds leads to the middle of what is wanted, and where it bends the next line leads nearer (secant method
/// within a bracket: J. Stoer and R. Bulirsch, Introduction to Numerical Analysis, section 5.9).
/// </summary>
internal sealed class Solver(Aim aim, WrittenLength number)
{
    private const int MostSteps = 8;

    private readonly List<(Length At, Length Off)> _points = [];
    private readonly HashSet<Length> _tried = [];
    private (Length At, Outcome Outcome)? _mended;

    /// <summary>The edit of this number that mends the finding; null where there is none.</summary>
    public Cure? Solve()
    {
        if (aim.Now is not { By.Sign: not 0 } now)
            return null;
        _points.Add((number.Value, now.By));
        _tried.Add(number.Value);
        var step = number.Steps?.By ?? number.Style.Step;
        var reach = Length.Max(Length.Abs(now.By), step * 4);

        // Both ways, since one of them makes it worse and so shows the slope for certain.
        var first = Probe(number.Value + reach) ?? Probe(number.Value + (reach / 2));
        if (first is not null && IsWithoutSay(first))
            return null;
        _ = Probe(number.Value - reach) ?? Probe(number.Value - (reach / 2));
        for (var n = 0; n < MostSteps && !aim.IsOver; n++)
        {
            if (Next() is not { } next)
                break;
            // What may not be passed is met by the step before or behind it.
            if (Probe(next) is null && (_mended is not null || (Probe(next + step) ?? Probe(next - step)) is null))
                break;
        }
        return _mended is { } mended && number.To(mended.At) is { } edit
            ? new Cure([edit], Length.Abs(mended.At - number.Value), mended.Outcome.Tried!)
            : null;
    }

    /// <summary>Builds with another number there; null where it was tried before or nothing can be built.</summary>
    private Outcome? Probe(Length wish)
    {
        var at = number.Nearest(wish);
        if (!_tried.Add(at) || number.To(at) is not { } edit)
            return null;
        var outcome = aim.Try(edit);
        if (outcome.Tried is null)
            return null;
        // The last one that mends is the nearest to the middle.
        if (outcome.IsMended)
            _mended = (at, outcome);
        else if (outcome.Miss is { } miss)
            _points.Add((at, Comparable(miss)));
        return outcome;
    }

    /// <summary>What was measured by another name lies beyond what was wanted, on the other side.</summary>
    private Length Comparable(Miss miss)
    {
        var now = aim.Now!.Value;
        return miss.Name == now.Name ? miss.By : Length.Abs(miss.By) * -now.By.Sign;
    }

    /// <summary>Where the line through the two nearest points meets what is wanted; null where it runs level.</summary>
    private Length? Next()
    {
        var nearest = _points.OrderBy(point => Length.Abs(point.Off)).ThenBy(point => point.At).ToList();
        if (nearest.Count < 2)
            return null;
        var a = nearest[0];
        // The other side of what is wanted leads there more surely than two points of the same side.
        var b = nearest.Find(point => point.Off.Sign != a.Off.Sign) is { At.Sign: > 0 } across ? across : nearest[1];
        if (a.Off == b.Off)
            return null;
        return a.At - ((b.At - a.At) * (a.Off / (b.Off - a.Off)));
    }

    /// <summary>Whether the number changes nothing about the finding and its parts.</summary>
    private bool IsWithoutSay(Outcome outcome) =>
        !outcome.IsMended
        && outcome.Miss?.By == aim.Now!.Value.By
        && Changes.AreNone(aim.Before.Piece, outcome.Tried!.Piece, aim.Finding.Parts);
}
