using Dryfit.Casework;
using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Numbers;

/// <summary>
/// The door of the stage: a list written by hand is held against the model, and what differs is tried in place by building
/// the piece again.
/// </summary>
public static class NumbersCheck
{
    /// <summary>1/128 in: half of the finest mark of a maker's rule, as what is fitted is judged by.</summary>
    public static Length SawTolerance { get; } = Length.FromInches(0, 1, 128);

    /// <param name="list">The list.</param>
    /// <param name="now">The piece as designed, with what the checks say of it.</param>
    /// <param name="build">Builds and inspects the piece with numbers of the list in place; null where it cannot be built.</param>
    public static Held Hold(HandList list, Built now, Func<IReadOnlyList<CutNumbers>, Built?> build)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(build);
        var piece = now.Piece;
        var met = list.Lines.Select(line => (Line: line, Meant: Meeting(line, piece))).ToList();
        var seen = met.SelectMany(m =>
                m.Meant.Parts.Select(part => part.Id).Concat(m.Meant.Units.SelectMany(unit => Within(unit, piece)))
            )
            .ToHashSet(StringComparer.Ordinal);
        var wrong = met.SelectMany(m =>
                Targets(m.Meant, piece).SelectMany(target => Compare(m.Line, target, piece.Format))
            )
            .ToList();
        var numbers = wrong
            .GroupBy(w => w.Target.Name, StringComparer.Ordinal)
            .Select(group => ToCut(group.Last().Line, group.Last().Target))
            .ToList();
        var built = numbers.Count > 0 ? build(numbers) : null;
        return new Held(
            [
                .. wrong.Select(w => new Difference(
                    w.Target.Name,
                    w.Size,
                    w.Right.Length,
                    w.Guesses,
                    NewOf(w.Target, now.Report, built?.Report)
                )),
            ],
            [
                .. met.Where(m => m.Meant is { Parts.Count: 0, Units.Count: 0 })
                    .Select(m => new StrangeLine(m.Line, NearestWord.To(m.Line.Phrase, NamesOf(piece)))),
            ],
            [
                .. met.Where(m => m.Line.Quantity is { } said && Count(m.Meant) is > 0 and var count && count != said)
                    .Select(m => new CountDifference(m.Line, Count(m.Meant))),
            ],
            [.. piece.Parts.Where(part => !part.IsKept && !seen.Contains(part.Id)).Select(part => part.Name)],
            met.Sum(m => m.Line.Sizes.Count * Count(m.Meant)),
            built?.Report,
            numbers
        );
    }

    private static int Count(PartsMeant meant) => meant.Parts.Count + meant.Units.Count;

    private static IEnumerable<string> NamesOf(Piece piece) =>
        piece.Parts.Select(part => part.Name).Concat(piece.Groups.Select(group => group.Name));

    private static PartsMeant Meeting(ListLine line, Piece piece)
    {
        var ids = line.Ids.ToHashSet(StringComparer.Ordinal);
        var named = piece.Parts.Where(part => ids.Contains(part.Id)).ToList();
        return named.Count > 0 ? new([], named) : PartsMeant.By(line.Phrase, piece);
    }

    private static IEnumerable<string> Within(Group unit, Piece piece) =>
        piece.Parts.Where(part => part.Group == unit.Id).Select(part => part.Id);

    /// <summary>A part or a whole door or drawer with its sizes.</summary>
    private sealed record Target(
        string Name,
        Part? Part,
        IReadOnlyList<string> Ids,
        Figure? Length,
        Figure? Width,
        Figure? Thickness
    )
    {
        public Figure? Size(SizeKind which) =>
            which switch
            {
                SizeKind.Length => Length,
                SizeKind.Width => Width,
                _ => Thickness,
            };
    }

    private sealed record Wrong(
        ListLine Line,
        Target Target,
        ListSize Size,
        Figure Right,
        IReadOnlyList<string> Guesses
    );

    private static IEnumerable<Target> Targets(PartsMeant meant, Piece piece)
    {
        foreach (var part in meant.Parts)
            yield return new(part.Name, part, [part.Id], part.Length, part.Width, part.Thickness);
        foreach (var unit in meant.Units)
            yield return new(
                unit.Name,
                null,
                [.. Within(unit, piece)],
                Of(unit, "length") ?? Of(unit, "height"),
                Of(unit, "width"),
                null
            );
    }

    private static Figure? Of(Group unit, string size) => unit.Sizes.FirstOrDefault(s => s.Name == size)?.Figure;

    private static IEnumerable<Wrong> Compare(ListLine line, Target target, LengthFormat format)
    {
        foreach (var size in line.Sizes)
        {
            if (target.Size(size.Which) is { } right && Length.Abs(size.Value - right.Length) > SawTolerance)
                yield return new(line, target, size, right, Slips.Behind(size, right, target.Part, line.Sizes, format));
        }
    }

    /// <summary>All sizes of a part, the listed ones where they differ: a width alone would mean another side of a drawer's front.</summary>
    private static CutNumbers ToCut(ListLine line, Target target)
    {
        Length? Said(SizeKind which) =>
            line.Sizes.FirstOrDefault(size => size.Which == which)?.Value ?? target.Size(which)?.Length;
        return new(target.Name, Said(SizeKind.Length), Said(SizeKind.Width), Said(SizeKind.Thickness), line.Place);
    }

    /// <summary>What is found of some parts that was not found before.</summary>
    private static IReadOnlyList<Finding> NewOf(Target target, Report before, Report? after) =>
        [
            .. (after?.Findings ?? []).Where(finding =>
                finding.Kind.Severity > Severity.Note
                && finding.Parts.Any(target.Ids.Contains)
                && !before.Findings.Any(old => old.Kind.Id == finding.Kind.Id && old.Message == finding.Message)
            ),
        ];
}
