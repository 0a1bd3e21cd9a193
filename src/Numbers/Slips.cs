using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Numbers;

/// <summary>What a maker may have done to come to another number: each kind of slip is tried, and those that come to it are told.</summary>
internal static class Slips
{
    private const int MostTold = 3;

    private static readonly Rational MmPerInch = new(127, 5);

    /// <summary>Within 1/64 in a slip explains a number.</summary>
    private static readonly Length Exact = Length.FromInches(0, 1, 64);

    /// <summary>What explains the listed number; the nearest, and of those the plainest; none where nothing is exact.</summary>
    /// <param name="part">The part; null for a whole door or drawer.</param>
    /// <param name="other">The other sizes that the same line gives.</param>
    public static IReadOnlyList<string> Behind(
        ListSize listed,
        Figure right,
        Part? part,
        IReadOnlyList<ListSize> other,
        LengthFormat format
    )
    {
        var found = Plain(listed, right.Length, part, other, format)
            .Concat(OfTheSum(right, format))
            .Select(slip => (slip.Says, slip.Rank, Off: Length.Abs(slip.Gives - listed.Value)))
            .Where(slip => slip.Off <= Exact)
            .ToList();
        if (found.Count == 0)
            return [];
        var best = found.Min(slip => (slip.Off, slip.Rank));
        return
        [
            .. found
                .Where(slip => (slip.Off, slip.Rank) == best)
                .Select(slip => slip.Says)
                .Distinct(StringComparer.Ordinal)
                .Take(MostTold),
        ];
    }

    private static IEnumerable<(string Says, Length Gives, int Rank)> Plain(
        ListSize listed,
        Length right,
        Part? part,
        IReadOnlyList<ListSize> other,
        LengthFormat format
    )
    {
        string Say(Length length) => format.WriteWithUnit(length);
        if (part is not null)
        {
            var shoulder =
                listed.Which == SizeKind.Length ? part.ShoulderLength
                : listed.Which == SizeKind.Width ? part.ShoulderWidth
                : null;
            if (shoulder?.Length is { } between && between != right)
            {
                var tongue = (right - between) / 2;
                yield return (
                    $"= {Say(right)} - 2 x {Say(tongue)}: both tongues forgotten, it goes from shoulder to shoulder",
                    between,
                    -1
                );
                yield return ($"= {Say(right)} - {Say(tongue)}: one tongue forgotten", between + tongue, -1);
                yield return (
                    $"= {Say(right)} + 2 x {Say(tongue)}: both tongues added twice",
                    right + (tongue * 2),
                    -1
                );
            }
            var finished =
                listed.Which == SizeKind.Length ? part.FinishedLength
                : listed.Which == SizeKind.Width ? part.FinishedWidth
                : null;
            if (finished?.Length is { } edged && edged != right)
                yield return ($"= {Say(edged)}, the size with its edging on", edged, -1);
            if (listed.Which == SizeKind.Thickness && part.Material.Called is { } called)
                yield return ($"= {Say(called)}: what the stuff is called, not what it measures", called, -1);
            var across =
                listed.Which == SizeKind.Length
                    ? (SizeKind.Width, part.Width.Length)
                    : (SizeKind.Length, part.Length.Length);
            if (
                listed.Which != SizeKind.Thickness
                && other.Any(size => size.Which == across.Item1 && size.Value == right)
            )
                yield return ("length and width swapped", across.Item2, -1);
        }
        yield return ($"{Say(right)} read in inches for millimetres", right * MmPerInch, 1);
        yield return ($"{Say(right)} read in millimetres for inches", right / MmPerInch, 1);
        foreach (var swapped in DigitsSwapped(right, format))
            yield return ($"two digits of {Say(right)} swapped", swapped, 2);
        var inch = Length.FromInches(1);
        if (format.Unit == LengthUnit.Inch)
        {
            foreach (
                var (by, word) in ((Length, string)[])
                    [(inch / 8, "an eighth"), (inch / 16, "a sixteenth"), (inch / 4, "a quarter"), (inch / 2, "a half")]
            )
            {
                yield return (
                    $"= {Say(right)} + {Say(by)}: {word} misread{(by == inch / 8 ? ", or a saw kerf added" : "")}",
                    right + by,
                    3
                );
                yield return (
                    $"= {Say(right)} - {Say(by)}: {word} misread{(by == inch / 8 ? ", or a saw kerf taken away" : "")}",
                    right - by,
                    3
                );
            }
            yield return ($"one inch more than {Say(right)}: the tape misread by a whole inch", right + inch, 3);
            yield return ($"one inch less than {Say(right)}: the tape misread by a whole inch", right - inch, 3);
        }
        else
        {
            foreach (var mm in (int[])[10, 100])
            {
                yield return (
                    $"= {Say(right)} + {mm} mm: a digit of the tape misread",
                    right + Length.FromMillimetres(mm),
                    3
                );
                yield return (
                    $"= {Say(right)} - {mm} mm: a digit of the tape misread",
                    right - Length.FromMillimetres(mm),
                    3
                );
            }
            yield return ($"= {Say(right)} + 3.2 mm: a saw kerf added", right + Length.FromInches(0, 1, 8), 3);
            yield return ($"= {Say(right)} - 3.2 mm: a saw kerf taken away", right - Length.FromInches(0, 1, 8), 3);
        }
    }

