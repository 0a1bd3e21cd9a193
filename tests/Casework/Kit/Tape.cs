using System.Globalization;
using Dryfit.Measure;

namespace Dryfit.Casework.Tests.Kit;

/// <summary>
/// Sizes and places of built parts against what was reckoned by hand. Numbers stand as a maker writes them, in the unit
/// of the recipe: <c>29 x 11 x 3/4</c>.
/// </summary>
internal static class Tape
{
    /// <summary>Length, width and thickness of the blank, exact.</summary>
    public static void Measures(this Piece piece, string part, string sizes)
    {
        var found = piece.Part(part);
        Same(piece, part, sizes, " x ", found.Length.Length, found.Width.Length, found.Thickness.Length);
    }

    /// <summary>Left, front, lower corner of the blank in the piece, exact.</summary>
    public static void StandsAt(this Piece piece, string part, string corner)
    {
        var at = piece.Part(part).Extent.Min;
        Same(piece, part, corner, ", ", at.X, at.Y, at.Z);
    }

    /// <summary>Clear width and height of an opening, exact.</summary>
    public static void Opens(this Piece piece, string opening, string sizes)
    {
        var found = piece.Openings.Single(o => string.Equals(o.Name, opening, StringComparison.Ordinal));
        Same(piece, opening, sizes, " x ", found.Clear.Width, found.Clear.Height);
    }

    /// <summary>What is left of a part, in cubic millimetres.</summary>
    public static void Holds(this Piece piece, string part, double mm3) =>
        Assert.Equal(mm3, piece.Grid.ToCubicMm(piece.Part(part).Solid.Volume), mm3 * 1e-9);

    /// <summary>A length in the unit of the piece: <c>7 1/4</c>.</summary>
    public static Length Read(this Piece piece, string text) =>
        text[0] == '-' ? -piece.Read(text[1..]) : LengthText.Parse(text, piece.Format.Unit).Length;

    /// <summary>A length in the unit of the piece, as a decimal where it ends, else as a fraction.</summary>
    public static string Write(this Piece piece, Length length)
    {
        var number = length.In(piece.Format.Unit);
        var tenThousandths = number * 10_000;
        return tenThousandths.IsWhole
            ? ((decimal)tenThousandths.Numerator / 10_000).ToString("0.####", CultureInfo.InvariantCulture)
            : number.ToString();
    }

    private static void Same(Piece piece, string what, string wanted, string between, params Length[] found)
    {
        var lengths = wanted.Split(between).Select(piece.Read).ToList();
        if (!lengths.SequenceEqual(found))
            Assert.Fail($"{what}: wanted {wanted}, is {string.Join(between, found.Select(piece.Write))}");
    }
}
