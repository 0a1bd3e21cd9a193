using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Slips;

/// <summary>What was measured on the bench and is not what was drawn: <c>as measured</c>.</summary>
internal static class MeasuredSlips
{
    public static IEnumerable<SlipKind> Kinds { get; } =
    [new("opening out of square", piece => piece.Fronts.Any(f => f.Hang == Hang.Inset), OutOfSquare)];

    /// <summary>
    /// An opening that is wider at one end: its inset fronts are made to the narrower one, so that one gap at each side, or
    /// both, taper. By hand: what is wider is shared by the two sides, and a taper may be 1/128 in.
    /// </summary>
    private static Slip? OutOfSquare(SoundPiece sound, Random chance)
    {
        var fronts = sound
            .Piece.Fronts.Where(f => f.Hang == Hang.Inset && !f.Motion.IsSideways() && f.Motion != FrontMotion.Fixed)
            .ToList();
        if (fronts.Count == 0)
            return null;
        var front = fronts[chance.Next(fronts.Count)];
        var opening = sound.Piece.Openings.First(o => o.Id == front.Opening);
        if (opening.AsMeasured is not null)
            return null;
        var wide = chance.Next(2) == 0;
        var right = wide ? opening.Clear.Width : opening.Clear.Height;
        var more = sound.IsInInches ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(2);
        more *= chance.Next(1, 6);
        var (one, other) = (
            RecipeEdit.Typed(right, sound.IsInInches),
            RecipeEdit.Typed(right + more, sound.IsInInches)
        );
        var pair = chance.Next(2) == 0 ? $"[{one}, {other}]" : $"[{other}, {one}]";
        var closing = sound.Piece.Fronts.Where(f => f.Opening == opening.Id).Select(f => f.Group).ToHashSet();
        return new Slip(
            sound,
            "opening out of square",
            "not measured at both ends",
            RecipeEdit.Under("as measured", sound, $"\"{opening.Name}\": {{ {(wide ? "width" : "height")}: {pair} }}"),
            [.. sound.Piece.Parts.Where(p => closing.Contains(p.Group)).Select(p => p.Id)]
        )
        {
            ByHand = Verdict.Counts,
        };
    }
}
