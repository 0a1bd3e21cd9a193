using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Kit;

namespace Dryfit.Slips;

/// <summary>
/// Makes slips on sound pieces and holds what the checks find against what a judge says that knows nothing of them. The
/// same seeds give the same slips.
/// </summary>
internal sealed class SlipBench
{
    /// <summary>Slips of one kind that count.</summary>
    private const int OfEachKind = 16;

    /// <summary>Slips of no weight, of one size of one family of parts.</summary>
    private const int OfNoWeight = 3;

    /// <summary>So often chance may choose what cannot be made before a kind is let be.</summary>
    private const int Tries = 60;

    private readonly Lazy<IReadOnlyList<SoundPiece>> _sound = new(() => [.. SoundPieces()]);

    /// <summary>The recipes that raise nothing as they stand.</summary>
    public IReadOnlyList<SoundPiece> Sound => _sound.Value;

    /// <summary>All slips with what came of them.</summary>
    public IEnumerable<SlipResult> Run()
    {
        for (var n = 0; n < SlipKinds.All.Count; n++)
        {
            foreach (var result in Run(SlipKinds.All[n], seed: n))
                yield return result;
        }
    }

    /// <summary>Slips of one kind.</summary>
    public IEnumerable<SlipResult> Run(SlipKind kind, int seed)
    {
        var chance = new Random(seed);
        var on = Sound.Where(sound => kind.IsIn(sound.Piece)).ToList();
        var (wanted, done) = (kind.IsOfNoWeight ? OfNoWeight : OfEachKind, 0);
        var made = new HashSet<string>(StringComparer.Ordinal);
        for (var n = 0; on.Count > 0 && n < Tries && done < wanted; n++)
        {
            var sound = on[chance.Next(on.Count)];
            if (kind.Make(sound, chance) is not { } slip || !made.Add(sound.Name + slip.Edit.Diff))
                continue;
            if (Judged(slip) is not { } result)
                continue;
            if (kind.IsOfNoWeight || result.Counts)
                done++;
            yield return result;
        }
    }

    /// <summary>What came of a slip; null where the recipe with it is refused, which is as good as any finding.</summary>
    private static SlipResult? Judged(Slip slip)
    {
        if (slip.Sound.Rebuilt(slip.Edit.Text) is not { } piece)
            return null;
        var report = Inspector.Inspect(piece);
        if (slip.ByHand is { } verdict)
            return new(slip, verdict, ["by hand"], report.Findings);
        var judgement = Judge.Of(slip.Sound, piece);
        return new(slip, judgement.Verdict, judgement.Counting, Since(slip.Sound, report));
    }

    /// <summary>What the sound piece did not raise: notes it has already are not told again.</summary>
    private static IReadOnlyList<Finding> Since(SoundPiece sound, Report report)
    {
        var before = sound.Notes.ToHashSet(StringComparer.Ordinal);
        return [.. report.Findings.Where(f => f.AcceptedBecause is null && !before.Contains(SoundPiece.KeyOf(f)))];
    }

    private static IEnumerable<SoundPiece> SoundPieces()
    {
        foreach (var path in RecipeFiles.Folders.SelectMany(folder => RecipeFiles.In(folder, "*.dryfit.yaml")))
        {
            if (SoundPiece.Of(path, 0) is { } sound && SoundPiece.Faults(Inspector.Inspect(sound.Piece)).Count == 0)
                yield return sound;
        }
    }
}