    /// <summary>Slips in the sum behind the size: a step forgotten, taken once for twice, taken twice, or with the wrong sign.</summary>
    private static IEnumerable<(string Says, Length Gives, int Rank)> OfTheSum(Figure right, LengthFormat format)
    {
        foreach (var term in Term.Of(right))
        {
            // Nearly the whole size is no slip of one step.
            var counts = term.Value * term.Times;
            if (Length.Abs(counts) * 2 > right.Length)
                continue;
            var rank = Math.Min(term.Depth - 1, 4);
            var sum = $"{format.WriteWithUnit(right.Length)} {(counts.Sign > 0 ? "-" : "+")} ";
            var value = format.WriteWithUnit(term.Value);
            var back = $"{(counts.Sign > 0 ? "+" : "-")} ";
            if (Rational.Abs(term.Times) == 2)
            {
                yield return ($"= {sum}{value}: {term.Name} taken once, not twice", right.Length - (counts / 2), rank);
                yield return ($"= {sum}2 x {value}: {term.Name} forgotten on both sides", right.Length - counts, rank);
            }
            else if (Rational.Abs(term.Times) == 1)
            {
                yield return ($"= {sum}{value}: {term.Name} forgotten", right.Length - counts, rank);
                yield return (
                    $"= {format.WriteWithUnit(right.Length)} {back}{value}: {term.Name} taken twice",
                    right.Length + counts,
                    rank
                );
                yield return (
                    $"= {sum}2 x {value}: {term.Name} {(counts.Sign > 0 ? "taken away, not added" : "added, not taken away")}",
                    right.Length - (counts * 2),
                    rank + 1
                );
            }
            else
            {
                yield return (
                    $"= {sum}{format.WriteWithUnit(Length.Abs(counts))}: {term.Name} forgotten",
                    right.Length - counts,
                    rank
                );
            }
        }
    }

    /// <summary>The number with two digits next to each other swapped.</summary>
    private static IEnumerable<Length> DigitsSwapped(Length right, LengthFormat format)
    {
        var text = format.Write(right);
        for (var n = 0; n + 1 < text.Length; n++)
        {
            if (!char.IsAsciiDigit(text[n]) || !char.IsAsciiDigit(text[n + 1]) || text[n] == text[n + 1])
                continue;
            var swapped = $"{text[..n]}{text[n + 1]}{text[n]}{text[(n + 2)..]}";
            if (LengthText.Parse(swapped, format.Unit) is { Ok: true } read)
                yield return read.Length;
        }
    }
}
